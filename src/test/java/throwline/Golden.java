package throwline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Golden files pin wording and layout. A difference writes what was received beside the expected file; after a look at
 * it, {@code mvn test -Dgolden=update} takes it over.
 */
public final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/throwline/golden");

    private Golden() {}

    /**
     * Compares a text with its golden file.
     *
     * @param name file name in the folder of golden files
     * @param text what the program says
     */
    public static void check(String name, String text) {
        Path expected = FOLDER.resolve(name);
        Path received = FOLDER.resolve(name + ".received");
        try {
            if ("update".equals(System.getProperty("golden"))) {
                Files.createDirectories(FOLDER);
                Files.writeString(expected, text);
            }
            Files.deleteIfExists(received);
            String wanted = Files.exists(expected) ? Files.readString(expected) : "";
            if (!wanted.equals(text)) {
                Files.writeString(received, text);
            }
            assertThat(text).as("golden file " + expected).isEqualTo(wanted);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
