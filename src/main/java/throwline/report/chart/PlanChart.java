package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jfree.chart.ui.RectangleInsets;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/**
 * The model from above, to scale, with what was typed in: the place where typing mistakes show. Nose up the page, one scale
 * for both directions.
 */
final class PlanChart {

    private static final int HEADER = 96;

    /** Points around the outlines, and their largest height. */
    private static final double SIDE = 84;

    private static final double ABOVE = 40;
    private static final double BELOW = 46;
    private static final double TALLEST = 760;
    private static final double WIDTH = Layout.WIDE.width() - 28;
    private static final Color MOVED = new Color(0xCFE3F1);
    private static final Stroke OUTLINE = ChartStyle.stroke(1.6f);
    private static final double BALANCE = 7;

    private final Model model;
    private final Set<String> assumed;
    private final QuantityPrinter printer;
    private final Words words;
    private final PlanOutline outline;
    /** Points of a metre. */
    private final double scale;

    private final List<Item> items = new ArrayList<>();
    private final DimensionLines lines = new DimensionLines(items);

    /**
     * @param model the aeroplane
     * @param assumed paths of values that the model file did not give
     * @param printer in the units that the person reads
     * @param words the sentences
     */
    PlanChart(Model model, Set<String> assumed, QuantityPrinter printer, Words words) {
        this.model = model;
        this.assumed = Set.copyOf(assumed);
        this.printer = printer;
        this.words = words;
        this.outline = new PlanOutline(model);
        this.scale = Math.min((WIDTH - 2 * SIDE) / outline.widest(), TALLEST / outline.length());
    }

    Picture draw() {
        items.clear();
        // The wing covers the line of the body's length.
        bodyLength();
        shapes();
        wingDimensions();
        surfaceDimensions();
        tailDimensions();
        bodyDimensions();
        balance();
        int height = (int) Math.ceil(ABOVE + BELOW + outline.length() * scale);
        Axis up = Axis.hidden(-outline.nose() - ABOVE / scale, outline.length()).turnedOver();
        return new Picture(
                "plan",
                new Caption(
                        words.say("chart.plan.title", model.name()), List.of(figures()), words.say("chart.plan.proof")),
                Layout.WIDE.width(),
                HEADER + height,
                Axis.hidden(-WIDTH / 2 / scale, WIDTH / 2 / scale),
                Optional.empty(),
                RectangleInsets.ZERO_INSETS,
                List.of(Panel.drawing(1, up, true, items)));
    }

    private void shapes() {
        shape(outline.body(), ThrowShade.SKIN);
        shape(outline.wing(), ThrowShade.SKIN);
        for (Surface surface : model.wing().surfaces()) {
            shape(outline.surface(surface, -1), MOVED);
            shape(outline.surface(surface, 1), MOVED);
        }
        shape(outline.tail(), ThrowShade.SKIN);
        shape(outline.elevator(), MOVED);
        Stroke round = new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        model.propeller().ifPresent(propeller -> {
            Place middle = at(0, -model.body().nose()).moved(0, -4);
            Place blade = new Place(propeller.diameter() / 2, middle.y(), 0, -4);
            items.add(Item.Line.of(
                    ChartStyle.QUIET_INK, round, blade, new Place(-blade.x(), blade.y(), 0, blade.below())));
        });
    }

    private void shape(List<Place> places, Color color) {
        items.add(Item.Area.of(places, color));
        items.add(new Item.Line(places, true, ChartStyle.INK, OUTLINE));
    }

    /** Metres to the right of the middle and behind the leading edge there. */
    private static Place at(double right, double behind) {
        return Place.of(right, behind);
    }

    private void wingDimensions() {
        Wing wing = model.wing();
        double tip = wing.semiSpan();
        Place left = at(-tip, -outline.nose()).moved(0, -ABOVE / 2 - 4);
        Place right = at(tip, -outline.nose()).moved(0, -ABOVE / 2 - 4);
        lines.extension(at(-tip, wing.leadingEdgeAt(tip)).moved(0, -4), left.moved(0, -4));
        lines.extension(at(tip, wing.leadingEdgeAt(tip)).moved(0, -4), right.moved(0, -4));
        lines.across(left, right, 0.25, words.say("chart.plan.span", length(wing.span())));
        List<WingSection> sections = wing.sections();
        for (int i = 0; i < sections.size(); i++) {
            double y = sections.get(i).at();
            boolean last = i == sections.size() - 1;
            double x = i == 0 ? -model.body().width() / 2 : y;
            double beside = i == 0 ? -14 : last ? 14 : 0;
            lines.down(
                    at(x, wing.leadingEdgeAt(y)).moved(beside, 0),
                    at(x, outline.trailingEdge(y)).moved(beside, 0),
                    0.4,
                    length(sections.get(i).chord()),
                    i == 0 ? Brush.Side.LEFT : Brush.Side.RIGHT);
        }
        double mean = wing.meanAerodynamicChord();
        double meanAt = -IntStream.rangeClosed(0, 100)
                .mapToObj(i -> tip * i / 100)
                .min(Comparator.comparingDouble(y -> Math.abs(wing.chordAt(y) - mean)))
                .orElseThrow();
        double front = wing.meanLeadingEdge();
        lines.dashed(at(meanAt, front), at(meanAt, front + mean));
        lines.note(
                words.say("chart.plan.mean", length(mean)),
                at(meanAt, front + 0.25 * mean).moved(6, 0));
    }

