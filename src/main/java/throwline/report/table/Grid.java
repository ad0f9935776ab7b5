package throwline.report.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import throwline.report.Page;
import throwline.study.Headline;

/**
 * A table with a label and one column a set-up. Where the page is too narrow for all columns they go into several blocks
 * below each other, as even as can be.
 */
final class Grid {

    private static final String GAP = "  ";
    /** Widths at which cells are broken, tried in this order until all columns fit. */
    private static final int[] CAPS = {18, 16, 15, 14, 13};

    private static final int BLOCK_CAP = 16;

    private final List<String> headers;
    private final List<Row> rows = new ArrayList<>();

    /**
     * A row.
     *
     * @param label what stands on the left
     * @param cells one a column
     * @param quiet true where it says more about the row above
     * @param key what names the row whatever its words; empty where it has no name
     * @param numbers what the cells show, one a column; empty where they show no headline numbers
     */
    record Row(String label, List<String> cells, boolean quiet, String key, List<Optional<Headline>> numbers) {
        Row {
            cells = List.copyOf(cells);
            numbers = List.copyOf(numbers);
        }
    }

    /** A block: columns from one to before another, cells broken at a width. */
    private record Block(int from, int to, int cap) {}

    Grid(List<String> headers) {
        this.headers = List.copyOf(headers);
    }

    /** A row that is read first. */
    void row(String label, List<String> cells) {
        row(label, cells, "", List.of());
    }

    /** A row that is read first, with its name and the numbers that its cells show. */
    void row(String label, List<String> cells, String key, List<Optional<Headline>> numbers) {
        rows.add(new Row(label, cells, false, key, numbers));
    }

    /** All rows, in order. */
    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** A row that says more about the one above; left out where it says nothing. */
    void more(String label, List<String> cells) {
        if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
            rows.add(new Row("  " + label, cells, true, "", List.of()));
        }
    }

    /** A label without numbers. */
    void heading(String label) {
        rows.add(new Row(label, Collections.nCopies(headers.size(), ""), false, "", List.of()));
    }

    /** The table as lines of text. */
    String render(Page page) {
        int label = rows.stream().mapToInt(row -> row.label().length()).max().orElse(0);
        StringBuilder text = new StringBuilder();
        for (Block block : blocks(page.width() - label)) {
            if (text.length() > 0) {
                text.append('\n');
            }
            render(page, block, label, text);
        }
        return text.toString();
    }

    private List<Block> blocks(int room) {
        int columns = headers.size();
        for (int cap : CAPS) {
            if (width(0, columns, cap) <= room) {
                return List.of(new Block(0, columns, cap));
            }
        }
        for (int count = 2; count < columns; count++) {
            List<Block> blocks = split(count);
            if (blocks.stream().allMatch(block -> width(block.from(), block.to(), block.cap()) <= room)) {
                return blocks;
            }
        }
        return split(columns);
    }

    private List<Block> split(int count) {
        List<Block> blocks = new ArrayList<>();
        int each = (headers.size() + count - 1) / count;
        for (int from = 0; from < headers.size(); from += each) {
            blocks.add(new Block(from, Math.min(headers.size(), from + each), BLOCK_CAP));
        }
        return blocks;
    }

    private int width(int from, int to, int cap) {
        int width = 0;
        for (int column = from; column < to; column++) {
            width += GAP.length() + columnWidth(column, cap);
        }
        return width;
    }

    private int columnWidth(int column, int cap) {
        int width = widest(headers.get(column), cap);
        for (Row row : rows) {
            width = Math.max(width, widest(row.cells().get(column), cap));
        }
        return width;
    }

    private static int widest(String cell, int cap) {
        return Wrapped.lines(cell, cap).stream().mapToInt(String::length).max().orElse(0);
    }

    private void render(Page page, Block block, int label, StringBuilder text) {
        int[] widths = new int[block.to() - block.from()];
        StringBuilder rule = new StringBuilder(page.rule().repeat(label));
        for (int i = 0; i < widths.length; i++) {
            widths[i] = columnWidth(block.from() + i, block.cap());
            rule.append(GAP).append(page.rule().repeat(widths[i]));
        }
        for (String line : lines("", headers, block, label, widths)) {
            text.append(page.bold(line)).append('\n');
        }
        text.append(rule).append('\n');
        for (Row row : rows) {
            if (row.quiet()
                    && row.cells().subList(block.from(), block.to()).stream().allMatch(String::isEmpty)) {
                continue;
            }
            for (String line : lines(row.label(), row.cells(), block, label, widths)) {
                text.append(row.quiet() ? page.dim(line) : line).append('\n');
            }
        }
    }

    /** One row as lines, cells broken where they are long, blanks at the end cut off. */
    private static List<String> lines(String label, List<String> cells, Block block, int labelWidth, int[] widths) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < widths.length; i++) {
            List<String> cell = Wrapped.lines(cells.get(block.from() + i), block.cap());
            broken.add(cell);
            height = Math.max(height, cell.size());
        }
        List<String> lines = new ArrayList<>();
        for (int k = 0; k < height; k++) {
            StringBuilder line = new StringBuilder(padded(k == 0 ? label : "", labelWidth));
            for (int i = 0; i < widths.length; i++) {
                List<String> cell = broken.get(i);
                line.append(GAP).append(padded(k < cell.size() ? cell.get(k) : "", widths[i]));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
