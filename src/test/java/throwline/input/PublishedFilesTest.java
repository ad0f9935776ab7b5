package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The schema and the reference page say what the table of keys says. After a change to the table run the test once with
 * {@code -Dgolden=update}, which rewrites both.
 */
class PublishedFilesTest {

    private static final Path SCHEMA = Path.of("src/main/resources/throwline/throwline-model-1.schema.json");
    private static final Path FLIGHTS_SCHEMA = Path.of("src/main/resources/throwline/throwline-flights-1.schema.json");
    private static final Path PAGE = Path.of("src/main/docs/model-file.md");
    private static final String BEGIN = "PublishedFilesTest says how -->\n";
    private static final String END = "<!-- end of keys -->";

    private final KeyTable table = KeyTable.withFlights();

    @Test
    void schemaIsMadeFromTheTable() throws IOException {
        isUpToDate(SCHEMA, json(SchemaWriter.schema(table), "") + "\n");
    }

    @Test
    void schemaOfFlightsIsMadeFromTheirTable() throws IOException {
        Map<String, Object> schema = SchemaWriter.schema(KeyTable.load(KeyTable.FLIGHTS));
        schema.put("$id", "throwline-flights-1.schema.json");
        schema.put("title", "Throwline file of flights, version 1");
        isUpToDate(FLIGHTS_SCHEMA, json(schema, "") + "\n");
    }

    @Test
    void referencePageIsMadeFromTheTable() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        String made = page.substring(0, begin) + "\n" + ReferencePage.tables(table) + "\n"
                + page.substring(page.indexOf(END));
        isUpToDate(PAGE, made);
    }

    private static void isUpToDate(Path file, String made) throws IOException {
        if ("update".equals(System.getProperty("golden"))) {
            Files.writeString(file, made);
        }
        assertThat(file).hasContent(made);
    }

    private static String json(Object value, String indent) {
        String deeper = indent + "  ";
        if (value instanceof Map<?, ?> map) {
            List<String> entries = map.entrySet().stream()
                    .map(e -> deeper + quoted(String.valueOf(e.getKey())) + ": " + json(e.getValue(), deeper))
                    .toList();
            return "{\n" + String.join(",\n", entries) + "\n" + indent + "}";
        }
        if (value instanceof List<?> list) {
            return "["
                    + String.join(", ", list.stream().map(v -> json(v, deeper)).toList()) + "]";
        }
        return value instanceof String text ? quoted(text) : String.valueOf(value);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
