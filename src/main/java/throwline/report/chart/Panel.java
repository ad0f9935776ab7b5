package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Panel of a picture: what stands over one axis up.
 *
 * @param height its share of the picture
 * @param up the axis at its left
 * @param grid which marks go on as lines
 * @param toScale true where the axis up has the scale of the one across: from its lower end at the bottom, or from its
 *     upper one at the top where it is turned over
 * @param items in the order in which they are drawn
 */
record Panel(int height, Axis up, Grid grid, boolean toScale, List<Item> items) {

    /** Height of one row, points. */
    static final int ROW = 46;

    /** Height of a heading in rows. */
    private static final double HEADING = 0.5;

    Panel {
        items = List.copyOf(items);
    }

    /** Lines of a grid. */
    enum Grid {
        NONE,
        ACROSS,
        BOTH
    }

    /** Curves and what goes with them. */
    static Panel graph(int height, Axis up, List<? extends Item> items) {
        return new Panel(height, up, Grid.BOTH, false, List.copyOf(items));
    }

    /** A drawing that brings its own scales. */
    static Panel drawing(int height, Axis up, boolean toScale, List<Item> items) {
        return new Panel(height, up, Grid.NONE, toScale, items);
    }

    /** Rows below each other, with a heading where it is not empty; further items stand in front. */
    static Panel rows(Layout layout, List<Row> rows, String heading, List<Item> further) {
        return rows(layout, rows, heading, further, 0);
    }

    /** The same with room below the last row, in rows. */
    static Panel rows(Layout layout, List<Row> rows, String heading, List<Item> further, double below) {
        List<Item> items = new ArrayList<>();
        if (!heading.isEmpty()) {
            items.add(brush -> heading(brush, layout, heading));
        }
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double middle = Row.middle(i);
            items.add(brush -> row.draw(brush, layout, middle));
        }
        items.addAll(further);
        double top = heading.isEmpty() ? 0 : -HEADING;
        int height = (int) (ROW * (rows.size() + below - 2 * top));
        return new Panel(height, Axis.hidden(top, rows.size() + below).turnedOver(), Grid.ACROSS, false, items);
    }

    /** Above the rows, from the left end of the axis; from the names on where it would not fit. */
    private static void heading(Brush brush, Layout layout, String heading) {
        double left = brush.area().getMinX();
        double right = brush.area().getMaxX() + layout.right();
        double x = Brush.width(heading, ChartStyle.STRONG) <= right - left ? left : left - layout.names();
        List<String> lines = Brush.wrapped(heading, ChartStyle.STRONG, right - x, 2);
        for (int i = 0; i < lines.size(); i++) {
            double y = brush.area().getMinY() + 10 + i * brush.height(ChartStyle.STRONG);
            brush.text(lines.get(i), ChartStyle.STRONG, ChartStyle.INK, x, y, Brush.Side.RIGHT);
        }
    }
}
