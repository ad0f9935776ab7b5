package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** Curves over two axes, one a set-up, named at their ends; a mark with a whisker at the point of most interest. */
final class Curves extends Overlay {

    private static final long serialVersionUID = 1;
    /** Room for the labels at the ends of the curves, points. */
    static final int RIGHT = 130;

    private static final double WHISKER_END = 4;
    /** Points of the drawing between two probes of a curve that labels should keep clear of. */
    private static final double PROBE = 6;
    /** From this distance on a line leads from a curve's end to its label. */
    private static final double LEADER = 12;

    private final transient List<Curve> curves;

    private Curves(List<Curve> curves) {
        this.curves = List.copyOf(curves);
    }

    /**
     * One set-up.
     *
     * @param name its label; empty for none
     * @param look its colour, line and mark
     * @param points x and y, in order along the curve; the label stands at the last
     * @param spot the point of most interest
     */
    record Curve(String name, HouseStyle.Look look, List<double[]> points, Optional<Spot> spot) {
        Curve {
            points = List.copyOf(points);
        }
    }

    /** Adds points of the same looks as the curves, for what was measured; one list a curve. */
    static void measured(XYPlot plot, List<Curve> curves, List<List<double[]>> points) {
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int i = 0; i < curves.size(); i++) {
            double[][] xy = new double[2][points.get(i).size()];
            for (int j = 0; j < points.get(i).size(); j++) {
                xy[0][j] = points.get(i).get(j)[0];
                xy[1][j] = points.get(i).get(j)[1];
            }
            data.addSeries(i, xy);
            renderer.setSeriesPaint(i, curves.get(i).look().color());
            renderer.setSeriesShape(i, curves.get(i).look().mark());
            renderer.setSeriesShapesFilled(i, false);
        }
        plot.setDataset(1, data);
        plot.setRenderer(1, renderer);
    }

    /**
     * A point with its band along y.
     *
     * @param x place
     * @param y place
     * @param low one end of the whisker
     * @param high other end
     */
    record Spot(double x, double y, double low, double high) {}

    /** A plot of curves over these axes. */
    static XYPlot plot(NumberAxis across, NumberAxis up, List<Curve> curves) {
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setDomainAxis(across);
        plot.setRangeAxis(up);
        plot.setInsets(new RectangleInsets(4, 4, 4, RIGHT));
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            double[][] xy = new double[2][curve.points().size()];
            for (int j = 0; j < curve.points().size(); j++) {
                xy[0][j] = curve.points().get(j)[0];
                xy[1][j] = curve.points().get(j)[1];
            }
            data.addSeries(i, xy);
            renderer.setSeriesPaint(i, curve.look().color());
            renderer.setSeriesStroke(i, curve.look().line());
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
        plot.addAnnotation(new Curves(curves), false);
        return plot;
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        LabelPlacer placer = new LabelPlacer(
                new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth() + RIGHT, area.getHeight()));
        for (Curve curve : curves) {
            probe(placer, curve, frame);
            curve.spot().ifPresent(spot -> spot(g2, ink, placer, curve.look(), spot, frame));
        }
        for (Curve curve : curves) {
            label(g2, ink, placer, curve, frame);
        }
    }

    private static void probe(LabelPlacer placer, Curve curve, Frame frame) {
        for (int i = 1; i < curve.points().size(); i++) {
            double[] from = curve.points().get(i - 1);
            double[] to = curve.points().get(i);
            double x0 = frame.x(from[0]);
            double y0 = frame.y(from[1]);
            double dx = frame.x(to[0]) - x0;
            double dy = frame.y(to[1]) - y0;
            int steps = 1 + (int) (Math.hypot(dx, dy) / PROBE);
            for (int k = 0; k < steps; k++) {
                placer.inked(x0 + dx * k / steps, y0 + dy * k / steps);
            }
        }
    }

    private static void spot(Graphics2D g2, Ink ink, LabelPlacer placer, HouseStyle.Look look, Spot spot, Frame frame) {
        double x = frame.x(spot.x());
        double low = frame.y(spot.low());
        double high = frame.y(spot.high());
        g2.setPaint(look.color());
        g2.setStroke(look.whisker());
        g2.draw(new Line2D.Double(x, low, x, high));
        g2.draw(new Line2D.Double(x - WHISKER_END, low, x + WHISKER_END, low));
        g2.draw(new Line2D.Double(x - WHISKER_END, high, x + WHISKER_END, high));
        ink.mark(look, x, frame.y(spot.y()), true);
        placer.taken(new Rectangle2D.Double(
                x - 2 * WHISKER_END, Math.min(low, high), 4 * WHISKER_END, Math.abs(high - low)));
    }

    private static void label(Graphics2D g2, Ink ink, LabelPlacer placer, Curve curve, Frame frame) {
        if (curve.points().isEmpty() || curve.name().isEmpty()) {
            return;
        }
        double[] end = curve.points().get(curve.points().size() - 1);
        double x = frame.x(end[0]);
        double y = frame.y(end[1]);
        List<String> lines = ink.wrapped(curve.name(), HouseStyle.STRONG, RIGHT - 20, 2);
        double step = ink.height(HouseStyle.STRONG);
        double width = lines.stream()
                .mapToDouble(line -> ink.width(line, HouseStyle.STRONG))
                .max()
                .orElse(0);
        Rectangle2D place = placer.place(x, y, width, step * lines.size());
        leader(g2, curve.look(), x, y, place);
        for (int i = 0; i < lines.size(); i++) {
            ink.textOnGround(
                    lines.get(i),
                    HouseStyle.STRONG,
                    HouseStyle.INK,
                    place.getX(),
                    place.getY() + (i + 0.5) * step,
                    Ink.Side.RIGHT);
        }
    }

    /** A line from a curve's end to a label that had to move away from it. */
    private static void leader(Graphics2D g2, HouseStyle.Look look, double x, double y, Rectangle2D place) {
        Line2D way = LabelPlacer.leader(x, y, place);
        if (way.getP1().distance(way.getP2()) > LEADER) {
            g2.setStroke(HouseStyle.THIN);
            g2.setPaint(look.color());
            g2.draw(way);
        }
    }
}
