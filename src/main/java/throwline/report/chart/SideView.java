package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import throwline.words.Words;

/**
 * Straight ways down from one height to the ground. Heights are drawn at the scale of the axis along the ground, so the
 * picture is to scale whatever its size.
 */
final class SideView extends Overlay {

    private static final long serialVersionUID = 1;
    /** Points above the start of the ways and below the ground. */
    private static final int ABOVE = 34;

    private static final int BELOW = 14;
    private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20};
    private static final double TICK_APART = 18;

    private final Layout layout;
    private final transient List<Path> paths;
    private final double height;
    private final boolean obstacle;
    private final transient OptionalDouble field;
    private final transient Words words;

    /**
     * A view.
     *
     * @param layout for which place it is drawn
     * @param paths the ways down
     * @param height where they start, m
     * @param obstacle true where something of that height stands there
     * @param field length of the field from there, m
     */
    SideView(Layout layout, List<Path> paths, double height, boolean obstacle, OptionalDouble field, Words words) {
        this.layout = layout;
        this.paths = List.copyOf(paths);
        this.height = height;
        this.obstacle = obstacle;
        this.field = field;
        this.words = words;
    }

    /**
     * One way down.
     *
     * @param look its colour and line
     * @param to where it meets the ground, m
     * @param near nearest place of its band, m
     * @param far farthest place of its band, m
     */
    record Path(HouseStyle.Look look, double to, double near, double far) {}

    /** Points that the view needs where the axis covers so many metres. */
    int heightFor(double metres) {
        double across = layout.width()
                - 36
                - Rows.room(layout).getLeft()
                - Rows.room(layout).getRight();
        return (int) (ABOVE + BELOW + height * across / metres);
    }

    XYPlot plot() {
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        NumberAxis up = HouseStyle.axis("", 0, 1, 1);
        up.setVisible(false);
        plot.setRangeAxis(up);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.addAnnotation(this, false);
        return plot;
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        double start = frame.x(0);
        double metre = frame.x(1) - start;
        double ground = area.getMaxY() - BELOW;
        double top = ground - height * metre;
        for (Path path : paths) {
            band(g2, path, start, metre, ground, top);
        }
        ruler(g2, ink, area, metre, ground);
        ground(g2, area, ground);
        fieldEnd(g2, ink, area, start, metre, ground, top);
        if (obstacle) {
            obstacle(g2, ink, start, area, ground, top);
        }
        for (Path path : paths) {
            g2.setPaint(path.look().color());
            g2.setStroke(path.look().line());
            g2.draw(new Line2D.Double(start, top, start + path.to() * metre, ground));
        }
        for (Path path : paths) {
            ink.mark(path.look(), start + path.to() * metre, ground, true);
        }
    }

    private static void band(Graphics2D g2, Path path, double start, double metre, double ground, double top) {
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(start, top);
        wedge.lineTo(start + path.near() * metre, ground);
        wedge.lineTo(start + path.far() * metre, ground);
        wedge.closePath();
        g2.setPaint(path.look().band());
        g2.fill(wedge);
    }

    private static void ground(Graphics2D g2, Rectangle2D area, double ground) {
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(new BasicStroke(2));
        g2.draw(new Line2D.Double(area.getMinX(), ground, area.getMaxX(), ground));
    }

    private void obstacle(Graphics2D g2, Ink ink, double start, Rectangle2D area, double ground, double top) {
        double width = Math.min(10, start - area.getMinX());
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.fill(new Rectangle2D.Double(start - width, top, width, ground - top));
        ink.text(
                words.say("chart.descent.obstacle", metres(height)),
                HouseStyle.TEXT,
                HouseStyle.INK,
                start - width,
                top - 14,
                Ink.Side.RIGHT);
    }

    private void fieldEnd(
            Graphics2D g2, Ink ink, Rectangle2D area, double start, double metre, double ground, double top) {
        if (field.isEmpty() || start + field.getAsDouble() * metre > area.getMaxX()) {
            return;
        }
        double x = start + field.getAsDouble() * metre;
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(new BasicStroke(2));
        g2.draw(new Line2D.Double(x, top - 4, x, ground + 6));
        ink.text(
                words.say("chart.descent.field", metres(field.getAsDouble())),
                HouseStyle.TEXT,
                HouseStyle.INK,
                Math.min(x + 60, area.getMaxX()),
                top - 14,
                Ink.Side.LEFT);
    }

    /** Heights on the left, as close as they can be read. */
    private void ruler(Graphics2D g2, Ink ink, Rectangle2D area, double metre, double ground) {
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            step = STEPS[i] * metre >= TICK_APART ? STEPS[i] : step;
        }
        g2.setStroke(HouseStyle.THIN);
        for (int i = 0; i * step <= height + 1e-9; i++) {
            double y = ground - i * step * metre;
            g2.setPaint(HouseStyle.GRID);
            g2.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
            ink.text(metres(i * step), HouseStyle.TEXT, HouseStyle.INK, area.getMinX() - 8, y, Ink.Side.LEFT);
        }
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f m" : "%.1f m", value);
    }
}
