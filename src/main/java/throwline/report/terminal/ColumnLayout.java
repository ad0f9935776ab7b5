package throwline.report.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import throwline.report.Page;

/**
 * Cells in columns. The first column labels the others: where a page is too narrow for all of them, cells are broken into
 * lines, and then columns go into several blocks below each other, as even as can be, each behind the labels.
 */
final class ColumnLayout {

    private static final String GAP = "  ";

    private final Page page;
    private final List<Head> heads;
    private final int shortLabel;
    private final int[] caps;
    private final List<Row> rows = new ArrayList<>();

    /**
     * A column.
     *
     * @param text above it
     * @param right true where cells stand on the right
     * @param byWord true where the head may be broken at every blank
     */
    record Head(String text, boolean right, boolean byWord) {}

    /**
     * A row.
     *
     * @param cells one a column; lines of a cell are kept
     * @param quiet true where it says more about the row above
     * @param across true where its first cell takes the whole width
     * @param strong columns whose first line stands out
     */
    private record Row(List<List<String>> cells, boolean quiet, boolean across, List<Integer> strong) {}

    /** Columns from one to before another; cells of labels and of columns broken at a width. */
    private record Block(int from, int to, int labelCap, int cap) {}

    /**
     * @param page what the place can show
     * @param heads of the columns
     * @param shortLabel width at which labels are broken where that lets the other cells stay whole
     * @param caps widths at which cells are broken, tried in this order until all columns fit; the last also for blocks
     */
    ColumnLayout(Page page, List<Head> heads, int shortLabel, int... caps) {
        this.shortLabel = shortLabel;
        this.page = page;
        this.heads = List.copyOf(heads);
        this.caps = caps.clone();
    }

    void row(List<List<String>> cells, boolean quiet) {
        row(cells, quiet, List.of());
    }

    /** A row in which the first lines of these columns stand out. */
    void row(List<List<String>> cells, boolean quiet, List<Integer> strong) {
        rows.add(new Row(cells, quiet, false, strong));
    }

    void across(String text) {
        List<List<String>> cells = new ArrayList<>(Collections.nCopies(heads.size(), List.of("")));
        cells.set(0, List.of(text));
        rows.add(new Row(cells, false, true, List.of()));
    }

    /** The lines. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (Block block : blocks()) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            write(block, lines);
        }
        return lines;
    }

    private List<Block> blocks() {
        for (int cap : caps) {
            for (int label : new int[] {Integer.MAX_VALUE, shortLabel}) {
                Block all = new Block(1, heads.size(), label, cap);
                if (fits(all)) {
                    return List.of(all);
                }
            }
        }
        int last = caps[caps.length - 1];
        int half = (page.width() - GAP.length()) / 2;
        for (int label : new int[] {Integer.MAX_VALUE, half}) {
            int cap = label == half ? Math.min(last, half) : last;
            for (int count = 1; count < heads.size(); count++) {
                List<Block> blocks = split(count, label, cap);
                if (blocks.stream().allMatch(this::fits)) {
                    return blocks;
                }
            }
        }
        return split(heads.size() - 1, half, half);
    }

    private List<Block> split(int count, int labelCap, int cap) {
        List<Block> blocks = new ArrayList<>();
        int columns = heads.size() - 1;
        int each = (columns + count - 1) / count;
        for (int from = 1; from <= columns; from += each) {
            blocks.add(new Block(from, Math.min(columns + 1, from + each), labelCap, cap));
        }
        return blocks;
    }

    private boolean fits(Block block) {
        int width = labels(block);
        for (int column = block.from(); column < block.to(); column++) {
            width += GAP.length() + width(column, block.cap());
        }
        return width <= page.width();
    }

    private int labels(Block block) {
        return Math.min(block.labelCap(), width(0, block.labelCap()));
    }

    private int width(int column, int cap) {
        Head head = heads.get(column);
        int width = widest(List.of(head.text()), head.byWord() ? 1 : cap);
        for (Row row : rows) {
            if (!row.across()) {
                width = Math.max(width, widest(row.cells().get(column), cap));
            }
        }
        return width;
    }

    private static int widest(List<String> cell, int cap) {
        int width = 0;
        for (String line : cell) {
            int longest = Arrays.stream(line.split(" ", -1))
                    .mapToInt(String::length)
                    .max()
                    .orElse(0);
            for (String part : Wrapped.lines(line, Math.max(cap, longest))) {
                width = Math.max(width, indent(line).length() + part.length());
            }
        }
        return width;
    }

    private static String indent(String line) {
        return line.substring(0, line.length() - line.stripLeading().length());
    }

    private void write(Block block, List<String> lines) {
        List<Integer> columns = new ArrayList<>(List.of(0));
        for (int i = block.from(); i < block.to(); i++) {
            columns.add(i);
        }
        int room = page.width() - labels(block) - GAP.length();
        int[] widths = columns.stream()
                .mapToInt(column -> column == 0 ? labels(block) : Math.min(room, width(column, block.cap())))
                .toArray();
        List<List<String>> above = new ArrayList<>();
        List<List<String>> rules = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            String head = heads.get(columns.get(i)).text();
            above.add(Wrapped.lines(head, widths[i]));
            rules.add(List.of(page.rule().repeat(widths[i])));
        }
        int height = above.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < widths.length; i++) {
            if (heads.get(columns.get(i)).byWord()) {
                List<String> low = new ArrayList<>(
                        Collections.nCopies(height - above.get(i).size(), ""));
                low.addAll(above.get(i));
                above.set(i, low);
            }
        }
        if (heads.stream().anyMatch(head -> !head.text().isEmpty())) {
            cells(above, columns, widths, List.of()).forEach(line -> lines.add(page.bold(line)));
            lines.addAll(cells(rules, columns, widths, List.of()));
        }
        for (Row row : rows) {
            write(row, columns, widths, lines);
        }
    }

    private void write(Row row, List<Integer> columns, int[] widths, List<String> lines) {
        if (row.across()) {
            lines.addAll(Wrapped.paragraph("", "  ", row.cells().get(0).get(0), page.width()));
            return;
        }
        List<List<String>> cells = new ArrayList<>();
        boolean says = false;
        for (int i = 0; i < widths.length; i++) {
            List<String> broken = new ArrayList<>();
            for (String line : row.cells().get(columns.get(i))) {
                String indent = indent(line);
                Wrapped.lines(line, widths[i] - indent.length()).forEach(part -> broken.add(indent + part));
            }
            cells.add(broken);
            says |= i > 0 && broken.stream().anyMatch(line -> !line.isEmpty());
        }
        if (says || !row.quiet()) {
            cells(cells, columns, widths, row.strong()).forEach(line -> lines.add(row.quiet() ? page.dim(line) : line));
        }
    }

    private List<String> cells(List<List<String>> cells, List<Integer> columns, int[] widths, List<Integer> strong) {
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int k = 0; k < height; k++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String cell = k < cells.get(i).size() ? cells.get(i).get(k) : "";
                String blanks = " ".repeat(Math.max(0, widths[i] - cell.length()));
                cell = strong.contains(columns.get(i)) ? page.bold(cell) : cell;
                boolean right = heads.get(columns.get(i)).right();
                line.append(i == 0 ? "" : GAP).append(right ? blanks + cell : cell + blanks);
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }
}
