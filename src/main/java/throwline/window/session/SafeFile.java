package throwline.window.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import throwline.words.Message;

/** The file of a document: written only where nobody else has changed it, never over another file unasked. */
public final class SafeFile {

    private final ModelDocument document;
    private final Disk disk;

    SafeFile(ModelDocument document, Disk disk) {
        this.document = document;
        this.disk = disk;
    }

    /** What came of saving. */
    public sealed interface Outcome permits Saved, NoPlace, Taken, Other, Refused {}

    /** It is on the disk. */
    public record Saved(Path place) implements Outcome {}

    /** It has no file yet: ask for one. */
    public record NoPlace() implements Outcome {}

    /** Another file is there: ask before it is replaced. */
    public record Taken(Path place) implements Outcome {}

    /**
     * Another program has changed the file.
     *
     * @param place the file
     * @param letters what is in it now; empty where it is gone
     */
    public record Other(Path place, String letters) implements Outcome {}

    /** The disk does not take it; nothing was lost. */
    public record Refused(Message why) implements Outcome {}

    Outcome save() {
        if (document.place().isEmpty()) {
            return new NoPlace();
        }
        Optional<Other> other = elsewhere().filter(each -> !each.letters().isEmpty());
        return other.isPresent() ? other.get() : write(document.place().get());
    }

    Outcome saveAs(Path place, boolean over) {
        boolean own = document.place().filter(place::equals).isPresent();
        if (own) {
            return save();
        }
        return Files.exists(place) && !over ? new Taken(place) : write(place);
    }

    private Outcome write(Path place) {
        Disk.Outcome outcome = disk.write(place, document.letters());
        if (outcome instanceof Disk.Refused refused) {
            return new Refused(refused.why());
        }
        document.saved(place);
        return new Saved(place);
    }

    Optional<Other> elsewhere() {
        return document.place()
                .flatMap(place -> elsewhere(place, disk.letters(place).orElse("")));
    }

    /** The same where the file was read already. */
    Optional<Other> elsewhere(Path place, String letters) {
        boolean known =
                letters.equals(document.lettersOnDisk()) || !document.place().equals(Optional.of(place));
        return known ? Optional.empty() : Optional.of(new Other(place, letters));
    }
}
