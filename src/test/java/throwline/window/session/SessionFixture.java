package throwline.window.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import throwline.input.PackedAirfoils;
import throwline.words.Words;

/** Sessions for tests, in a folder of their own. */
final class SessionFixture {

    static final Path ORCHARD = Path.of("examples", "orchard.yaml");

    private final Path folder;
    private final Disk disk;
    final Journal journal;

    SessionFixture(Path folder) {
        this(folder, new Disk());
    }

    SessionFixture(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
        journal = new Journal(folder.resolve("state"), 1, disk);
    }

    Path file() {
        return folder.resolve("model.yaml");
    }

    /** An example, copied and opened. */
    Session open() {
        try {
            Files.copy(ORCHARD, file());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return again();
    }

    /** An example that has no file. */
    Session example() {
        try {
            String text = Files.readString(ORCHARD);
            Opening.Done done = (Opening.Done) new Opening(disk).text("example", text, new PackedAirfoils());
            return new Session(Words.load(), done.document(), disk, new Unsaved(journal, Runnable::run));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Session again() {
        Opening.Done done = (Opening.Done) new Opening(disk).file(file(), new PackedAirfoils());
        return new Session(Words.load(), done.document(), disk, new Unsaved(journal, Runnable::run));
    }

    String letters() {
        try {
            return Files.readString(file());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void write(String text) {
        try {
            Files.writeString(file(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
