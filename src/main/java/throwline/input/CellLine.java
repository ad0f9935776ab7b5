package throwline.input;

import java.util.ArrayList;
import java.util.List;

/**
 * Line of cells (RFC 4180, MEMORY): separated, in quotes where a cell holds the separator, quotes doubled.
 *
 * @param cells without quotes and outer blanks
 * @param columns where each begins, counted from 1
 */
record CellLine(List<String> cells, List<Integer> columns) {

    CellLine {
        cells = List.copyOf(cells);
        columns = List.copyOf(columns);
    }

    static CellLine of(String line, char separator) {
        List<String> cells = new ArrayList<>();
        List<Integer> columns = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int start = 1;
        for (int i = 0; i <= line.length(); i++) {
            char c = i < line.length() ? line.charAt(i) : separator;
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (i == line.length() || (c == separator && !quoted)) {
                cells.add(cell.toString().strip());
                columns.add(start);
                cell.setLength(0);
                start = i + 2;
            } else {
                cell.append(c);
            }
        }
        return new CellLine(cells, columns);
    }

    /** The separator that a header is written with: the one that makes most cells, a comma last. */
    static char separator(String header) {
        char best = ',';
        for (char c : new char[] {';', '\t'}) {
            int made = of(header, c).cells.size();
            best = made > 1 && made >= of(header, best).cells.size() ? c : best;
        }
        return best;
    }
}
