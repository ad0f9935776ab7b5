package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/** The outlines of a model from above, nose up the page, with dimensions; one scale for both directions. */
final class PlanView extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1;

    /** Points around the outlines. */
    private static final double SIDE = 84;

    private static final double ABOVE = 40;
    private static final double BELOW = 46;
    private static final double TALLEST = 760;

    /** The tail end of a body over its width, as drawn. */
    private static final double TAIL_END = 0.3;

    private static final Color SKIN = new Color(0xF4F4F4);
    private static final Color MOVED = new Color(0xCFE3F1);
    private static final Stroke OUTLINE = new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    private static final double BALANCE = 7;

    private final transient Model model;
    private final transient Set<String> assumed;
    private final transient QuantityPrinter printer;
    private final transient Words words;
    private final double nose;
    private final double tailEnd;
    private final double scale;

    PlanView(Model model, Set<String> assumed, QuantityPrinter printer, Words words) {
        this.model = model;
        this.assumed = Set.copyOf(assumed);
        this.printer = printer;
        this.words = words;
        this.nose = Math.max(model.body().nose(), 0);
        Tail tail = model.tail();
        this.tailEnd = Math.max(model.body().length() - model.body().nose(), tail.arm() + tail.chord());
        double widest = Math.max(model.wing().span(), tail.span());
        this.scale = Math.min((HouseStyle.WIDTH - 28 - 2 * SIDE) / widest, TALLEST / (nose + tailEnd));
    }

    /** Points that the drawing needs from top to bottom. */
    int height() {
        return (int) Math.ceil(ABOVE + BELOW + (nose + tailEnd) * scale);
    }

    @Override
    public void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis up,
            int rendererIndex,
            PlotRenderingInfo info) {
        Shape clip = g2.getClip();
        g2.setClip(null);
        Page page = new Page(area.getCenterX(), area.getMinY() + ABOVE + nose * scale, scale);
        PlanInk ink = new PlanInk(g2);
        bodyLength(ink, page);
        fill(g2, body(page), SKIN);
        fill(g2, outline(page, model.wing()::leadingEdgeAt, y -> trailingEdge(y), stations(0, semiSpan()), true), SKIN);
        for (Surface surface : model.wing().surfaces()) {
            for (int side = -1; side <= 1; side += 2) {
                fill(g2, surface(page, surface, side), MOVED);
            }
        }
        tail(g2, page);
        propeller(g2, page);
        wingDimensions(ink, page);
        surfaceDimensions(ink, page);
        tailDimensions(ink, page);
        bodyDimensions(ink, page);
        balance(g2, ink, page);
        g2.setClip(clip);
    }

    /** From metres to places on the page: x backwards from the leading edge at the middle, y to the right. */
    private record Page(double middle, double leadingEdge, double scale) {
        double x(double y) {
            return middle + y * scale;
        }

        double y(double x) {
            return leadingEdge + x * scale;
        }
    }

    private double semiSpan() {
        return model.wing().semiSpan();
    }

    private double trailingEdge(double y) {
        return model.wing().leadingEdgeAt(y) + model.wing().chordAt(y);
    }

    private static void fill(Graphics2D g2, Shape shape, Color color) {
        g2.setPaint(color);
        g2.fill(shape);
        g2.setPaint(HouseStyle.INK);
        g2.setStroke(OUTLINE);
        g2.draw(shape);
    }

    /** The stations of the wing between two distances from the middle, ends included. */
    private List<Double> stations(double from, double to) {
        TreeSet<Double> stations = new TreeSet<>(Set.of(from, to));
        for (WingSection section : model.wing().sections()) {
            if (section.at() > from && section.at() < to) {
                stations.add(section.at());
            }
        }
        return new ArrayList<>(stations);
    }

    private static Shape outline(
            Page page, DoubleUnaryOperator front, DoubleUnaryOperator back, List<Double> stations, boolean bothSides) {
        List<double[]> points = new ArrayList<>();
        int last = stations.size() - 1;
        if (bothSides) {
            for (int i = last; i > 0; i--) {
                points.add(new double[] {page.x(-stations.get(i)), page.y(front.applyAsDouble(stations.get(i)))});
            }
        }
        for (double y : stations) {
            points.add(new double[] {page.x(y), page.y(front.applyAsDouble(Math.abs(y)))});
        }
        for (int i = last; i >= 0; i--) {
            double y = stations.get(i);
            points.add(new double[] {page.x(y), page.y(back.applyAsDouble(Math.abs(y)))});
        }
        if (bothSides) {
            for (int i = 1; i <= last; i++) {
                points.add(new double[] {page.x(-stations.get(i)), page.y(back.applyAsDouble(stations.get(i)))});
            }
        }
        return polygon(points);
    }

    private static Shape polygon(List<double[]> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        points.subList(1, points.size()).forEach(p -> path.lineTo(p[0], p[1]));
        path.closePath();
        return path;
    }

    private Shape surface(Page page, Surface surface, int side) {
        Wing wing = model.wing();
        List<Double> stations = stations(surface.from(), surface.to()).stream()
                .map(y -> side * y)
                .toList();
        return outline(
                page,
                y -> trailingEdge(y) - surface.chordFraction() * wing.chordAt(y),
                this::trailingEdge,
                stations,
                false);
    }

    private Shape body(Page page) {
        Body body = model.body();
        double half = body.width() / 2;
        double front = -body.nose();
        double end = body.length() - body.nose();
        double widest = Math.min(trailingEdge(0), end);
        double noseHalf = body.boxy() ? 0.7 * half : 0.35 * half;
        double shoulder = front + Math.min(0.6 * body.nose(), 2 * body.width());
        List<double[]> points = new ArrayList<>();
        double[][] right = {
            {noseHalf, front}, {half, shoulder}, {half, widest}, {TAIL_END * half, end},
        };
        for (double[] p : right) {
            points.add(new double[] {page.x(p[0]), page.y(p[1])});
        }
        for (int i = right.length - 1; i >= 0; i--) {
            points.add(new double[] {page.x(-right[i][0]), page.y(right[i][1])});
        }
        return polygon(points);
    }

    private void tail(Graphics2D g2, Page page) {
        Tail tail = model.tail();
        double hinge = tail.arm() + tail.chord() * (1 - tail.elevator().chordFraction());
        fill(g2, rectangle(page, tail.span(), tail.arm(), tail.arm() + tail.chord()), SKIN);
        fill(g2, rectangle(page, tail.span(), hinge, tail.arm() + tail.chord()), MOVED);
    }

    private static Shape rectangle(Page page, double width, double front, double back) {
        return new Rectangle2D.Double(
                page.x(-width / 2), page.y(front), width * page.scale(), (back - front) * page.scale());
    }

    private void propeller(Graphics2D g2, Page page) {
        model.propeller().ifPresent(p -> {
            g2.setPaint(HouseStyle.QUIET_INK);
            g2.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            double y = page.y(-model.body().nose()) - 4;
            g2.draw(new Line2D.Double(page.x(-p.diameter() / 2), y, page.x(p.diameter() / 2), y));
        });
    }

    private void wingDimensions(PlanInk ink, Page page) {
        Wing wing = model.wing();
        double tip = semiSpan();
        double top = page.y(-nose) - ABOVE / 2 - 4;
        ink.extension(page.x(-tip), page.y(wing.leadingEdgeAt(tip)) - 4, page.x(-tip), top - 4);
        ink.extension(page.x(tip), page.y(wing.leadingEdgeAt(tip)) - 4, page.x(tip), top - 4);
        ink.across(page.x(-tip), page.x(tip), top, 0.25, words.say("chart.plan.span", length(wing.span())));
        List<WingSection> sections = wing.sections();
        for (int i = 0; i < sections.size(); i++) {
            WingSection section = sections.get(i);
            double y = section.at();
            double front = page.y(wing.leadingEdgeAt(y));
            boolean last = i == sections.size() - 1;
            double x = i == 0 ? page.x(-model.body().width() / 2) - 14 : last ? page.x(y) + 14 : page.x(y);
            Ink.Side side = i == 0 ? Ink.Side.LEFT : Ink.Side.RIGHT;
            ink.down(front, page.y(trailingEdge(y)), x, 0.4, length(section.chord()), side);
        }
        double mean = wing.meanAerodynamicChord();
        double at = meanChordAt(mean);
        double front = page.y(wing.meanLeadingEdge());
        ink.dashed(page.x(-at), front, page.x(-at), front + mean * page.scale());
        ink.note(words.say("chart.plan.mean", length(mean)), page.x(-at) + 6, front + 0.25 * mean * page.scale());
    }

    /** Where the wing has its mean chord, from the middle, m. */
    private double meanChordAt(double mean) {
        double best = 0;
        for (int i = 0; i <= 100; i++) {
            double y = semiSpan() * i / 100;
            if (Math.abs(model.wing().chordAt(y) - mean) < Math.abs(model.wing().chordAt(best) - mean)) {
                best = y;
            }
        }
        return best;
    }

    private void surfaceDimensions(PlanInk ink, Page page) {
        double below = 0;
        for (Surface surface : model.wing().surfaces()) {
            below = Math.max(below, Math.max(trailingEdge(surface.from()), trailingEdge(surface.to())));
        }
        List<Double> rows = new ArrayList<>();
        for (Surface surface : model.wing().surfaces()) {
            String label = words.say(
                    "chart.plan.surface",
                    surface.name(),
                    QuantityPrinter.number(100 * surface.chordFraction(), 1),
                    bare(surface.from()),
                    length(surface.to()));
            double middle = (page.x(surface.from()) + page.x(surface.to())) / 2;
            double half = ink.width(label) / 2 + 6;
            int row = 0;
            while (row < rows.size() && rows.get(row) > middle - half) {
                row++;
            }
            rows.subList(row, Math.min(row + 1, rows.size())).clear();
            rows.add(row, middle + half);
            double y = page.y(below) + 20;
            ink.extension(
                    page.x(surface.from()), page.y(trailingEdge(surface.from())) + 3, page.x(surface.from()), y + 4);
            ink.extension(page.x(surface.to()), page.y(trailingEdge(surface.to())) + 3, page.x(surface.to()), y + 4);
            ink.line(page.x(surface.from()), page.x(surface.to()), y);
            ink.middle(label, middle, y + 13 + 15 * row);
        }
    }

    private void tailDimensions(PlanInk ink, Page page) {
        Tail tail = model.tail();
        double left = page.x(-tail.span() / 2);
        double right = page.x(tail.span() / 2);
        double front = page.y(tail.arm());
        double back = page.y(tail.arm() + tail.chord());
        ink.across(left, right, back + 18, 0.5, words.say("chart.plan.tail", length(tail.span())));
        ink.down(front, back, right + 14, 0.5, length(tail.chord()), Ink.Side.RIGHT);
        ink.extension(left - 4, front, left - 48, front);
        double label = (behindWing(page) - page.y(0)) / (front - page.y(0));
        ink.down(page.y(0), front, left - 44, label, words.say("chart.plan.arm", length(tail.arm())), Ink.Side.RIGHT);
    }

    /** Halfway between wing and tail on the page. */
    private double behindWing(Page page) {
        return (page.y(trailingEdge(0)) + page.y(model.tail().arm())) / 2;
    }

    /** Drawn before the wing, which covers the line. */
    private void bodyLength(PlanInk ink, Page page) {
        Body body = model.body();
        double left = page.x(-model.tail().span() / 2);
        double x = Math.max(left - 112, page.middle() - HouseStyle.WIDTH / 2.0 + 110);
        double front = page.y(-body.nose());
        double end = page.y(body.length() - body.nose());
        ink.extension(page.x(-body.width() / 2) - 4, front, x - 4, front);
        ink.extension(left - 4, end, x - 4, end);
        double label = (page.y(model.tail().arm()) - front) / (end - front);
        String length = words.say("chart.plan.body", given("body.length", length(body.length())));
        ink.down(front, end, x, label, length, Ink.Side.LEFT);
    }

    private void bodyDimensions(PlanInk ink, Page page) {
        Body body = model.body();
        double noseX = page.x(-body.width() / 2) - 14;
        String noseText = words.say("chart.plan.nose", given("body.nose", length(body.nose())));
        ink.down(page.y(-body.nose()), page.y(0), noseX, 0.5, noseText, Ink.Side.LEFT);
        String width = words.say("chart.plan.width", given("body.width", length(body.width())));
        ink.note(width, page.x(body.width() / 2) + 6, behindWing(page) - 14);
    }

    private void balance(Graphics2D g2, PlanInk ink, Page page) {
        double x = page.x(model.body().width() / 2) + 26;
        double y = page.y(0) - 16 - 17.0 * (model.packs().size() - 1);
        double mean = model.wing().meanAerodynamicChord();
        for (Pack pack : model.packs()) {
            double at = page.y(pack.balance());
            g2.setStroke(HouseStyle.THIN);
            g2.setPaint(HouseStyle.INK);
            g2.draw(new Line2D.Double(page.x(0), at, x - 6, y));
            g2.draw(new Line2D.Double(x - 6, y, x - 2, y));
            double share = (pack.balance() - model.wing().meanLeadingEdge()) / mean;
            String text = words.say(
                    "chart.plan.balance", pack.name(), length(pack.balance()), QuantityPrinter.number(100 * share, 1));
            ink.strong(text, x, y);
            y += 17;
            symbol(g2, page.x(0), at);
        }
    }

    /** A balance point as draughtsmen mark it: a circle with two quarters filled. */
    private static void symbol(Graphics2D g2, double x, double y) {
        Rectangle2D box = new Rectangle2D.Double(x - BALANCE, y - BALANCE, 2 * BALANCE, 2 * BALANCE);
        g2.setPaint(HouseStyle.GROUND);
        g2.fill(new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight()));
        g2.setPaint(HouseStyle.INK);
        g2.fill(new Arc2D.Double(box, 0, 90, Arc2D.PIE));
        g2.fill(new Arc2D.Double(box, 180, 90, Arc2D.PIE));
        g2.setStroke(OUTLINE);
        g2.draw(new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight()));
    }

    private String length(double metres) {
        return QuantityPrinter.print(metres, printer.display().length());
    }

    /** A length without its unit, where another one with it follows. */
    private String bare(double metres) {
        return length(metres).replaceFirst(" .*$", "");
    }

    private String given(String path, String text) {
        return assumed.contains(path) ? words.say("chart.plan.assumed", text) : text;
    }
}
