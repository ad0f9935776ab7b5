package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What stands on one sheet, whatever it is drawn with.
 *
 * @param name of the file, without its ending
 * @param title at the top
 * @param below the title
 * @param foot at the bottom of each page
 * @param size of the paper or card
 * @param blocks from top to bottom
 */
public record SheetDocument(String name, String title, String below, String foot, Size size, List<Block> blocks) {

    public SheetDocument {
        blocks = List.copyOf(blocks);
    }

    /** The same in another size. */
    SheetDocument with(Size other) {
        return new SheetDocument(name, title, below, foot, other, blocks);
    }

    /** What a sheet is made of. */
    public sealed interface Block permits Heading, Paragraph, Checks, Table {}

    /** A heading. */
    public record Heading(String text) implements Block {}

    /**
     * Sentences.
     *
     * @param text the sentences
     * @param strong true where nobody may overlook them
     */
    public record Paragraph(String text, boolean strong) implements Block {}

    /** Things to do one after the other, each with a box to tick. */
    public record Checks(List<String> items) implements Block {
        public Checks {
            items = List.copyOf(items);
        }
    }

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

        /** Widths of the columns as a style sheet has them. */
        public List<String> widths() {
            double total = columns.stream().mapToDouble(Column::weight).sum();
            return columns.stream()
                    .map(c -> String.format(Locale.ROOT, "%.2f%%", 100 * c.weight() / total))
                    .toList();
        }

        /** What a column is called where it stands alone: its group and its head. */
        public String label(int column) {
            Column c = columns.get(column);
            return (c.group() + " " + c.head()).strip();
        }

        /** True where a column begins or follows a group. */
        public boolean beginsGroup(int column) {
            return column > 0
                    && !columns.get(column)
                            .group()
                            .equals(columns.get(column - 1).group());
        }

        /** Neighbours of the same group, from left to right; empty where no column has a group. */
        public List<Group> groups() {
            List<Group> groups = new ArrayList<>();
            for (Column column : columns) {
                int last = groups.size() - 1;
                if (last >= 0 && groups.get(last).name().equals(column.group())) {
                    groups.set(last, new Group(column.group(), groups.get(last).columns() + 1));
                } else {
                    groups.add(new Group(column.group(), 1));
                }
            }
            return groups.stream().allMatch(group -> group.name().isEmpty()) ? List.of() : groups;
        }
    }

    /**
     * Columns side by side.
     *
     * @param name above them; may be empty
     * @param columns how many
     */
    public record Group(String name, int columns) {}

    /**
     * A column.
     *
     * @param head above it
     * @param group above it and its neighbours of the same group; empty for none
     * @param weight share of the width
     * @param toTheRight true for numbers
     */
    public record Column(String head, String group, double weight, boolean toTheRight) {}

    /** A row. */
    public sealed interface Row permits Cells, Band, Remark {}

    /** A row of one cell a column. */
    public record Cells(List<Cell> cells) implements Row {
        public Cells {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A row across the table that begins a part of it.
     *
     * @param text on the left
     * @param blank what is to be filled in on the right; empty for nothing
     * @param filled what it is filled in with; empty for a line to write on
     */
    public record Band(String text, String blank, String filled) implements Row {
        Band(String text, String blank) {
            this(text, blank, "");
        }
    }

    /** A sentence across the table about the row above it. */
    public record Remark(String text) implements Row {}

    /**
     * A cell.
     *
     * @param text what stands in it; lines are kept
     * @param kind what it is for
     */
    public record Cell(String text, Kind kind) {
        static Cell of(String text) {
            return new Cell(text, Kind.PLAIN);
        }

        /** Its kind as a style sheet has it. */
        public String style() {
            return kind.name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a cell is for. */
    public enum Kind {
        /** To be read. */
        PLAIN,
        /** To be read; it has changed since an earlier sheet. */
        CHANGED,
        /** Strong. */
        STRONG,
        /** The number that is set on a gauge: strong, and larger than all else. */
        LARGE,
        /** A box to tick. */
        TICK,
        /** Room to write in. */
        BLANK
    }
}