    /** Below the wing, each label in the first row where it has room. */
    private void surfaceDimensions() {
        double below = outline.lowestEdge();
        List<Double> rows = new ArrayList<>();
        for (Surface surface : model.wing().surfaces()) {
            String label = words.say(
                    "chart.plan.surface",
                    surface.name(),
                    QuantityPrinter.number(100 * surface.chordFraction(), 1),
                    length(surface.from()).replaceFirst(" .*$", ""),
                    length(surface.to()));
            double middle = (surface.from() + surface.to()) / 2;
            double half = (Brush.width(label, ChartStyle.SMALL) / 2 + 6) / scale;
            int row = 0;
            while (row < rows.size() && rows.get(row) > middle - half) {
                row++;
            }
            rows.subList(row, Math.min(row + 1, rows.size())).clear();
            rows.add(row, middle + half);
            for (double end : List.of(surface.from(), surface.to())) {
                lines.extension(
                        at(end, outline.trailingEdge(end)).moved(0, 3),
                        at(end, below).moved(0, 24));
            }
            lines.line(
                    at(surface.from(), below).moved(0, 20),
                    at(surface.to(), below).moved(0, 20));
            lines.middle(label, at(middle, below).moved(0, 33 + 15 * row));
        }
    }

    private void tailDimensions() {
        Tail tail = model.tail();
        double half = tail.span() / 2;
        double back = tail.arm() + tail.chord();
        lines.across(
                at(-half, back).moved(0, 18),
                at(half, back).moved(0, 18),
                0.5,
                words.say("chart.plan.tail", length(tail.span())));
        lines.down(
                at(half, tail.arm()).moved(14, 0),
                at(half, back).moved(14, 0),
                0.5,
                length(tail.chord()),
                Brush.Side.RIGHT);
        Place arm = at(-half, tail.arm());
        lines.extension(arm.moved(-4, 0), arm.moved(-48, 0));
        lines.down(
                at(-half, 0).moved(-44, 0),
                arm.moved(-44, 0),
                behindWing() / tail.arm(),
                words.say("chart.plan.arm", length(tail.arm())),
                Brush.Side.RIGHT);
    }

    /** Halfway between wing and tail, m. */
    private double behindWing() {
        return (outline.trailingEdge(0) + model.tail().arm()) / 2;
    }

    private void bodyLength() {
        Body body = model.body();
        double half = model.tail().span() / 2;
        double x = Math.max(-half * scale - 112, 110 - Layout.WIDE.width() / 2.0);
        double end = body.length() - body.nose();
        Place top = at(0, -body.nose()).moved(x, 0);
        Place bottom = at(0, end).moved(x, 0);
        lines.extension(at(-body.width() / 2, -body.nose()).moved(-4, 0), top.moved(-4, 0));
        lines.extension(at(-half, end).moved(-4, 0), bottom.moved(-4, 0));
        double label = (model.tail().arm() + body.nose()) / body.length();
        String length = words.say("chart.plan.body", given("body.length", length(body.length())));
        lines.down(top, bottom, label, length, Brush.Side.LEFT);
    }

    private void bodyDimensions() {
        Body body = model.body();
        double half = body.width() / 2;
        lines.down(
                at(-half, -body.nose()).moved(-14, 0),
                at(-half, 0).moved(-14, 0),
                0.5,
                words.say("chart.plan.nose", given("body.nose", length(body.nose()))),
                Brush.Side.LEFT);
        String width = words.say("chart.plan.width", given("body.width", length(body.width())));
        lines.note(width, at(half, behindWing()).moved(6, -14));
    }

    private void balance() {
        Wing wing = model.wing();
        for (int i = 0; i < model.packs().size(); i++) {
            Pack pack = model.packs().get(i);
            double share = (pack.balance() - wing.meanLeadingEdge()) / wing.meanAerodynamicChord();
            String text = words.say(
                    "chart.plan.balance", pack.name(), length(pack.balance()), QuantityPrinter.number(100 * share, 1));
            Place label = at(model.body().width() / 2, 0)
                    .moved(26, -16 - 17.0 * (model.packs().size() - 1 - i));
            Place at = at(0, pack.balance());
            items.add(Item.Line.of(ChartStyle.INK, ChartStyle.THIN, at, label.moved(-6, 0), label.moved(-2, 0)));
            items.add(new Item.Text(label, text, ChartStyle.STRONG, ChartStyle.INK, Brush.Side.RIGHT, true));
            items.add(brush -> symbol(brush, brush.x(at), brush.y(at)));
        }
    }

    /** A balance point as draughtsmen mark it: a circle with two quarters filled. */
    private static void symbol(Brush brush, double x, double y) {
        Rectangle2D box = new Rectangle2D.Double(x - BALANCE, y - BALANCE, 2 * BALANCE, 2 * BALANCE);
        Ellipse2D circle = new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight());
        brush.fill(circle, ChartStyle.GROUND);
        brush.fill(new Arc2D.Double(box, 0, 90, Arc2D.PIE), ChartStyle.INK);
        brush.fill(new Arc2D.Double(box, 180, 90, Arc2D.PIE), ChartStyle.INK);
        brush.line(circle, ChartStyle.INK, OUTLINE);
    }

    private String length(double metres) {
        return QuantityPrinter.print(metres, printer.display().length());
    }

    private String given(String path, String text) {
        return assumed.contains(path) ? words.say("chart.plan.assumed", text) : text;
    }

    private String figures() {
        double area = model.wing().area();
        double lightest = model.packs().stream().mapToDouble(Pack::mass).min().orElseThrow();
        double heaviest = model.packs().stream().mapToDouble(Pack::mass).max().orElseThrow();
        return words.say(
                lightest == heaviest ? "chart.plan.figure" : "chart.plan.figures",
                printer.print(model.wing().span(), Dimension.LENGTH),
                printer.print(area, Dimension.AREA),
                printer.print(model.wing().meanAerodynamicChord(), Dimension.LENGTH),
                printer.print(lightest / area, Dimension.WING_LOADING),
                printer.print(heaviest / area, Dimension.WING_LOADING));
    }
}
