package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.study.FlyResult;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.SurfaceLoad;
import throwline.words.Words;

/**
 * Torque that each servo has to hold over airspeed in one set-up: as a share of its rating, with the half that a servo should be
 * asked for as a line; as torque where no rating is known. Below, where that is known, where the surfaces then stand.
 */
final class ServoLoadChart {

    private static final int HEIGHT = 500;
    /** Of the panel below it that shows where the surfaces stand. */
    private static final int STANDING = 300;

    private static final double ROOM = 1.08;
    private static final int PARTS = 8;
    private static final double PER_CENT = 100;
    /** Share of a rating that a servo should be asked for (common practice). */
    private static final double HALF = 50;

    private final FlyResult result;
    private final Words words;
    private final boolean rated;

    ServoLoadChart(FlyResult result, Words words) {
        this.result = result;
        this.words = words;
        rated = result.glance().servos().loads().stream()
                .anyMatch(load -> load.rating().isPresent());
    }

    /** Empty where no load was found. */
    Optional<Picture> draw() {
        List<Curve> curves = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (SurfaceLoad load : result.glance().servos().loads()) {
            List<Place> points = points(load);
            if (rated && load.rating().isEmpty()) {
                left.add(load.surface());
            } else if (points.size() > 1) {
                curves.add(new Curve(load.surface(), ChartStyle.look(curves.size()), points, spot(load)));
            }
        }
        return curves.isEmpty() ? Optional.empty() : Optional.of(picture(curves, left));
    }

    private Picture picture(List<Curve> curves, List<String> left) {
        List<Place> points =
                curves.stream().flatMap(curve -> curve.points().stream()).toList();
        double slowest = 0.95 * Picture.least(points, Place::x, Double.POSITIVE_INFINITY);
        double top = ROOM * Picture.most(points, Place::y, rated ? HALF : 0);
        List<Item> items = new ArrayList<>();
        if (rated) {
            items.add(Item.Line.level(HALF, ChartStyle.INK, ChartStyle.THIN));
            items.add(Item.Text.quiet(
                    Place.of(Place.EDGE, HALF).moved(-3, -9), words.say("chart.fly.servo-load.half"), Brush.Side.LEFT));
        }
        items.addAll(Curve.all(curves));
        String key = rated ? "chart.fly.servo-load.share" : "chart.fly.servo-load.torque";
        List<Panel> panels = new ArrayList<>();
        panels.add(Panel.graph(4, Axis.of(words.say(key), 0, top, 8), items));
        new StandingPanel(result.standing(), name -> look(curves, name), words)
                .draw(3)
                .ifPresent(panels::add);
        boolean standing = panels.size() > 1;
        List<String> holdsFor = new ArrayList<>();
        holdsFor.add(words.say("chart.fly.servo-load.for"));
        if (standing) {
            holdsFor.add(words.say("chart.fly.stand.for"));
        }
        if (!left.isEmpty()) {
            holdsFor.add(words.say("chart.fly.servo-load.left", String.join(", ", left)));
        }
        holdsFor.add(words.say(
                "chart.fly.servo-load.of",
                result.model().name(),
                result.pack().name(),
                result.glance().setUp().name()));
        return Picture.ofCurves(
                "servo-load",
                new Caption(words.say("chart.fly.servo-load.title"), holdsFor, words.say("chart.proof.assumed")),
                HEIGHT + (standing ? STANDING : 0),
                Axis.of(words.say("chart.axis.airspeed"), slowest, Picture.most(points, Place::x, 0), 9),
                panels.toArray(Panel[]::new));
    }

    /** As the load of the same surface is drawn; in a look of its own where no load is drawn. */
    private static ChartStyle.Look look(List<Curve> curves, String surface) {
        return curves.stream()
                .filter(curve -> curve.name().equals(surface))
                .map(Curve::look)
                .findFirst()
                .orElseGet(() -> ChartStyle.look(curves.size()));
    }

    private double shown(SurfaceLoad load, double torque) {
        return rated ? PER_CENT * torque / load.rating().orElse(Double.POSITIVE_INFINITY) : torque;
    }

    /** Between the speeds looked at, torque over the square of the speed runs straight. */
    private List<Place> points(SurfaceLoad load) {
        List<Place> points = new ArrayList<>();
        Optional<LoadPoint> before = Optional.empty();
        for (LoadPoint point : load.overSpeed()) {
            if (point.torque().isEmpty()) {
                continue;
            }
            for (int k = 1; k < PARTS && before.isPresent(); k++) {
                points.add(between(load, before.get(), point, (double) k / PARTS));
            }
            points.add(Place.of(point.speed(), shown(load, point.torque().get())));
            before = Optional.of(point);
        }
        return points;
    }

    private Place between(SurfaceLoad load, LoadPoint slow, LoadPoint fast, double part) {
        double speed = slow.speed() + part * (fast.speed() - slow.speed());
        double low = perSquare(slow);
        double torque = (low + part * (perSquare(fast) - low)) * speed * speed;
        return Place.of(speed, shown(load, torque));
    }

    private static double perSquare(LoadPoint point) {
        return point.torque().orElse(0.0) / (point.speed() * point.speed());
    }

    private Optional<Curve.Spot> spot(SurfaceLoad load) {
        return result.glance()
                .approachSpeed()
                .known()
                .flatMap(speed -> load.comingIn()
                        .known()
                        .map(torque -> Curve.Spot.of(speed, torque, value -> shown(load, value))));
    }
}
