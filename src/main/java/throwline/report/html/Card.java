package throwline.report.html;

import java.util.List;
import java.util.Optional;
import throwline.report.chart.SetUpMark;

/**
 * Row of the table on a page: a line a set-up, with its band drawn to the scale of the card.
 *
 * @param title name of the row
 * @param groups one a pack and model
 */
public record Card(String title, List<Group> groups) {

    public Card {
        groups = List.copyOf(groups);
    }

    /**
     * Lines of one pack.
     *
     * @param name of the pack; empty where there is one only
     */
    public record Group(String name, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One set-up.
     *
     * @param mark its mark in every chart
     * @param name what its owner calls it
     * @param figure what is read first
     * @param more what is read next
     * @param bar its band; empty where there is no number
     * @param exact the number as in JSON, empty where there is none
     * @param opened how it was found; empty where nothing is to be said
     * @param close true where it cannot be told apart from that of the first set-up
     */
    public record Line(
            SetUpMark mark,
            String name,
            String figure,
            List<String> more,
            Optional<Bar> bar,
            Optional<Exact> exact,
            List<Fact> opened,
            boolean close) {
        public Line {
            more = List.copyOf(more);
            opened = List.copyOf(opened);
        }
    }

    /**
     * Where a number and its band lie, as shares of the bar in per cent.
     *
     * @param zero where zero lies; empty where it is not on the bar
     */
    public record Bar(String low, String value, String high, String width, Optional<String> zero) {}

    /** A number and its band to six figures. */
    public record Exact(String value, String low, String high) {}

    /** A line of what opens below a number. */
    public record Fact(String label, String text) {}
}
