package throwline.report.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jfree.chart.ui.RectangleInsets;
import throwline.model.Surface;
import throwline.numerics.Interpolation;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.section.Airfoil;
import throwline.study.EdgeThrow;
import throwline.study.FlightQuantity;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.LoadStation;

/** Picture of one set-up: the load along the span, the model from above below it, and a section at each surface. */
final class SetUpPicture {

    /** Title, lines and margins above and below the view, points. */
    private static final int AROUND = 92;

    private static final double LOAD = 96;
    private static final double GAP = 16;
    private static final double SIDE = 34;
    private static final double TALLEST = 300;
    private static final double LABEL = 15;
    private static final double SECTION = 92;

    private final ChartSource source;
    private final SetUpResult result;
    private final ChartStyle.Look look;
    private final int index;
    private final Map<String, Airfoil> airfoils;
    private final Figures figures;
    private final PlanOutline plan;
    /** Points of a metre. */
    private final double scale;
    /** Half the width of the view, m. */
    private final double half;

    /**
     * @param source of all pictures of one pack
     * @param index which set-up
     * @param airfoils by the name in the model; none where no sections are wanted
     * @param figures numbers as the page shows them
     */
    SetUpPicture(ChartSource source, int index, Map<String, Airfoil> airfoils, Figures figures) {
        this.source = source;
        this.index = index;
        this.result = source.setUps().get(index);
        this.look = ChartStyle.look(index);
        this.airfoils = Map.copyOf(airfoils);
        this.figures = figures;
        this.plan = new PlanOutline(source.model());
        int width = source.layout().width();
        this.scale = Math.min((width - 2 * SIDE) / plan.widest(), TALLEST / plan.length());
        this.half = (width - 4) / 2.0 / scale;
    }

    /** All set-ups of one pack. */
    static List<Supplier<Picture>> all(ChartSource source, Map<String, Airfoil> airfoils, Figures figures) {
        return IntStream.range(0, source.setUps().size())
                .<Supplier<Picture>>mapToObj(i -> () -> new SetUpPicture(source, i, airfoils, figures).draw())
                .toList();
    }

    Picture draw() {
        int sections = airfoils.isEmpty() ? 0 : (surfaces().size() + 1) / 2;
        int below = (int) Math.ceil(plan.length() * scale + 2 * LABEL + sections * SECTION);
        double most = most();
        return new Picture(
                "set-up-" + (index + 1),
                source.captionBelow(source.name(index), "chart.setup.for"),
                source.layout().width(),
                AROUND + (int) (LOAD + GAP) + below,
                Axis.hidden(-half, half),
                Optional.empty(),
                RectangleInsets.ZERO_INSETS,
                List.of(
                        Panel.drawing((int) LOAD, Axis.hidden(0, most * LOAD / (LOAD - 14)), false, load(most)),
                        Panel.drawing(
                                below, Axis.hidden(-plan.nose(), plan.length()).turnedOver(), true, fromAbove())));
    }

    private List<Surface> surfaces() {
        return source.model().wing().surfaces();
    }

    private double reached(Surface surface) {
        return surface.reached(result.setUp().deflection(surface.name()));
    }

    /** The largest lift coefficient that any part can carry in any set-up, so that pictures have one scale. */
    private double most() {
        return source.setUps().stream()
                .flatMap(setUp -> setUp.load().stream())
                .mapToDouble(station -> Math.max(station.lift(), station.limit()))
                .max()
                .orElse(1);
    }

    private List<Item> load(double most) {
        double tip = source.model().wing().semiSpan();
        List<Item> items = new ArrayList<>();
        for (int lift = 0; lift <= most; lift++) {
            Color color = lift == 0 ? ChartStyle.QUIET_INK : ChartStyle.GRID;
            Place left = Place.of(-tip, lift);
            items.add(Item.Line.of(color, ChartStyle.THIN, left, Place.of(tip, lift)));
            items.add(Item.Text.small(left.moved(-6, 0), String.valueOf(lift), Brush.Side.LEFT));
        }
        items.addAll(new LoadItems(result, source.model().wing()).curves(look));
        names(items, tip);
        return items;
    }

    /** Names of both curves on the left wing: over the one, inside the other where it is highest. */
    private void names(List<Item> items, double tip) {
        List<LoadStation> left =
                result.load().stream().filter(station -> station.at() < 0).toList();
        left.stream()
                .limit(left.size() / 2)
                .mapToDouble(LoadStation::limit)
                .max()
                .ifPresent(highest -> items.add(Item.Text.quiet(
                        Place.of(-tip, highest).moved(4, -9),
                        source.words().say("chart.load.limit"),
                        Brush.Side.RIGHT)));
        left.stream()
                .max(Comparator.comparingDouble(LoadStation::lift))
                .ifPresent(station -> items.add(Item.Text.quiet(
                        Place.of(Math.min(station.at(), -40 / scale), station.lift() / 2),
                        source.words().say("chart.load.carried"),
                        Brush.Side.MIDDLE)));
    }

