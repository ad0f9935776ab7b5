package throwline.report.data;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The numbers of the sheets as a table for a spreadsheet (RFC 4180), and back without loss. */
public final class SheetCsv {

    private static final String HEADER = "model,pack,setup,surface,stick,side,quantity,unit,value";
    private static final int CELLS = 9;
    private static final int LONGEST_NUMBER = 30;

    private SheetCsv() {}

    /**
     * A table as read.
     *
     * @param model name of the model
     * @param pack name of the pack
     * @param entries its numbers
     * @param wrongLine number of the first line that is no line of a sheet, from 1; then there are no entries
     */
    public record Read(String model, String pack, List<SheetEntry> entries, OptionalInt wrongLine) {
        public Read {
            entries = List.copyOf(entries);
        }
    }

    /** The table. */
    public static String write(String model, String pack, List<SheetEntry> entries) {
        StringBuilder text = new StringBuilder(HEADER).append("\r\n");
        for (SheetEntry e : entries) {
            Stream<String> names = Stream.of(model, pack, e.setUp(), e.surface(), e.stick(), e.side())
                    .map(CsvCell::text);
            Stream<String> number = Stream.of(e.quantity(), e.unit(), e.value()).map(CsvCell::quoted);
            text.append(Stream.concat(names, number).collect(Collectors.joining(",")))
                    .append("\r\n");
        }
        return text.toString();
    }

    /** Reads a table; lines may end in any way, and a spreadsheet may have put quotes around cells. */
    public static Read read(String text) {
        List<SheetEntry> entries = new ArrayList<>();
        String model = "";
        String pack = "";
        String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<List<String>> lines = lines(clean);
        for (int i = 0; i < lines.size(); i++) {
            List<String> c = lines.get(i);
            boolean right = c.size() == CELLS
                    && (i > 0 ? isNumber(c.get(8)) : String.join(",", c).equals(HEADER));
            if (!right) {
                return new Read("", "", List.of(), OptionalInt.of(i + 1));
            }
            if (i > 0) {
                model = CsvCell.read(c.get(0));
                pack = CsvCell.read(c.get(1));
                entries.add(new SheetEntry(
                        CsvCell.read(c.get(2)),
                        CsvCell.read(c.get(3)),
                        CsvCell.read(c.get(4)),
                        CsvCell.read(c.get(5)),
                        c.get(6),
                        c.get(7),
                        c.get(8)));
            }
        }
        return new Read(
                model, pack, entries, entries.isEmpty() ? OptionalInt.of(lines.size() + 1) : OptionalInt.empty());
    }

    private static boolean isNumber(String cell) {
        return cell.length() <= LONGEST_NUMBER
                && cell.matches("|-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?")
                && (cell.isEmpty() || Double.isFinite(Double.parseDouble(cell)));
    }

    private static List<List<String>> lines(String text) {
        List<List<String>> lines = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean doubled = quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"';
            if (doubled) {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (quoted || (c != ',' && c != '\n' && c != '\r')) {
                cell.append(c);
            } else if (c != '\r') {
                cells.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    lines.add(cells);
                    cells = new ArrayList<>();
                }
            }
        }
        if (cell.length() > 0 || !cells.isEmpty()) {
            cells.add(cell.toString());
            lines.add(cells);
        }
        return lines;
    }
}
