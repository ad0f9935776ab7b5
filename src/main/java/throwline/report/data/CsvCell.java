package throwline.report.data;

import java.util.regex.Pattern;

/**
 * A cell of a table for a spreadsheet (RFC 4180). Text of a person's own may begin with a sign that makes a spreadsheet
 * run it as a formula; such a cell gets an apostrophe in front, which is taken off again on reading.
 */
public final class CsvCell {

    private static final Pattern FORMULA = Pattern.compile("(?s)'*[=+\\-@\t\r].*");
    private static final Pattern KEPT = Pattern.compile("(?s)'+[=+\\-@\t\r].*");
    private static final Pattern PLAIN = Pattern.compile("[^,\"\r\n]*");

    private CsvCell() {}

    /** Text of a person's own, such as the name of a pack. */
    public static String text(String text) {
        return quoted(FORMULA.matcher(text).matches() ? "'" + text : text);
    }

    /** A number or a word of ours. */
    public static String quoted(String cell) {
        return PLAIN.matcher(cell).matches() ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /** The text of a cell without its quotes. */
    static String read(String cell) {
        return KEPT.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
