package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.study.FlightQuantity;
import throwline.study.Learnt;

/** A measurement in its row, below the bar: a hollow mark with its own nine of ten; crossed out where it contradicts. */
record MarkedRow(int row, int earlier, Learnt.Measured mark) {

    private static final double BELOW = 0.38;
    private static final double CROSS = 5;
    private static final double APART = 6;

    /** Marks of a set-up in its row, the earlier ones above. */
    static List<MarkedRow> of(Learnt learnt, FlightQuantity quantity, String setUp, int row) {
        List<MarkedRow> marks = new ArrayList<>();
        for (Learnt.Measured mark : learnt.measured()) {
            if (mark.quantity() == quantity && mark.setUp().equals(setUp)) {
                marks.add(new MarkedRow(row, marks.size(), mark));
            }
        }
        return marks;
    }

    /** Room that the marks of a last row need below it, in rows of so many points. */
    static double below(List<MarkedRow> marks, int row, int height) {
        return marks.stream()
                .filter(mark -> mark.row == row)
                .mapToDouble(mark -> Row.middle(row) + BELOW - row - 1 + (APART * mark.earlier + 2 * CROSS) / height)
                .reduce(0, Math::max);
    }

    /** Smallest value that an axis must reach; one that contradicts may lie beyond. */
    double least(double unit) {
        return mark.wrong() ? Double.POSITIVE_INFINITY : unit * mark.value();
    }

    /** Largest value that an axis must reach. */
    double most(double unit) {
        return mark.wrong() ? Double.NEGATIVE_INFINITY : unit * mark.value();
    }

    List<Item> items(double unit, double left, double right) {
        double y = Row.middle(row) + BELOW;
        double value = unit * mark.value();
        double lower = APART * earlier;
        if (value < left || value > right) {
            boolean more = value > right;
            Place edge = Place.of(more ? Place.EDGE : -Place.EDGE, y).moved(more ? -4 : 4, lower);
            String text = (mark.wrong() ? "\u00d7 " : "")
                    + (more ? "" : "\u2190 ")
                    + String.format(Locale.ROOT, "%.1f", value)
                    + (more ? " \u2192" : "");
            Brush.Side side = more ? Brush.Side.LEFT : Brush.Side.RIGHT;
            return List.of(Item.Text.quiet(edge, text, side));
        }
        ChartStyle.Look look = ChartStyle.look(row);
        Place place = Place.of(value, y).moved(0, lower);
        List<Item> items = new ArrayList<>();
        items.add(Item.Line.of(
                look.color(),
                ChartStyle.THIN,
                Place.of(Math.max(left, unit * mark.low()), y).moved(0, lower),
                Place.of(Math.min(right, unit * mark.high()), y).moved(0, lower)));
        items.add(new Item.Mark(place, look, false));
        if (mark.wrong()) {
            items.add(Item.Line.of(
                    ChartStyle.INK, ChartStyle.THIN, place.moved(-CROSS, -CROSS), place.moved(CROSS, CROSS)));
            items.add(Item.Line.of(
                    ChartStyle.INK, ChartStyle.THIN, place.moved(-CROSS, CROSS), place.moved(CROSS, -CROSS)));
        }
        return items;
    }
}
