package throwline.validation;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import throwline.words.Message;

/**
 * Row of a case.
 *
 * @param path the file
 * @param line number of the line in it
 * @param cells text by column name, in the order of the columns
 */
record CaseRow(Path path, int line, Map<String, String> cells) {

    /** Columns that every case has: what is asked, what was found outside, how near the answer must come, and why so. */
    private static final Set<String> COMMON = Set.of("quantity", "value", "allowed", "mark", "why", "counts as");

    /** Text of a cell; empty where there is none. */
    String text(String column) {
        return cells.getOrDefault(column, "");
    }

    /** True where the cell holds something. */
    boolean has(String column) {
        return !text(column).isEmpty();
    }

    /** A number that must be there. */
    double number(String column) throws UnreadableCase {
        String text = text(column);
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw wrong(column, "case.number");
        }
    }

    /** A number, or another where the cell is empty. */
    double number(String column, double otherwise) throws UnreadableCase {
        return has(column) ? number(column) : otherwise;
    }

    /** An angle that is given in degrees, rad. */
    double angle(String column) throws UnreadableCase {
        return Math.toRadians(number(column));
    }

    /** Says what is wrong with a cell. */
    UnreadableCase wrong(String column, String code) {
        return new UnreadableCase(Message.of(code, path.toString(), String.valueOf(line), column, text(column)));
    }

    /** What holds for this row, from the columns of its own: a column named {@code angle [deg]} gives "angle 4.06 deg". */
    String condition() {
        return cells.entrySet().stream()
                .filter(cell ->
                        !COMMON.contains(cell.getKey()) && !cell.getValue().isEmpty())
                .map(cell -> said(cell.getKey(), cell.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String said(String column, String value) {
        int bracket = column.indexOf('[');
        return bracket < 0
                ? column + " " + value
                : column.substring(0, bracket).strip() + " " + value + " "
                        + column.substring(bracket + 1, column.indexOf(']'));
    }
}
