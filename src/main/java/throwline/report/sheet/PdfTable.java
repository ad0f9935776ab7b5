package throwline.report.sheet;

import java.util.List;
import java.util.stream.Collectors;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Align;
import throwline.report.document.Table.Band;
import throwline.report.document.Table.Cell;
import throwline.report.document.Table.Cells;
import throwline.report.document.Table.Column;
import throwline.report.document.Table.Group;
import throwline.report.document.Table.Remark;
import throwline.report.document.Table.Row;

/** A table drawn on paper, its head again on each page. */
final class PdfTable {

    private static final double PAD = 2;
    private static final double GREY = 0.9;
    private static final double QUIET = 0.65;
    private static final double THIN = 0.4;
    private static final double THICK = 1;
    /** Letters of a number to be set on a gauge, over all others. */
    private static final double LARGE = 1.4;

    private final PdfSheet.Flow flow;
    private final Table table;
    private final double font;
    private final double[] edges;

    PdfTable(PdfSheet.Flow flow, Table table) {
        this.flow = flow;
        this.table = table;
        font = flow.font();
        double total = table.columns().stream().mapToDouble(Column::weight).sum();
        edges = new double[table.columns().size() + 1];
        edges[0] = flow.left();
        for (int i = 0; i < table.columns().size(); i++) {
            edges[i + 1] = edges[i] + flow.width() * table.columns().get(i).weight() / total;
        }
    }

    void draw() {
        List<Row> rows = table.rows();
        flow.need(headHeight() + 3 * flow.lineHeight(font));
        head();
        for (int i = 0; i < rows.size(); i++) {
            double height = height(rows.get(i));
            // A band keeps the row below it, a row the remark about it.
            boolean keeps = i + 1 < rows.size() && (rows.get(i) instanceof Band || rows.get(i + 1) instanceof Remark);
            if (!flow.fits(keeps ? height + height(rows.get(i + 1)) : height)) {
                flow.nextPage();
                head();
            }
            row(rows.get(i), height);
        }
        line(THICK);
    }

    private double headHeight() {
        return (groupLines() + headLines()) * flow.lineHeight(font) + 2 * PAD;
    }

    /** Lines of the name above a group, broken to the width of its columns. */
    private List<String> group(Group group) {
        double room = edges[group.first() + group.columns()] - edges[group.first()] - 2 * PAD;
        return flow.lines(flow.say(group.name()), font, room);
    }

    private int groupLines() {
        return table.groups().stream()
                .mapToInt(group -> group(group).size())
                .max()
                .orElse(0);
    }

    private int headLines() {
        int most = 1;
        for (int i = 0; i < table.columns().size(); i++) {
            most = Math.max(most, head(i).size());
        }
        return most;
    }

    private List<String> head(int column) {
        return lines(flow.say(table.columns().get(column).head()), column);
    }

    private void head() {
        line(THICK);
        betweenGroups(flow.y(), headHeight());
        int groupLines = groupLines();
        for (Group group : table.groups()) {
            double y = flow.y() + PAD + font;
            for (String line : group(group)) {
                text(line, edges[group.first()] + PAD, y, true);
                y += flow.lineHeight(font);
            }
        }
        flow.moveTo(flow.y() + groupLines * flow.lineHeight(font));
        int most = headLines();
        for (int i = 0; i < table.columns().size(); i++) {
            List<String> lines = head(i);
            double top = flow.y() + (most - lines.size()) * flow.lineHeight(font);
            lines(lines, i, top, true);
        }
        flow.moveTo(flow.y() + most * flow.lineHeight(font) + 2 * PAD);
        line(THICK);
    }

    private double height(Row row) {
        int most = 1;
        boolean large = false;
        if (row instanceof Cells cells) {
            for (int i = 0; i < cells.cells().size(); i++) {
                most = Math.max(most, lines(text(cells.cells().get(i)), i).size());
                large |= cells.cells().get(i).role() == Role.HEADLINE;
            }
        } else if (row instanceof Remark remark) {
            most = lines(remark).size();
        }
        return (most + (large ? LARGE - 1 : 0)) * flow.lineHeight(font) + 2 * PAD;
    }

