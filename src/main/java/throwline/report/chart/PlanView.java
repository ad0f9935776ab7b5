package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
final class PlanView extends Overlay {

    private static final long serialVersionUID = 1;

    /** Points around the outlines. */
    private static final double SIDE = 84;

    private static final double ABOVE = 40;
    private static final double BELOW = 46;
    private static final double TALLEST = 760;

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
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        PlanOutline.Place page = new PlanOutline.Place(area.getCenterX(), area.getMinY() + ABOVE + nose * scale, scale);
        PlanInk plan = new PlanInk(g2);
        bodyLength(plan, page);
        PlanOutline outline = new PlanOutline(model, page);
        fill(g2, outline.body(), SKIN);
        fill(g2, outline.wing(), SKIN);
        for (Surface surface : model.wing().surfaces()) {
            for (int side = -1; side <= 1; side += 2) {
                fill(g2, outline.surface(surface, side), MOVED);
            }
        }
        fill(g2, outline.tail(), SKIN);
        fill(g2, outline.elevator(), MOVED);
        propeller(g2, page);
        wingDimensions(plan, page);
        surfaceDimensions(plan, page);
        tailDimensions(plan, page);
        bodyDimensions(plan, page);
        balance(g2, plan, page);
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

    private void propeller(Graphics2D g2, PlanOutline.Place page) {
        model.propeller().ifPresent(p -> {
            g2.setPaint(HouseStyle.QUIET_INK);
            g2.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            double y = page.y(-model.body().nose()) - 4;
            g2.draw(new Line2D.Double(page.x(-p.diameter() / 2), y, page.x(p.diameter() / 2), y));
        });
    }

    private void wingDimensions(PlanInk ink, PlanOutline.Place page) {
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

    private void surfaceDimensions(PlanInk ink, PlanOutline.Place page) {
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

    private void tailDimensions(PlanInk ink, PlanOutline.Place page) {
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
    private double behindWing(PlanOutline.Place page) {
        return (page.y(trailingEdge(0)) + page.y(model.tail().arm())) / 2;
    }

    /** Drawn before the wing, which covers the line. */
    private void bodyLength(PlanInk ink, PlanOutline.Place page) {
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

    private void bodyDimensions(PlanInk ink, PlanOutline.Place page) {
        Body body = model.body();
        double noseX = page.x(-body.width() / 2) - 14;
        String noseText = words.say("chart.plan.nose", given("body.nose", length(body.nose())));
        ink.down(page.y(-body.nose()), page.y(0), noseX, 0.5, noseText, Ink.Side.LEFT);
        String width = words.say("chart.plan.width", given("body.width", length(body.width())));
        ink.note(width, page.x(body.width() / 2) + 6, behindWing(page) - 14);
    }

    private void balance(Graphics2D g2, PlanInk ink, PlanOutline.Place page) {
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
