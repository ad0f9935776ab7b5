package throwline.report.document;

import java.util.List;
import java.util.Optional;
import throwline.report.document.Block.Depth;
import throwline.study.Headline;

/**
 * Rows of numbers with a column a set-up, for one or several packs and models: tables one below the other where text is
 * read line by line, a card a row on a page.
 *
 * @param title above it on a page; empty where a section has said it
 * @param groups packs and models, in order
 * @param rows what is compared, in order
 */
public record Comparison(Text title, List<Group> groups, List<Row> rows) implements Block {

    public Comparison {
        groups = List.copyOf(groups);
        rows = List.copyOf(rows);
    }

    /**
     * Set-ups side by side.
     *
     * @param who what tells the group from the others; empty where there is one only
     * @param heading above its table; may be empty
     * @param warnings what must be read before its numbers
     * @param columns names of the set-ups
     */
    public record Group(Text who, Text heading, List<Text> warnings, List<String> columns) {
        public Group {
            warnings = List.copyOf(warnings);
            columns = List.copyOf(columns);
        }
    }

    /**
     * A row.
     *
     * @param key its name in JSON where it shows numbers of results; may be empty
     * @param family above it and its neighbours of the same family; empty for none
     * @param label what it shows
     * @param depth how soon it is needed
     * @param cells one list a group, one cell a column; an empty list where the group has no such row
     * @param below more about the cells, in order
     */
    public record Row(String key, Text family, Text label, Depth depth, List<List<Cell>> cells, List<Below> below) {
        public Row {
            cells = cells.stream().map(List::copyOf).toList();
            below = List.copyOf(below);
        }
    }

    /**
     * A line below a row that says more about its cells.
     *
     * @param label what it says; may be empty
     * @param depth how soon it is needed
     * @param cells one list a group, one text a column, empty where it says nothing
     */
    public record Below(Text label, Depth depth, List<List<Text>> cells) {
        public Below {
            cells = cells.stream().map(List::copyOf).toList();
        }

        /** A line that is shown at once. */
        public static Below of(Text label, List<List<Text>> cells) {
            return new Below(label, Depth.ESSENTIAL, cells);
        }

        /** The same, folded until it is asked for. */
        public Below folded() {
            return new Below(label, Depth.DETAIL, cells);
        }
    }

    /**
     * A number of one set-up.
     *
     * @param text what is read first
     * @param role QUIET where it cannot be told apart from that of the first column, REMARK where the text says enough
     *     without its reason
     * @param reason why there is no number; empty where there is one
     * @param number what the text shows, where it shows a headline number
     * @param facts where it comes from, shown when asked for
     */
    public record Cell(Text text, Role role, Text reason, Optional<Measured> number, List<Fact> facts) {
        public Cell {
            facts = List.copyOf(facts);
        }

        /** A cell that is only read. */
        public static Cell of(Text text) {
            return new Cell(text, Role.PLAIN, Text.none(), Optional.empty(), List.of());
        }
    }

    /**
     * A headline number as programs read it.
     *
     * @param known value and band, in SI units
     * @param factor from SI units to those of JSON
     * @param drawn true where its band is drawn to the scale of the row
     */
    public record Measured(Headline.Known known, double factor, boolean drawn) {}

    /** A line of what opens below a number. */
    public record Fact(Text label, Text text) {}
}
