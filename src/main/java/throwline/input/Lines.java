package throwline.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table in the jar: lines of cells between commas, without comments. */
final class Lines {

    private Lines() {}

    static List<List<String>> of(String resource) {
        try (InputStream in = Lines.class.getResourceAsStream("/throwline/" + resource)) {
            if (in == null) {
                throw new IllegalStateException("missing from the jar: " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> List.of(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