    private List<Item> fromAbove() {
        List<Item> items = new ArrayList<>(ThrowShade.still(plan.body()));
        items.addAll(ThrowShade.still(plan.wing()));
        for (Surface surface : surfaces()) {
            for (int side = -1; side <= 1; side += 2) {
                items.addAll(ThrowShade.moved(plan.surface(surface, side), reached(surface)));
            }
        }
        items.addAll(ThrowShade.still(plan.tail()));
        // What is programmed is drawn as set; where the elevator ends up in trim is no throw to set.
        items.addAll(ThrowShade.moved(plan.elevator(), result.setUp().elevator()));
        for (int i = 0; i < surfaces().size(); i++) {
            labels(items, surfaces().get(i), i);
        }
        result.known(FlightQuantity.ELEVATOR).ifPresent(known -> {
            EdgeThrow edge = new EdgeThrow(source.model().tail().throwChord());
            String text = source.words()
                    .say("chart.setup.elevator", figures.show(new Value.Edge(known.value(), edge.chord())));
            double end = source.model().tail().arm() + source.model().tail().chord();
            items.add(Item.Text.quiet(Place.of(0, end).moved(0, LABEL), text, Brush.Side.MIDDLE));
        });
        firstStall(items);
        for (int i = 0; i < surfaces().size(); i++) {
            section(items, surfaces().get(i), i);
        }
        return items;
    }

    /** Angle on the right wing, millimetres on the left, below the trailing edge; a row a surface. */
    private void labels(List<Item> items, Surface surface, int row) {
        Place line = Place.of(0, plan.lowestEdge()).moved(0, LABEL * (row + 0.8));
        double middle = (surface.from() + surface.to()) / 2;
        double angle = reached(surface);
        String name = source.words().say("chart.setup.surface", surface.name(), figures.show(Value.deflection(angle)));
        items.add(beside(name, middle, line));
        if (angle != 0) {
            EdgeThrow edge = new EdgeThrow(source.model().wing().throwChord(surface));
            items.add(beside(figures.show(new Value.Edge(angle, edge.chord())), -middle, line));
        }
    }

    /** Text with its middle near a distance from the middle, clear of the body. */
    private Item beside(String text, double at, Place line) {
        double width = Brush.width(text, ChartStyle.SMALL) / 2;
        double clear = source.model().body().width() / 2 + (6 + width) / scale;
        return inside(text, Math.copySign(Math.max(clear, Math.abs(at)), at), line);
    }

    /** Text with its middle near a distance from the middle, moved so far that it stays on the page. */
    private Item inside(String text, double at, Place line) {
        double reach = half - (6 + Brush.width(text, ChartStyle.SMALL) / 2) / scale;
        Place place = new Place(Interpolation.clamp(at, -reach, reach), line.y(), 0, line.below());
        return Item.Text.small(place, text, Brush.Side.MIDDLE);
    }

    /** A line from the load down to the wing, with a mark on the wing. */
    private void firstStall(List<Item> items) {
        List<Double> stalls = new LoadItems(result, source.model().wing()).firstStalls();
        for (double at : stalls) {
            double quarter = source.model().wing().leadingEdgeAt(Math.abs(at))
                    + source.model().wing().chordAt(Math.abs(at)) / 4;
            Place top = Place.of(at, Place.EDGE).moved(0, -LOAD - GAP);
            items.addAll(LoadItems.stallMark(top, Place.of(at, quarter), true));
        }
        stalls.stream().skip(Math.max(0, stalls.size() - 1)).forEach(at -> {
            String text = source.words().say("chart.load.first");
            boolean fits = at + (14 + Brush.width(text, ChartStyle.SMALL)) / scale <= half;
            Place place = Place.of(at, Place.EDGE).moved(fits ? 10 : -10, -GAP / 2);
            items.add(Item.Text.small(place, text, fits ? Brush.Side.RIGHT : Brush.Side.LEFT));
        });
    }

    /** The airfoil with its surface, two beside each other. */
    private void section(List<Item> items, Surface surface, int number) {
        Airfoil airfoil =
                airfoils.get(source.model().wing().sections().get(0).airfoil().text());
        if (airfoil == null) {
            return;
        }
        int row = number / 2;
        Place corner = new Place((number % 2 - 1) * half, plan.length() - plan.nose(), 12, 2 * LABEL + row * SECTION);
        double chord = half - 48 / scale;
        Place nose = corner.moved(0, 0.38 * SECTION);
        SectionOutline outline = new SectionOutline(airfoil.thickness(), airfoil.camber(), 1 - surface.chordFraction());
        double angle = reached(surface);
        if (angle != 0) {
            items.add(ThrowShade.ghost(at(nose, chord, outline.surface(0))));
        }
        items.addAll(ThrowShade.still(at(nose, chord, outline.front())));
        items.addAll(ThrowShade.moved(at(nose, chord, outline.surface(angle)), angle));
        items.add(Item.Text.small(corner.moved(0, 8), surface.name(), Brush.Side.RIGHT));
    }

    /** Places on a chord of 1, with the nose at a place and this chord. */
    private static List<Place> at(Place nose, double chord, List<Place> shape) {
        return shape.stream()
                .map(p -> new Place(nose.x() + chord * p.x(), nose.y() + chord * p.y(), nose.right(), nose.below()))
                .toList();
    }
}
