package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import throwline.report.Page;

/** A table of numbers, a row an entry, numbers to the right; words in the last columns to the left. */
final class Columns {

    private static final String GAP = "  ";

    private final List<String> headers;
    private final int numbers;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * @param headers one a column; may be broken at blanks
     * @param numbers how many columns from the left hold numbers
     */
    Columns(List<String> headers, int numbers) {
        this.headers = List.copyOf(headers);
        this.numbers = numbers;
    }

    void row(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    String render(Page page) {
        int[] widths = new int[headers.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = widest(headers.get(i));
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder text = new StringBuilder();
        header(page, widths, text);
        for (List<String> row : rows) {
            text.append(line(row, widths)).append('\n');
        }
        return text.toString();
    }

    private static int widest(String header) {
        return Wrapped.lines(header, 1).stream().mapToInt(String::length).max().orElse(0);
    }

    private void header(Page page, int[] widths, StringBuilder text) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < widths.length; i++) {
            broken.add(Wrapped.lines(headers.get(i), widths[i]));
            height = Math.max(height, broken.get(i).size());
        }
        List<String> rules = new ArrayList<>();
        for (int width : widths) {
            rules.add(page.rule().repeat(width));
        }
        for (int k = 0; k < height; k++) {
            List<String> cells = new ArrayList<>();
            for (List<String> lines : broken) {
                int from = k - (height - lines.size());
                cells.add(from >= 0 ? lines.get(from) : "");
            }
            text.append(page.bold(line(cells, widths))).append('\n');
        }
        text.append(line(rules, widths)).append('\n');
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String blanks = " ".repeat(Math.max(0, widths[i] - cells.get(i).length()));
            line.append(i == 0 ? "" : GAP).append(i < numbers ? blanks + cells.get(i) : cells.get(i) + blanks);
        }
        return line.toString().stripTrailing();
    }
}
