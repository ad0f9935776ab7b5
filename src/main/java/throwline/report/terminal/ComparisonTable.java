package throwline.report.terminal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.report.Page;
import throwline.report.document.Block.Depth;
import throwline.report.document.Comparison;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Text;

/**
 * Group of a comparison as lines: a column a set-up, lines of a row below each other; where there is one set-up only,
 * all of a row in one line.
 */
final class ComparisonTable {

    /** Widths at which cells of set-ups are broken. */
    private static final int[] SET_UPS = {18, 16, 15, 14, 13, 16};

    /** The same where there is only one. */
    private static final int[] ONE_SET_UP = {Integer.MAX_VALUE, 60, 45, 30, 16};

    /** Width at which labels are broken where that lets cells stay whole. */
    private static final int SHORT_LABEL = 18;

    private final Page page;
    private final Figures figures;
    private final boolean all;
    private final Map<String, String> marks = new LinkedHashMap<>();

    /**
     * A table.
     *
     * @param page what the place can show
     * @param figures write the numbers
     * @param all true where nothing is folded
     */
    ComparisonTable(Page page, Figures figures, boolean all) {
        this.page = page;
        this.figures = figures;
        this.all = all;
    }

    /** The lines of a group, and below them why numbers are missing. */
    List<String> lines(Comparison comparison, int group) {
        List<String> columns = comparison.groups().get(group).columns();
        boolean single = columns.size() == 1;
        List<ColumnLayout.Head> heads = new ArrayList<>(List.of(new ColumnLayout.Head("", false, false)));
        columns.forEach(name -> heads.add(new ColumnLayout.Head(single ? "" : name, false, false)));
        ColumnLayout layout = single
                ? new ColumnLayout(page, heads, Integer.MAX_VALUE, ONE_SET_UP)
                : new ColumnLayout(page, heads, SHORT_LABEL, SET_UPS);
        String family = "";
        for (Comparison.Row row : comparison.rows()) {
            if (row.cells().get(group).isEmpty() || isFolded(row.depth())) {
                continue;
            }
            String next = figures.show(row.family());
            if (!next.isEmpty() && !next.equals(family)) {
                layout.row(labelled(next, Collections.nCopies(columns.size(), "")), false);
            }
            family = next;
            if (single) {
                layout.row(oneLine(row, group), false);
            } else {
                severalLines(row, group, layout);
            }
        }
        List<String> lines = new ArrayList<>(layout.lines());
        lines.addAll(marks.isEmpty() ? List.of() : List.of(""));
        marks.forEach((reason, mark) -> lines.addAll(Wrapped.paragraph(mark + " ", "    ", reason, page.width())));
        return lines;
    }

    private boolean isFolded(Depth depth) {
        return !all && depth == Depth.DETAIL;
    }

    private void severalLines(Comparison.Row row, int group, ColumnLayout layout) {
        String indent = row.family().isEmpty() ? "" : "  ";
        List<Comparison.Cell> cells = row.cells().get(group);
        layout.row(
                labelled(
                        indent + figures.show(row.label()),
                        cells.stream().map(this::cell).toList()),
                false,
                differing(cells));
        for (Comparison.Below below : row.below()) {
            if (!isFolded(below.depth())) {
                List<String> more =
                        below.cells().get(group).stream().map(figures::show).toList();
                layout.row(labelled(indent + "  " + figures.show(below.label()), more), true);
            }
        }
    }

    /** Columns of numbers that clearly differ from that of the first. */
    private static List<Integer> differing(List<Comparison.Cell> cells) {
        List<Integer> columns = new ArrayList<>();
        boolean tells = cells.stream().anyMatch(cell -> cell.role() == Role.QUIET);
        for (int i = 1; tells && i < cells.size(); i++) {
            if (cells.get(i).role() == Role.HEADLINE) {
                columns.add(i + 1);
            }
        }
        return columns;
    }

    private List<List<String>> oneLine(Comparison.Row row, int group) {
        List<String> said = new ArrayList<>(List.of(cell(row.cells().get(group).get(0))));
        for (Comparison.Below below : row.below()) {
            String more = figures.show(below.cells().get(group).get(0));
            if (!more.isEmpty() && !isFolded(below.depth())) {
                said.add((figures.show(below.label()) + " " + more).strip());
            }
        }
        String indent = row.family().isEmpty() ? "" : "  ";
        return labelled(indent + figures.show(row.label()), List.of(String.join("; ", said)));
    }

    /** What is read first, with a mark where it is too close to call or where the reason stands below the table. */
    private String cell(Comparison.Cell cell) {
        String text = figures.show(cell.text());
        if (cell.role() == Role.QUIET) {
            return figures.show(Text.say("row.close.mark", cell.text()));
        }
        if (cell.reason().isEmpty() || (!all && cell.role() == Role.REMARK)) {
            return text;
        }
        String reason = figures.show(cell.reason());
        return text + " " + marks.computeIfAbsent(reason, r -> "(" + (marks.size() + 1) + ")");
    }

    private static List<List<String>> labelled(String label, List<String> texts) {
        List<List<String>> cells = new ArrayList<>(List.of(List.of(label)));
        texts.forEach(text -> cells.add(List.of(text)));
        return cells;
    }
}
