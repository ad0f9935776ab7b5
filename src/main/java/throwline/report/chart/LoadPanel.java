package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.LoadStation;
import throwline.study.SetUpResult.Side;
import throwline.words.Words;

/** One set-up of the load chart: what each part carries, what it could, and where it lets go first. */
final class LoadPanel extends Overlay {

    /** Room for the name and the scale on the left, for the labels of both curves on the right; points. */
    static final int LEFT = 140;

    static final int RIGHT = 84;

    private static final long serialVersionUID = 1;
    private static final double MARK = 5;
    /** Room that the scale takes left of the panel, points. */
    private static final double SCALE = 52;

    private final transient SetUpResult result;
    private final transient HouseStyle.Look look;
    private final transient Wing wing;
    private final transient Words words;
    private final boolean first;

    LoadPanel(SetUpResult result, HouseStyle.Look look, Wing wing, Words words, boolean first) {
        this.result = result;
        this.look = look;
        this.wing = wing;
        this.words = words;
        this.first = first;
    }

    XYPlot plot(NumberAxis up) {
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setRangeAxis(up);
        plot.setDomainGridlinesVisible(false);
        plot.addAnnotation(this, false);
        return plot;
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        surfaces(g2, ink, frame);
        name(ink, frame.area());
        if (!result.load().isEmpty()) {
            curves(g2, ink, frame);
            firstStall(g2, ink, frame);
        }
    }

    private void curves(Graphics2D g2, Ink ink, Frame frame) {
        Path2D carried = new Path2D.Double();
        Path2D limit = new Path2D.Double();
        List<LoadStation> load = result.load();
        for (int i = 0; i < load.size(); i++) {
            LoadStation station = load.get(i);
            double x = frame.x(station.at());
            if (i == 0) {
                carried.moveTo(x, frame.y(station.lift()));
                limit.moveTo(x, frame.y(station.limit()));
            } else {
                carried.lineTo(x, frame.y(station.lift()));
                limit.lineTo(x, frame.y(station.limit()));
            }
        }
        Path2D filled = new Path2D.Double(carried);
        filled.lineTo(frame.x(load.get(load.size() - 1).at()), frame.y(0));
        filled.lineTo(frame.x(load.get(0).at()), frame.y(0));
        filled.closePath();
        g2.setPaint(look.band());
        g2.fill(filled);
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(HouseStyle.THIN);
        g2.draw(new Line2D.Double(
                frame.area().getMinX(), frame.y(0), frame.area().getMaxX(), frame.y(0)));
        g2.setStroke(HouseStyle.look(3).line());
        g2.draw(limit);
        g2.setPaint(look.color());
        g2.setStroke(look.whisker());
        g2.draw(carried);
        labels(ink, frame);
    }

    /** Both labels at the right end of their curves, apart from each other. */
    private void labels(Ink ink, Frame frame) {
        LoadStation last = result.load().get(result.load().size() - 1);
        double apart = ink.height(HouseStyle.TEXT);
        double limit = Math.min(frame.y(last.limit()), frame.area().getMaxY() - 1.5 * apart);
        double carried = Math.min(
                Math.max(frame.y(last.lift()), limit + apart), frame.area().getMaxY() - apart / 2);
        double x = frame.area().getMaxX() + 8;
        ink.text(words.say("chart.load.limit"), HouseStyle.TEXT, HouseStyle.QUIET_INK, x, limit, Ink.Side.RIGHT);
        ink.text(words.say("chart.load.carried"), HouseStyle.TEXT, HouseStyle.INK, x, carried, Ink.Side.RIGHT);
    }

    private void name(Ink ink, Rectangle2D area) {
        List<String> lines = ink.wrapped(result.setUp().name(), HouseStyle.STRONG, LEFT - 8, 3);
        double step = ink.height(HouseStyle.STRONG);
        for (int i = 0; i < lines.size(); i++) {
            double y = area.getCenterY() + (i - (lines.size() - 1) / 2.0) * step;
            ink.text(lines.get(i), HouseStyle.STRONG, HouseStyle.INK, area.getMinX() - SCALE, y, Ink.Side.LEFT);
        }
    }

    /** Ends of the surfaces as light lines; their names on top of the first panel, on the right wing. */
    private void surfaces(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        for (Surface surface : wing.surfaces()) {
            g2.setStroke(HouseStyle.THIN);
            g2.setPaint(HouseStyle.GRID);
            for (double end : new double[] {-surface.to(), -surface.from(), surface.from(), surface.to()}) {
                g2.draw(new Line2D.Double(frame.x(end), area.getMinY(), frame.x(end), area.getMaxY()));
            }
            if (first) {
                double middle = (surface.from() + surface.to()) / 2;
                for (double at : new double[] {-middle, middle}) {
                    ink.text(
                            surface.name(),
                            HouseStyle.TEXT,
                            HouseStyle.QUIET_INK,
                            frame.x(at),
                            area.getMinY() - 9,
                            Ink.Side.MIDDLE);
                }
            }
        }
    }

    private void firstStall(Graphics2D g2, Ink ink, Frame frame) {
        FirstStall stall = result.firstStall();
        if (stall.manner() == SetUpResult.Manner.NOT_REACHED) {
            return;
        }
        double distance = stall.spanFraction() * wing.semiSpan();
        if (stall.side() != Side.RIGHT) {
            stallMark(g2, frame, -distance);
        }
        if (stall.side() != Side.LEFT) {
            stallMark(g2, frame, distance);
        }
        double at = stall.side() == Side.RIGHT ? distance : -distance;
        double x = frame.x(at) + 2 * MARK;
        ink.textOnGround(
                words.say("chart.load.first"),
                HouseStyle.SMALL,
                HouseStyle.INK,
                x,
                frame.area().getMaxY() - 12,
                Ink.Side.RIGHT);
    }

    /** A line through the whole panel with a mark at its foot. */
    private void stallMark(Graphics2D g2, Frame frame, double at) {
        double x = frame.x(at);
        double foot = frame.area().getMaxY();
        g2.setPaint(HouseStyle.INK);
        g2.setStroke(HouseStyle.THIN);
        g2.draw(new Line2D.Double(x, foot, x, frame.area().getMinY()));
        Path2D mark = new Path2D.Double();
        mark.moveTo(x, foot - 2 * MARK);
        mark.lineTo(x + MARK, foot);
        mark.lineTo(x - MARK, foot);
        mark.closePath();
        g2.fill(mark);
    }
}
