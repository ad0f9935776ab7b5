package throwline.report.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Row with a name on the left and numbers as marks with whiskers, each with its label.
 *
 * @param name what stands on the left
 * @param look its colour, line and mark
 * @param numbers rising
 * @param remark said instead where there is no number; else empty
 */
record Row(String name, ChartStyle.Look look, List<Value> numbers, String remark) {

    private static final double WHISKER_END = 4;
    private static final double LABEL_ABOVE = 15;
    private static final double GAP = 16;
    private static final double MIDDLE = 0.62;

    Row {
        numbers = List.copyOf(numbers);
    }

    /**
     * Number with its band.
     *
     * @param value place of the mark
     * @param low end of the whisker
     * @param high other end
     * @param filled false for a hollow mark
     * @param label what stands above
     */
    record Value(double value, double low, double high, boolean filled, String label) {}

    /** Where the line of a row lies, in rows. */
    static double middle(int index) {
        return index + MIDDLE;
    }

    void draw(Brush brush, Layout layout, double middle) {
        Rectangle2D area = brush.area();
        double y = brush.y(Place.of(0, middle));
        brush.line(area.getMinX(), y, area.getMaxX(), y, ChartStyle.GRID, ChartStyle.THIN);
        boolean narrow = layout == Layout.NARROW;
        double x = area.getMinX() + (narrow ? 2 - layout.names() : -12);
        Brush.Side side = narrow ? Brush.Side.RIGHT : Brush.Side.LEFT;
        brush.name(name, layout.names() - 20, layout.nameLines(), x, y, side);
        if (numbers.isEmpty()) {
            brush.textOnGround(remark, ChartStyle.TEXT, ChartStyle.QUIET_INK, area.getMinX() + 8, y, Brush.Side.RIGHT);
        }
        double free = area.getMinX() - layout.names();
        for (Value number : numbers) {
            free = draw(brush, layout, number, y, free);
        }
    }

    /** Draws one number; its label is moved right, or below, where the one before it stands in the way. */
    private double draw(Brush brush, Layout layout, Value number, double y, double free) {
        double x = brush.x(Place.of(number.value, 0));
        double low = brush.x(Place.of(number.low, 0));
        double high = brush.x(Place.of(number.high, 0));
        brush.fill(new Rectangle2D.Double(low, y - WHISKER_END, high - low, 2 * WHISKER_END), look.band());
        brush.line(low, y, high, y, look.color(), look.whisker());
        brush.line(low, y - WHISKER_END, low, y + WHISKER_END, look.color(), look.whisker());
        brush.line(high, y - WHISKER_END, high, y + WHISKER_END, look.color(), look.whisker());
        brush.mark(look, x, y, number.filled);
        double width = Brush.width(number.label, ChartStyle.TEXT);
        double rightmost = brush.area().getMaxX() + layout.right() - width;
        double left = Math.min(rightmost, x - width / 2);
        boolean below = free > rightmost;
        if (!below) {
            left = Math.max(free, left);
        }
        double at = below ? y + LABEL_ABOVE : y - LABEL_ABOVE;
        brush.text(number.label, ChartStyle.TEXT, ChartStyle.INK, left, at, Brush.Side.RIGHT);
        return left + width + GAP;
    }
}
