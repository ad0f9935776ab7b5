package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import throwline.words.Words;

/** A file that is not there yet. */
final class NewFile {

    private final Path place;
    private final Words words;

    /**
     * @param place where it will be
     * @param words the sentences
     */
    NewFile(Path place, Words words) {
        this.place = place;
        this.words = words;
    }

    /**
     * Refuses a place that is taken.
     *
     * @throws WrongInput where anything is there
     */
    void refuseExisting() {
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new WrongInput(words.say("cli.new.exists", place));
        }
    }

    /**
     * Writes beside the place first, so that nothing half-written takes it.
     *
     * @throws WrongInput where the place is taken or cannot be written to
     */
    void write(String text) {
        Path part = place.resolveSibling(".throwline-" + UUID.randomUUID() + ".part");
        try {
            Files.write(part, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
            take(part);
        } catch (FileAlreadyExistsException e) {
            throw new WrongInput(words.say("cli.new.exists", place));
        } catch (IOException e) {
            throw new WrongInput(words.say("cli.new.failed", place));
        } finally {
            part.toFile().delete();
        }
    }

    /** A second name for the part fails where the place was taken meanwhile; a move may not. Some disks know no second names. */
    private void take(Path part) throws IOException {
        try {
            Files.createLink(place, part);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (FileSystemException | UnsupportedOperationException e) {
            Files.move(part, place);
        }
    }
}
