package throwline.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The model file that tests change. */
final class TestFile {

    private static final FolderNames NAMES = new FolderNames();

    private TestFile() {}

    /** A resource beside this class as text. */
    static String text(String name) {
        try (InputStream in = Objects.requireNonNull(TestFile.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ReadModel read(String text, String shownAs) {
        return read(text.getBytes(StandardCharsets.UTF_8), shownAs);
    }

    static ReadModel read(byte[] bytes, String shownAs) {
        try {
            return ModelFile.read(new ByteArrayInputStream(bytes), shownAs, NAMES, List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
