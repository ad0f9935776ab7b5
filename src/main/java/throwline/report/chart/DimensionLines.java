package throwline.report.chart;

import java.awt.Stroke;
import java.util.List;

/** Dimensions of a drawing: thin lines with slanted ends, text on a patch of ground. */
final class DimensionLines {

    private static final double SLANT = 4;
    private static final Stroke DASHED = ChartStyle.stroke(1.2f, 6, 3);

    private final List<Item> items;

    /** Lines that are added to these items. */
    DimensionLines(List<Item> items) {
        this.items = items;
    }

    /** A line with slanted ends. */
    void line(Place from, Place to) {
        items.add(Item.Line.of(ChartStyle.QUIET_INK, ChartStyle.THIN, from, to));
        for (Place end : List.of(from, to)) {
            items.add(Item.Line.of(
                    ChartStyle.QUIET_INK, ChartStyle.THIN, end.moved(-SLANT, SLANT), end.moved(SLANT, -SLANT)));
        }
    }

    /** A dimension across the page, its text at a share of its length. */
    void across(Place from, Place to, double share, String text) {
        line(from, to);
        middle(text, new Place(from.x() + share * (to.x() - from.x()), from.y(), from.right(), from.below()));
    }

    /** A dimension down the page, its text beside it at a share of its length. */
    void down(Place from, Place to, double share, String text, Brush.Side side) {
        line(from, to);
        double y = from.y() + share * (to.y() - from.y());
        Place beside = new Place(from.x(), y, from.right() + (side == Brush.Side.LEFT ? -6 : 6), from.below());
        items.add(Item.Text.small(beside, text, side));
    }

    /** A line that leads from an outline to a dimension. */
    void extension(Place from, Place to) {
        items.add(Item.Line.of(ChartStyle.GRID, ChartStyle.THIN, from, to));
    }

    void dashed(Place from, Place to) {
        items.add(Item.Line.of(ChartStyle.QUIET_INK, DASHED, from, to));
    }

    /** Text that begins at a place. */
    void note(String text, Place place) {
        items.add(Item.Text.small(place, text, Brush.Side.RIGHT));
    }

    /** Text with its middle at a place. */
    void middle(String text, Place place) {
        items.add(Item.Text.small(place, text, Brush.Side.MIDDLE));
    }
}
