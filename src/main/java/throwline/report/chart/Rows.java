package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;

/** Marks with whiskers along one axis, a row a set-up, its name on the left and each number at its mark. */
final class Rows extends Overlay {

    /** Height of one row in points. */
    static final int HEIGHT = 46;

    private static final long serialVersionUID = 1;
    /** Height of a heading in rows, and how many lines it may take. */
    private static final double HEADING = 0.5;

    private static final int HEADING_LINES = 2;
    private static final double WHISKER_END = 4;
    private static final double LABEL_ABOVE = 15;
    private static final double GAP = 16;

    private final Layout layout;
    private final transient List<Row> rows;
    private final String heading;

    private Rows(Layout layout, List<Row> rows, String heading) {
        this.layout = layout;
        this.rows = List.copyOf(rows);
        this.heading = heading;
    }

    /**
     * One set-up.
     *
     * @param name what stands on the left
     * @param look its colour, line and mark
     * @param marks its numbers; rising
     * @param remark said instead where there is no number; else empty
     */
    record Row(String name, HouseStyle.Look look, List<Mark> marks, String remark) {
        Row {
            marks = List.copyOf(marks);
        }
    }

    /**
     * One number.
     *
     * @param value place of the mark
     * @param low end of the whisker
     * @param high other end
     * @param filled false for a hollow mark
     * @param label what stands above
     */
    record Mark(double value, double low, double high, boolean filled, String label) {}

    /** A plot of rows over this axis. */
    static XYPlot plot(Layout layout, NumberAxis axis, List<Row> rows) {
        return plot(layout, axis, rows, "");
    }

    /** A plot of rows over this axis with a heading above them. */
    static XYPlot plot(Layout layout, NumberAxis axis, List<Row> rows, String heading) {
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setDomainAxis(axis);
        NumberAxis down = HouseStyle.axis("", heading.isEmpty() ? 0 : -HEADING, rows.size(), 1);
        down.setInverted(true);
        down.setVisible(false);
        plot.setRangeAxis(down);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setRenderer(new XYLineAndShapeRenderer());
        plot.addAnnotation(new Rows(layout, rows, heading), false);
        return plot;
    }

    /** Room on the left for names and on the right for labels that reach out. */
    static RectangleInsets room(Layout layout) {
        return new RectangleInsets(4, layout.names(), 4, layout.right());
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        heading(ink, area);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double y = frame.y(i + 0.62);
            g2.setStroke(HouseStyle.THIN);
            g2.setPaint(HouseStyle.GRID);
            g2.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
            name(ink, row, area.getMinX() - 12, y);
            if (row.marks().isEmpty()) {
                ink.textOnGround(
                        row.remark(), HouseStyle.TEXT, HouseStyle.QUIET_INK, area.getMinX() + 8, y, Ink.Side.RIGHT);
            }
            double free = area.getMinX() - layout.names();
            for (Mark mark : row.marks()) {
                free = mark(g2, ink, row, mark, frame, y, free);
            }
        }
    }

    /** Above the rows, from the left end of the axis; from the names on where it would not fit. */
    private void heading(Ink ink, Rectangle2D area) {
        double right = area.getMaxX() + layout.right();
        boolean fits = ink.width(heading, HouseStyle.STRONG) <= right - area.getMinX();
        double x = fits ? area.getMinX() : area.getMinX() - layout.names();
        List<String> lines = ink.wrapped(heading, HouseStyle.STRONG, right - x, HEADING_LINES);
        double step = ink.height(HouseStyle.STRONG);
        for (int i = 0; i < lines.size(); i++) {
            double y = area.getMinY() + 10 + i * step;
            ink.text(lines.get(i), HouseStyle.STRONG, HouseStyle.INK, x, y, Ink.Side.RIGHT);
        }
    }

    private void name(Ink ink, Row row, double x, double y) {
        List<String> lines = ink.wrapped(row.name(), HouseStyle.STRONG, layout.names() - 20, layout.nameLines());
        double step = ink.height(HouseStyle.STRONG);
        for (int i = 0; i < lines.size(); i++) {
            double at = y + (i - (lines.size() - 1) / 2.0) * step;
            if (layout == Layout.NARROW) {
                double left = x - layout.names() + 14;
                ink.text(lines.get(i), HouseStyle.STRONG, HouseStyle.INK, left, at, Ink.Side.RIGHT);
            } else {
                ink.text(lines.get(i), HouseStyle.STRONG, HouseStyle.INK, x, at, Ink.Side.LEFT);
            }
        }
    }

    /** Draws one mark; its label is moved right, or below, where the one before it stands in the way. */
    private double mark(Graphics2D g2, Ink ink, Row row, Mark mark, Frame frame, double y, double free) {
        double x = frame.x(mark.value());
        double low = frame.x(mark.low());
        double high = frame.x(mark.high());
        g2.setPaint(row.look().band());
        g2.fill(new Rectangle2D.Double(low, y - WHISKER_END, high - low, 2 * WHISKER_END));
        g2.setPaint(row.look().color());
        g2.setStroke(row.look().whisker());
        g2.draw(new Line2D.Double(low, y, high, y));
        g2.draw(new Line2D.Double(low, y - WHISKER_END, low, y + WHISKER_END));
        g2.draw(new Line2D.Double(high, y - WHISKER_END, high, y + WHISKER_END));
        ink.mark(row.look(), x, y, mark.filled());
        double width = ink.width(mark.label(), HouseStyle.TEXT);
        double rightmost = frame.area().getMaxX() + layout.right() - width;
        double left = Math.min(rightmost, x - width / 2);
        boolean below = free > rightmost;
        if (!below) {
            left = Math.max(free, left);
        }
        double at = below ? y + LABEL_ABOVE : y - LABEL_ABOVE;
        ink.text(mark.label(), HouseStyle.TEXT, HouseStyle.INK, left, at, Ink.Side.RIGHT);
        return left + width + GAP;
    }
}
