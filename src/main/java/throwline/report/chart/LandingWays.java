package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import throwline.model.Field;
import throwline.words.Words;

/** Paths of landings from the obstacle to touch-down: marks where the round-out begins and where the wheels touch. */
final class LandingWays extends Overlay {

    private static final long serialVersionUID = 1;
    private static final double OBSTACLE_WIDTH = 10;
    private static final double LABEL_ABOVE = 12;

    private final transient List<Way> ways;
    private final transient Field field;
    private final transient Words words;

    private LandingWays(List<Way> ways, Field field, Words words) {
        this.ways = List.copyOf(ways);
        this.field = field;
        this.words = words;
    }

    /**
     * One path.
     *
     * @param look its colour, line and mark
     * @param spots place and height of the wheels, m
     * @param roundOut where the round-out begins, m
     * @param touchdown where the wheels touch, m
     */
    record Way(HouseStyle.Look look, List<double[]> spots, double roundOut, double touchdown) {
        Way {
            spots = List.copyOf(spots);
        }
    }

    /** A plot of these paths over a height axis; the axis along the ground is shared with what stands below. */
    static XYPlot plot(NumberAxis up, List<Way> ways, Field field, Words words) {
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setRangeAxis(up);
        plot.addAnnotation(new LandingWays(ways, field, words), false);
        return plot;
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        double ground = frame.y(0);
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(new BasicStroke(2));
        g2.draw(new Line2D.Double(area.getMinX(), ground, area.getMaxX(), ground));
        obstacle(g2, ink, frame, ground);
        fieldEnd(g2, ink, frame, ground);
        for (Way way : ways) {
            Path2D line = new Path2D.Double();
            for (int i = 0; i < way.spots().size(); i++) {
                double x = frame.x(way.spots().get(i)[0]);
                double y = frame.y(way.spots().get(i)[1]);
                if (i == 0) {
                    line.moveTo(x, y);
                } else {
                    line.lineTo(x, y);
                }
            }
            g2.setPaint(way.look().color());
            g2.setStroke(way.look().line());
            g2.draw(line);
        }
        for (Way way : ways) {
            double begins = frame.y(heightAt(way, way.roundOut()));
            ink.mark(way.look(), frame.x(way.roundOut()), begins, false);
            ink.mark(way.look(), frame.x(way.touchdown()), ground, true);
        }
    }

    private void obstacle(Graphics2D g2, Ink ink, Frame frame, double ground) {
        if (field.obstacle() <= 0) {
            return;
        }
        double start = frame.x(0);
        double top = frame.y(field.obstacle());
        double width = Math.min(OBSTACLE_WIDTH, start - frame.area().getMinX());
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.fill(new Rectangle2D.Double(start - width, top, width, ground - top));
        ink.text(
                words.say("chart.descent.obstacle", metres(field.obstacle())),
                HouseStyle.TEXT,
                HouseStyle.INK,
                start - width,
                top - LABEL_ABOVE,
                Ink.Side.RIGHT);
    }

    private void fieldEnd(Graphics2D g2, Ink ink, Frame frame, double ground) {
        if (field.length().isEmpty()) {
            return;
        }
        Rectangle2D area = frame.area();
        double x = frame.x(field.length().getAsDouble());
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(new BasicStroke(2));
        g2.draw(new Line2D.Double(x, area.getMinY() + 2 * LABEL_ABOVE, x, ground + 6));
        ink.text(
                words.say("chart.descent.field", metres(field.length().getAsDouble())),
                HouseStyle.TEXT,
                HouseStyle.INK,
                Math.min(x + 60, area.getMaxX()),
                area.getMinY() + LABEL_ABOVE,
                Ink.Side.LEFT);
    }

    private static double heightAt(Way way, double along) {
        for (int i = 1; i < way.spots().size(); i++) {
            double[] a = way.spots().get(i - 1);
            double[] b = way.spots().get(i);
            if (a[0] <= along && along <= b[0] && b[0] > a[0]) {
                return a[1] + (along - a[0]) / (b[0] - a[0]) * (b[1] - a[1]);
            }
        }
        return way.spots().get(0)[1];
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f m" : "%.1f m", value);
    }
}
