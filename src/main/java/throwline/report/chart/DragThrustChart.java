package throwline.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import throwline.air.Gravity;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult.LevelPoint;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Thrust that level flight takes in each set-up and what full throttle gives, over airspeed, with the band of the latter. */
final class DragThrustChart {

    private static final int HEIGHT = 590;
    private static final double ROOM = 1.05;

    private final ChartSource source;

    DragThrustChart(ChartSource source) {
        this.source = source;
    }

    /** True where any set-up flies level. */
    static boolean isDrawn(ChartSource source) {
        return source.setUps().stream().anyMatch(each -> each.power().level().size() > 2);
    }

    Picture draw() {
        List<Integer> flown = IntStream.range(0, source.setUps().size())
                .filter(i -> source.setUps().get(i).power().level().size() > 2)
                .boxed()
                .toList();
        Words words = source.words();
        List<LevelPoint> widest = source.setUps().stream()
                .map(each -> each.power().level())
                .filter(level -> level.size() > 2)
                .max((a, b) -> Double.compare(last(a).speed(), last(b).speed()))
                .orElseThrow();
        double share = share();
        List<Place> high = new ArrayList<>(full(widest, 1 + share));
        List<Place> low = new ArrayList<>(full(widest, 1 - share));
        Collections.reverse(low);
        double most = Picture.most(high, Place::y, 1);
        List<Place> band = new ArrayList<>(high);
        band.addAll(low);
        LevelPoint slow = widest.get(0);
        List<Item> items = new ArrayList<>();
        items.add(Item.Area.of(band, ChartStyle.GRID));
        items.add(new Item.Line(full(widest, 1), false, ChartStyle.INK, ChartStyle.THICK));
        items.add(Item.Text.of(
                Place.of(slow.speed(), slow.fullThrust()).moved(8, -9),
                words.say("chart.fly.thrust.full"),
                Brush.Side.RIGHT));
        List<Curve> curves = flown.stream().map(this::curve).toList();
        items.addAll(Curve.all(curves));
        double slowest =
                Picture.least(Curve.reached(curves), Place::x, last(widest).speed());
        return Picture.ofCurves(
                        "thrust",
                        source.caption("chart.thrust.title", "chart.thrust.for"),
                        HEIGHT,
                        source.speeds(0.95 * slowest, 1.03 * last(widest).speed()),
                        Panel.graph(
                                1, Axis.of(words.say("chart.fly.thrust-over-speed.axis"), 0, ROOM * most, 8), items))
                .wide(source.layout());
    }

    private static LevelPoint last(List<LevelPoint> level) {
        return level.get(level.size() - 1);
    }

    /** Half-width of the pull over itself: the band of a climb is one of pull over weight. */
    private double share() {
        for (SetUpResult each : source.setUps()) {
            if (each.number(FlightQuantity.CLIMB_RATE) instanceof Headline.Known climb
                    && each.number(FlightQuantity.CLIMB_SPEED) instanceof Headline.Known speed
                    && !each.power().level().isEmpty()) {
                double weight = source.pack().mass() * Gravity.STANDARD;
                double pull = at(each.power().level(), speed.value()) / weight;
                return Math.min(1, (climb.high() - climb.value()) / speed.value() / pull);
            }
        }
        return 0;
    }

    private static double at(List<LevelPoint> level, double speed) {
        return level.stream()
                .min((a, b) -> Double.compare(Math.abs(a.speed() - speed), Math.abs(b.speed() - speed)))
                .orElseThrow()
                .fullThrust();
    }

    private static List<Place> full(List<LevelPoint> level, double factor) {
        return level.stream()
                .map(point -> Place.of(point.speed(), factor * point.fullThrust()))
                .toList();
    }

    /** From just above the stall to the fastest: all of it can be flown. */
    private Curve curve(int index) {
        List<Place> takes = source.setUps().get(index).power().level().stream()
                .map(point -> Place.of(point.speed(), point.thrust()))
                .toList();
        return new Curve(source.name(index), ChartStyle.look(index), takes);
    }
}
