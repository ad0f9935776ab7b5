package throwline.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import throwline.study.FlyResult.LevelPoint;
import throwline.words.Words;

/** Thrust that level flight takes and what full throttle gives, over airspeed; between them lies what is left to climb. */
final class ThrustChart {

    private static final int HEIGHT = 480;
    private static final double ROOM = 1.08;

    private final List<LevelPoint> points;
    private final Words words;

    ThrustChart(List<LevelPoint> points, Words words) {
        this.points = points;
        this.words = words;
    }

    /**
     * The chart.
     *
     * @param stall speed with the throttle closed, m/s
     */
    Picture draw(Caption caption, double stall) {
        List<Place> takes = places(LevelPoint::thrust);
        List<Place> gives = places(LevelPoint::fullThrust);
        List<Place> spare = new ArrayList<>(gives);
        List<Place> back = new ArrayList<>(takes);
        Collections.reverse(back);
        spare.addAll(back);
        double most = Picture.most(gives, Place::y, 1);
        LevelPoint top = points.get(points.size() - 1);
        LevelPoint middle = points.get(points.size() / 2);
        List<Item> items = new ArrayList<>();
        items.add(Item.Area.of(spare, ChartStyle.GRID));
        items.add(Item.Line.upright(stall, ChartStyle.QUIET_INK, ChartStyle.THIN));
        items.add(Item.Text.quiet(
                Place.of(stall, -Place.EDGE).moved(4, -9), words.say("chart.fly.stall"), Brush.Side.RIGHT));
        items.add(Item.Line.upright(top.speed(), ChartStyle.QUIET_INK, ChartStyle.THIN));
        items.add(Item.Text.quiet(
                Place.of(top.speed(), -Place.EDGE).moved(-4, -9), words.say("chart.fly.fastest"), Brush.Side.LEFT));
        items.addAll(List.of(new Curve("", ChartStyle.look(0), gives), new Curve("", ChartStyle.look(1), takes)));
        items.add(Item.Text.of(
                Place.of(middle.speed(), middle.fullThrust()).moved(4, -12),
                words.say("chart.fly.thrust.full"),
                Brush.Side.RIGHT));
        items.add(Item.Text.quiet(
                Place.of(middle.speed(), (middle.fullThrust() + middle.thrust()) / 2),
                words.say("chart.fly.thrust.spare"),
                Brush.Side.MIDDLE));
        items.add(Item.Text.of(
                Place.of(middle.speed(), middle.thrust()).moved(4, 14),
                words.say("chart.fly.thrust.takes"),
                Brush.Side.MIDDLE));
        return Picture.ofCurves(
                "thrust-over-speed",
                caption,
                HEIGHT,
                Axis.of(words.say("chart.axis.airspeed"), 0.95 * stall, 1.03 * top.speed(), 9),
                Panel.graph(1, Axis.of(words.say("chart.fly.thrust-over-speed.axis"), 0, ROOM * most, 8), items));
    }

    private List<Place> places(ToDoubleFunction<LevelPoint> force) {
        return points.stream()
                .map(point -> Place.of(point.speed(), force.applyAsDouble(point)))
                .toList();
    }
}
