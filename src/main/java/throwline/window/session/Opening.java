package throwline.window.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import throwline.input.Problem;
import throwline.section.AirfoilLibrary;
import throwline.words.Message;

/** Opens model files. */
public final class Opening {

    private final Disk disk;

    /** Reads from this disk. */
    public Opening(Disk disk) {
        this.disk = disk;
    }

    /** What came of it. */
    public sealed interface Outcome permits Done, Faulty, Unread {}

    /** It is open. */
    public record Done(ModelDocument document) implements Outcome {}

    /** It cannot be read as a model: all that is wrong with it. */
    public record Faulty(List<Problem> problems) implements Outcome {
        public Faulty {
            problems = List.copyOf(problems);
        }
    }

    /** The disk does not give it. */
    public record Unread(Message why) implements Outcome {}

    /** Opens a file with the airfoils that it may name. */
    public Outcome file(Path file, AirfoilLibrary airfoils) {
        Disk.Outcome read = disk.read(file);
        return read instanceof Disk.Text text
                ? outcome(ModelDocument.open(file.toString(), Optional.of(file), text, airfoils))
                : new Unread(((Disk.Refused) read).why());
    }

    /**
     * Opens a text that has no file yet.
     *
     * @param title what problems call it
     */
    public Outcome text(String title, String text, AirfoilLibrary airfoils) {
        return outcome(ModelDocument.open(title, Optional.empty(), new Disk.Text(text), airfoils));
    }

    private static Outcome outcome(ModelDocument.Opened opened) {
        return opened instanceof ModelDocument.Good good
                ? new Done(good.document())
                : new Faulty(((ModelDocument.Bad) opened).problems());
    }
}
