package throwline.report.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** The descent angle over airspeed, steeper further down, with the speed to come in at marked. */
final class SteepnessChart {

    private static final int HEIGHT = 590;
    /** Speeds are shown up to this multiple of the fastest speed to come in at. */
    private static final double FASTEST = 1.8;
    /** Steeper than this is a dive, not a descent; degrees. */
    private static final double STEEPEST = 45;

    private final ChartSource source;

    SteepnessChart(ChartSource source) {
        this.source = source;
    }

    Picture draw() {
        double fastest = FASTEST
                * source.setUps().stream()
                        .flatMap(setUp -> setUp.approachSpeed().known().stream())
                        .mapToDouble(Headline.Known::value)
                        .max()
                        .orElse(1);
        List<Curve> curves = IntStream.range(0, source.setUps().size())
                .mapToObj(i -> curve(i, fastest))
                .toList();
        List<Place> reached = Curve.reached(curves);
        double low = Math.floor(reached.stream().mapToDouble(Place::x).min().orElse(0));
        double high = Math.max(low + 1, fastest);
        double steepest = Math.min(STEEPEST, Picture.most(reached, Place::y, 1));
        Axis up = Axis.of(source.words().say("chart.axis.angle"), 0, 1.06 * steepest, 9);
        return Picture.ofCurves(
                        "steepness",
                        source.caption("chart.steepness.title", "chart.steepness.for"),
                        HEIGHT,
                        source.speeds(low, high),
                        Panel.graph(1, up.turnedOver(), Curve.all(curves)))
                .wide(source.layout())
                .beside(source.besideSpeeds(low, high));
    }

    private Curve curve(int index, double fastest) {
        SetUpResult setUp = source.setUps().get(index);
        List<Place> points = setUp.sweep().stream()
                .map(point -> Place.of(point.speed(), Math.toDegrees(point.descentAngle())))
                .filter(place -> place.x() <= fastest && place.y() <= STEEPEST)
                .toList();
        Optional<Curve.Spot> spot = setUp.approachSpeed()
                .known()
                .flatMap(speed ->
                        setUp.descentAngle().known().map(angle -> Curve.Spot.of(speed, angle, Math::toDegrees)));
        return new Curve(source.name(index), ChartStyle.look(index), points, spot);
    }
}
