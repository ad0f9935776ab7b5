package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
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
        Path part = place.resolveSibling("." + place.getFileName() + ".part");
        try {
            Files.write(part, text.getBytes(StandardCharsets.UTF_8));
            Files.move(part, place);
        } catch (FileAlreadyExistsException e) {
            throw new WrongInput(words.say("cli.new.exists", place));
        } catch (IOException e) {
            throw new WrongInput(words.say("cli.new.failed", place));
        } finally {
            part.toFile().delete();
        }
    }
}