    private void row(Row row, double height) {
        double top = flow.y();
        if (row instanceof Band band) {
            flow.drawn(() -> flow.canvas().patch(flow.left(), top, flow.width(), height, GREY));
            text(flow.say(band.text()), flow.left() + PAD, top + PAD + font, true);
            if (!band.blank().isEmpty()) {
                blank(band, top, height);
            }
        } else if (row instanceof Remark remark) {
            double y = top + PAD + font;
            for (String line : lines(remark)) {
                text(line, flow.left() + 4 * PAD, y, false);
                y += flow.lineHeight(font);
            }
        } else if (row instanceof Cells cells) {
            line(THIN);
            betweenGroups(top, height);
            boolean large = cells.cells().stream().anyMatch(cell -> cell.role() == Role.HEADLINE);
            double drop = large ? (LARGE - 1) * font : 0;
            for (int i = 0; i < cells.cells().size(); i++) {
                cell(cells.cells().get(i), i, top, height, drop);
            }
        }
        flow.moveTo(top + height);
    }

    /** A line to write on behind a word, on the right. */
    private void blank(Band band, double top, double height) {
        String word = flow.say(band.blank());
        double end = flow.left() + flow.width() - PAD;
        double start = end - 0.28 * flow.width();
        double base = top + height - 2 * PAD;
        text(word, start - flow.measure(word, font) - 2 * PAD, top + PAD + font, false);
        if (band.filled().isEmpty()) {
            flow.drawn(() -> flow.canvas().line(start, base, end, base, THIN, 0));
        } else {
            text(flow.say(band.filled()), start, top + PAD + font, true);
        }
    }

    /** A cell, its letters on one line with the large ones beside it. */
    private void cell(Cell cell, int column, double top, double height, double drop) {
        double x = edges[column];
        double width = edges[column + 1] - x;
        if (cell.role() == Role.TICK) {
            double side = Math.min(1.05 * font, width - PAD);
            double at = x + (width - side) / 2;
            flow.drawn(() -> flow.canvas().box(at, top + (height - side) / 2, side, side, false));
            return;
        }
        if (cell.role() == Role.BLANK) {
            double base = top + height - 2 * PAD;
            flow.drawn(() -> flow.canvas().line(x + PAD, base, x + width - PAD, base, THIN, 0));
        }
        if (cell.role() == Role.CHANGED) {
            flow.drawn(() -> flow.canvas().box(x + 0.5, top + 0.5, width - 1, height - 1, false));
        }
        if (cell.role() == Role.HEADLINE) {
            double points = LARGE * font;
            String number = text(cell);
            double room = x + width - PAD - flow.measure(number, points);
            flow.drawn(() -> flow.canvas().text(number, room, top + PAD + points, points, true));
            return;
        }
        boolean strong = cell.role() == Role.STRONG || cell.role() == Role.CHANGED;
        lines(lines(text(cell), column), column, top + drop, strong);
    }

    private String text(Cell cell) {
        return cell.lines().stream().map(flow::say).collect(Collectors.joining("\n"));
    }

    private List<String> lines(Remark remark) {
        return flow.lines(flow.say(remark.text()), font, flow.width() - 6 * PAD);
    }

    private List<String> lines(String text, int column) {
        return flow.lines(text, font, edges[column + 1] - edges[column] - 2 * PAD);
    }

    private void lines(List<String> lines, int column, double top, boolean strong) {
        double y = top + PAD + font;
        for (String line : lines) {
            double room = edges[column + 1] - PAD - flow.measure(line, font);
            text(line, table.columns().get(column).align() == Align.RIGHT ? room : edges[column] + PAD, y, strong);
            y += flow.lineHeight(font);
        }
    }

    private void text(String text, double x, double y, boolean strong) {
        flow.drawn(() -> flow.canvas().text(text, x, y, font, strong));
    }

    private void line(double thick) {
        double y = flow.y();
        double grey = thick == THIN ? QUIET : 0;
        flow.drawn(() -> flow.canvas().line(flow.left(), y, flow.left() + flow.width(), y, thick, grey));
    }

    /** A line on the left of every column that begins or follows a group. */
    private void betweenGroups(double top, double height) {
        for (int i = 1; i < table.columns().size(); i++) {
            double x = edges[i];
            if (table.beginsGroup(i)) {
                flow.drawn(() -> flow.canvas().line(x, top, x, top + height, THIN, QUIET));
            }
        }
    }
}
