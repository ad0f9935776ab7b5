package throwline.report.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table.
 *
 * @param columns from left to right
 * @param rows from top to bottom
 */
public record Table(List<Column> columns, List<Row> rows) implements Block {

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** Neighbours of the same group, from left to right; empty where no column has a group. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (i > 0 && !beginsGroup(i)) {
                Group last = groups.remove(groups.size() - 1);
                groups.add(new Group(last.name(), last.first(), last.columns() + 1));
            } else {
                groups.add(new Group(columns.get(i).group(), i, 1));
            }
        }
        return groups.stream().allMatch(group -> group.name().isEmpty()) ? List.of() : groups;
    }

    /** True where a column begins or follows a group. */
    public boolean beginsGroup(int column) {
        return column > 0
                && !columns.get(column).group().equals(columns.get(column - 1).group());
    }

    /**
     * Columns side by side.
     *
     * @param name above them; may be empty
     * @param first number of the first of them
     * @param columns how many
     */
    public record Group(Text name, int first, int columns) {}

    /** On which side of its column a cell stands. */
    public enum Align {
        /** Words. */
        LEFT,
        /** Numbers. */
        RIGHT
    }

    /**
     * A column.
     *
     * @param head above it; may be empty
     * @param group above it and its neighbours of the same group; empty for none
     * @param weight share of the width on paper
     * @param align side on which its cells stand
     */
    public record Column(Text head, Text group, double weight, Align align) {
        /** Its name where it stands alone: its group and its head. */
        public Text label() {
            return group.isEmpty() ? head : head.isEmpty() ? group : Text.join(Text.Join.BLANK, List.of(group, head));
        }

        /** A column of words. */
        public static Column left(Text head) {
            return new Column(head, Text.none(), 1, Align.LEFT);
        }

        /** A column of numbers. */
        public static Column right(Text head) {
            return new Column(head, Text.none(), 1, Align.RIGHT);
        }
    }

    /** A row. */
    public sealed interface Row permits Cells, Band, Remark {}

    /**
     * A row of one cell a column.
     *
     * @param cells as many as columns
     * @param role QUIET where it says more about the row above
     */
    public record Cells(List<Cell> cells, Role role) implements Row {
        public Cells {
            cells = List.copyOf(cells);
        }

        /** A plain row of plain cells. */
        public static Cells of(Text... cells) {
            return of(Arrays.asList(cells));
        }

        /** A plain row of plain cells. */
        public static Cells of(List<? extends Text> cells) {
            return new Cells(cells.stream().map(Cell::of).toList(), Role.PLAIN);
        }
    }

    /**
     * A row across the table that begins a part of it.
     *
     * @param text on the left
     * @param blank what is to be filled in on the right; empty for nothing
     * @param filled what it is filled in with; empty for a line to write on
     */
    public record Band(Text text, Text blank, Text filled) implements Row {
        /** A row with nothing to be filled in. */
        public static Band of(Text text) {
            return new Band(text, Text.none(), Text.none());
        }
    }

    /** A sentence across the table about the row above it. */
    public record Remark(Text text) implements Row {}

    /**
     * A cell.
     *
     * @param lines what stands in it, one below the other
     * @param role what it is for
     */
    public record Cell(List<Text> lines, Role role) {
        public Cell {
            lines = List.copyOf(lines);
        }

        /** A plain cell. */
        public static Cell of(Text... lines) {
            return new Cell(List.of(lines), Role.PLAIN);
        }

        /** A cell of this role. */
        public static Cell of(Role role, Text... lines) {
            return new Cell(List.of(lines), role);
        }
    }
}
