package throwline.validation;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.words.Message;

/**
 * A case as it stands on disk: lines {@code # key: value} say what it is, then a table with a line of column names. A cell
 * that holds a comma stands in double quotes.
 *
 * @param path where it was read
 * @param head values by key; a key that comes again goes on with its text
 * @param rows the table
 */
record CaseFile(Path path, Map<String, String> head, List<CaseRow> rows) {

    private static final String KIND = "# kind:";

    CaseFile {
        head = Map.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** True where a file says which kind of case it is; other tables may lie beside the cases. */
    static boolean isCase(Path path) throws UnreadableCase {
        return lines(path).stream().anyMatch(line -> line.startsWith(KIND));
    }

    /** Reads a file. */
    static CaseFile read(Path path) throws UnreadableCase {
        List<String> lines = lines(path);
        Map<String, String> head = new LinkedHashMap<>();
        List<String> columns = List.of();
        List<CaseRow> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("#")) {
                comment(line, head);
            } else if (!line.isBlank() && columns.isEmpty()) {
                columns = cells(line);
            } else if (!line.isBlank()) {
                rows.add(row(path, i + 1, columns, cells(line)));
            }
        }
        return new CaseFile(path, head, rows);
    }

    private static List<String> lines(Path path) throws UnreadableCase {
        try {
            return Files.readAllLines(path, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UnreadableCase(Message.of("case.unreadable", path.toString()));
        }
    }

    private static void comment(String line, Map<String, String> head) {
        int colon = line.indexOf(':');
        if (colon > 0) {
            head.merge(
                    line.substring(1, colon).strip(), line.substring(colon + 1).strip(), (a, b) -> a + " " + b);
        }
    }

    private static CaseRow row(Path path, int number, List<String> columns, List<String> cells) throws UnreadableCase {
        if (cells.size() != columns.size()) {
            throw new UnreadableCase(Message.of(
                    "case.cells",
                    path.toString(),
                    String.valueOf(number),
                    String.valueOf(cells.size()),
                    String.valueOf(columns.size())));
        }
        Map<String, String> byColumn = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            byColumn.put(columns.get(i), cells.get(i));
        }
        return new CaseRow(path, number, byColumn);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /** File name without its extension. */
    String name() {
        String file = String.valueOf(path.getFileName());
        return file.substring(0, file.lastIndexOf('.'));
    }

    /** A value of the head; empty text where it is not there. */
    String optional(String key) {
        return head.getOrDefault(key, "");
    }

    /** A value of the head that must be there. */
    String required(String key) throws UnreadableCase {
        String value = head.get(key);
        if (value == null || value.isEmpty()) {
            throw new UnreadableCase(Message.of("case.head", path.toString(), key));
        }
        return value;
    }
}
