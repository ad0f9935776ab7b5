package throwline.report.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jfree.chart.ui.RectangleInsets;
import throwline.section.boundary.LayerStretch;
import throwline.section.boundary.LayerStretch.Kind;
import throwline.study.SectionFlow;
import throwline.study.SectionFlow.Side;
import throwline.words.Words;

/** Outline of a section, the pressure along it at a few angles, and the kinds of boundary layer on both surfaces. */
final class FlowChart {

    /** Lines above and below, the axis across, gaps; points. */
    private static final int AROUND = 172;

    private static final int PRESSURE = 300;
    private static final int ROW = 18;
    private static final int LEFT = 52;
    private static final int RIGHT = 24;

    /** Points of a chord, nearly. */
    private static final double CHORD = 800;

    /** Deeper suction peaks are cut off. */
    private static final double DEEPEST = -6;

    private static final double BAR = 0.36;

    /** Stations at which curves are named. */
    private static final int NAMED = 18;

    private static final int NAMES_APART = 4;

    private final String airfoil;
    private final String holdsFor;
    private final List<SectionFlow> flows;
    private final Words words;

    /**
     * @param airfoil its name
     * @param holdsFor Reynolds number and surface in words
     * @param flows one or more
     * @param words the sentences
     */
    FlowChart(String airfoil, String holdsFor, List<SectionFlow> flows, Words words) {
        this.airfoil = airfoil;
        this.holdsFor = holdsFor;
        this.flows = List.copyOf(flows);
        this.words = words;
    }

    Picture draw(String name) {
        Panel outline = outline();
        Panel bars = bars();
        return new Picture(
                name,
                new Caption(
                        words.say("chart.flow.title", airfoil),
                        List.of(holdsFor, words.say("chart.flow.how")),
                        words.say("chart.section.proof")),
                Layout.WIDE.width(),
                AROUND + outline.height() + PRESSURE + bars.height(),
                Axis.of(words.say("chart.flow.chord"), 0, 1, 10),
                Optional.empty(),
                new RectangleInsets(4, LEFT, 4, RIGHT),
                List.of(outline, pressure(), bars));
    }

    private Panel outline() {
        List<Place> places = new ArrayList<>(places(flows.get(0).top(), false));
        List<Place> back = new ArrayList<>(places(flows.get(0).bottom(), false));
        Collections.reverse(back);
        places.addAll(back);
        double low = Picture.least(places, Place::y, 0) - 0.01;
        double high = Picture.most(places, Place::y, 0) + 0.01;
        return Panel.drawing(
                (int) (CHORD * (high - low)),
                Axis.hidden(low, high),
                true,
                List.of(
                        Item.Area.of(places, ThrowShade.SKIN),
                        new Item.Line(places, true, ChartStyle.INK, ChartStyle.THICK)));
    }

    private static List<Place> places(Side side, boolean pressure) {
        return side.pressures().stream()
                .map(station -> Place.of(station.x(), pressure ? station.pressure() : station.y()))
                .toList();
    }

    private Panel pressure() {
        List<Curve> curves = new ArrayList<>();
        List<Item> names = new ArrayList<>();
        for (int i = 0; i < flows.size(); i++) {
            ChartStyle.Look look = ChartStyle.look(i);
            Place at = places(flows.get(i).top(), true).get(NAMED + i * NAMES_APART);
            names.add(Item.Text.small(at, degrees(flows.get(i)), Brush.Side.MIDDLE));
            curves.add(new Curve(
                    "",
                    new ChartStyle.Look(look.color(), ChartStyle.stroke(2f), look.mark()),
                    places(flows.get(i).top(), true)));
            curves.add(new Curve(
                    "",
                    new ChartStyle.Look(look.color(), ChartStyle.stroke(1.4f, 5, 3), look.mark()),
                    places(flows.get(i).bottom(), true)));
        }
        double least = Picture.least(Curve.reached(curves), Place::y, -1);
        return Panel.graph(
                PRESSURE,
                Axis.of(words.say("chart.flow.pressure"), Math.max(DEEPEST, 1.05 * least), 1, 8)
                        .turnedOver(),
                Stream.concat(curves.stream(), names.stream()).toList());
    }

    private static String degrees(SectionFlow flow) {
        return String.format(Locale.ROOT, "%.0f\u00b0", Math.toDegrees(flow.angle()));
    }

    private Panel bars() {
        List<Item> items = new ArrayList<>();
        int rows = 2 * flows.size() + 2;
        for (int i = 0; i < flows.size(); i++) {
            SectionFlow flow = flows.get(i);
            row(items, 2 * i + 0.6, words.say("chart.flow.top", degrees(flow)), flow.top());
            row(items, 2 * i + 1.4, words.say("chart.flow.bottom", degrees(flow)), flow.bottom());
        }
        double legend = rows - 0.9;
        double share = 0;
        for (Kind kind : Kind.values()) {
            items.add(bar(new LayerStretch(kind, share, share + 0.05), legend));
            items.add(Item.Text.small(
                    Place.of(share + 0.06, legend),
                    words.say("chart.flow." + kind.name().toLowerCase(Locale.ROOT)),
                    Brush.Side.RIGHT));
            share += 0.25;
        }
        return Panel.drawing(ROW * rows, Axis.hidden(0, rows).turnedOver(), false, items);
    }

    private static void row(List<Item> items, double middle, String name, Side side) {
        items.add(Item.Text.small(Place.of(0, middle).moved(-8, 0), name, Brush.Side.LEFT));
        side.layers().forEach(stretch -> items.add(bar(stretch, middle)));
    }

    private static Item bar(LayerStretch stretch, double middle) {
        Item.Area box = Item.Area.box(stretch.from(), stretch.to(), middle - BAR, middle + BAR, color(stretch.layer()));
        return new Item.Area(box.places(), box.fill(), hatch(stretch.layer()), ChartStyle.INK);
    }

    private static Color color(Kind kind) {
        return switch (kind) {
            case LAMINAR -> new Color(0xCFE3F1);
            case BUBBLE -> ChartStyle.GROUND;
            case TURBULENT -> new Color(0x0072B2);
            case SEPARATED -> new Color(0xD55E00);
        };
    }

    private static Item.Hatch hatch(Kind kind) {
        return switch (kind) {
            case LAMINAR, TURBULENT -> Item.Hatch.NONE;
            case BUBBLE -> Item.Hatch.SLANTED;
            case SEPARATED -> Item.Hatch.UPRIGHT;
        };
    }
}
