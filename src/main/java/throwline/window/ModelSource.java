package throwline.window;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;
import throwline.window.session.Disk;
import throwline.window.session.Opening;

/**
 * Models to open: from files, from texts, and an invented example. For any thread.
 *
 * @param disk where files are
 */
record ModelSource(Disk disk) {

    private static final String EXAMPLE = "/throwline/examples/orchard.yaml";

    /** Airfoils of the library, and by files meant from a folder. */
    private static NamedAirfoils airfoils(Path folder) {
        return new NamedAirfoils(new PackedAirfoils(), folder);
    }

    /** A model file. */
    Opening.Outcome file(Path file) {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of(""));
        return new Opening(disk).file(file.toAbsolutePath().normalize(), airfoils(folder));
    }

    /** A text that has no file yet. */
    Opening.Outcome text(String title, String text) {
        return new Opening(disk).text(title, text, airfoils(Path.of("")));
    }

    /** An invented example, which has no file until it is saved. */
    Opening.Outcome example(String title) {
        try (InputStream in = ModelSource.class.getResourceAsStream(EXAMPLE)) {
            if (in == null) {
                throw new IllegalStateException("the examples are missing from the jar");
            }
            return text(title, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
