package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import throwline.report.ReportFile;
import throwline.report.document.PagePicture;
import throwline.study.EdgeThrow;
import throwline.study.FieldAnswer;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Words;

/**
 * Charts of one set-up: descent angle, sink, elevator and roll over airspeed with the stall and the speed to come in at;
 * landing, loops, surfaces on the move, servos.
 */
public final class FlyCharts {

    private static final int HEIGHT = 480;
    private static final double MILLIMETRES = 1000;
    private static final double ROOM = 0.08;

    private final Words words;

    /** Charts with these words. */
    public FlyCharts(Words words) {
        this.words = words;
    }

    /** All charts as files. */
    public List<ReportFile> draw(FlyResult result, PictureFormats formats) {
        return PictureFiles.ofReady(pictures(result), formats);
    }

    /**
     * All charts for a page.
     *
     * @param result what was found
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(FlyResult result, String prefix) {
        return PagePictures.ofReady(pictures(result), prefix, words);
    }

    List<Picture> pictures(FlyResult result) {
        SetUpResult glance = result.glance();
        List<SpeedPoint> sweep = glance.sweep();
        if (sweep.size() < 2) {
            return List.of();
        }
        EdgeThrow edge = new EdgeThrow(result.model().tail().throwChord());
        List<Picture> pictures = new ArrayList<>();
        pictures.add(overSpeed(
                result, "descent-over-speed", sweep, SpeedPoint::descentAngle, glance.descentAngle(), Math::toDegrees));
        pictures.add(overSpeed(
                result,
                "sink-over-speed",
                sweep,
                SpeedPoint::sinkRate,
                glance.number(FlightQuantity.SINK_RATE),
                rate -> rate));
        pictures.add(overSpeed(
                result,
                "elevator-over-speed",
                sweep,
                SpeedPoint::elevator,
                glance.number(FlightQuantity.ELEVATOR),
                angle -> MILLIMETRES * edge.distance(angle)));
        if (result.rollSweep().size() > 1) {
            Headline first = glance.rollRates().get(0).rate();
            List<Place> rolls = result.rollSweep().stream()
                    .map(point -> Place.of(point.speed(), Math.toDegrees(point.rate())))
                    .toList();
            pictures.add(overSpeed(result, "roll-over-speed", rolls, first, Math::toDegrees));
        }
        if (result.level().size() > 2 && glance.stallSpeed() instanceof Headline.Known stall) {
            pictures.add(new ThrustChart(result.level(), words)
                    .draw(
                            caption(
                                    result,
                                    "chart.fly.thrust-over-speed.title",
                                    "chart.fly.thrust.for",
                                    "chart.proof.assumed"),
                            stall.value()));
        }
        landing(result).ifPresent(pictures::add);
        if (!result.handling().loops().isEmpty()) {
            pictures.add(new LoopChart(result.handling().loops(), words)
                    .draw(caption(result, "chart.loop.title", "chart.loop.for", "chart.loop.proof")));
        }
        result.handling().moves().ifPresent(moves -> pictures.addAll(new MoveChart(result, moves, words).draw()));
        new ServoLoadChart(result, words).draw().ifPresent(pictures::add);
        return pictures;
    }

    private Optional<Picture> landing(FlyResult result) {
        FieldAnswer field = result.glance().field();
        if (field.stillAir().isEmpty()) {
            return Optional.empty();
        }
        List<LandingChart.Entry> entries = new ArrayList<>();
        entries.add(new LandingChart.Entry(
                words.say("fly.landing.still"),
                field.stillAir(),
                result.glance().number(FlightQuantity.LANDING_DISTANCE)));
        field.inWind()
                .ifPresent(legs -> entries.add(new LandingChart.Entry(
                        words.say("chart.landing.wind", String.format(Locale.ROOT, "%.1f", legs.wind())),
                        field.inWind(),
                        result.glance().number(FlightQuantity.LANDING_DISTANCE_IN_WIND))));
        return Optional.of(new LandingChart(Layout.WIDE, result.model().field(), entries, words)
                .draw(caption(result, "chart.landing.title", "chart.landing.for.one", "chart.proof.assumed")));
    }

    private Caption caption(FlyResult result, String title, String holdsFor, String proof) {
        String of = words.say("chart.of", result.model().name(), result.pack().name());
        String setUp = result.glance().setUp().name();
        return new Caption(words.say(title), List.of(words.say(holdsFor, setUp), of), words.say(proof));
    }

    private Picture overSpeed(
            FlyResult result,
            String name,
            List<SpeedPoint> sweep,
            ToDoubleFunction<SpeedPoint> value,
            Headline comingIn,
            DoubleUnaryOperator shown) {
        List<Place> points = sweep.stream()
                .map(point -> Place.of(point.speed(), shown.applyAsDouble(value.applyAsDouble(point))))
                .toList();
        return overSpeed(result, name, points, comingIn, shown);
    }

    private Picture overSpeed(
            FlyResult result, String name, List<Place> points, Headline comingIn, DoubleUnaryOperator shown) {
        SetUpResult glance = result.glance();
        Optional<Headline.Known> approach = glance.approachSpeed().known();
        Optional<Curve.Spot> spot =
                approach.flatMap(speed -> comingIn.known().map(number -> Curve.Spot.of(speed, number, shown)));
        Curve curve = new Curve(glance.setUp().name(), ChartStyle.look(0), points, spot);
        double slowest = glance.stallSpeed()
                .known()
                .map(Headline.Known::value)
                .orElse(points.get(0).x());
        List<Place> reached = Curve.reached(List.of(curve));
        double low = Picture.least(reached, Place::y, points.get(0).y());
        double high = Picture.most(reached, Place::y, points.get(0).y());
        double room = ROOM * (high - low);
        Axis up = Axis.of(words.say("chart.fly." + name + ".axis"), low >= 0 ? 0 : low - room, high + room, 8);
        List<Item> items = new ArrayList<>(speed(slowest, "chart.fly.stall"));
        approach.ifPresent(speed -> items.addAll(speed(speed.value(), "chart.fly.come-in")));
        items.addAll(Curve.all(List.of(curve)));
        return Picture.ofCurves(
                name,
                caption(result, "chart.fly." + name + ".title", "chart.fly.for", "chart.proof.assumed"),
                HEIGHT,
                Axis.of(
                        words.say("chart.axis.airspeed"),
                        0.95 * slowest,
                        points.get(points.size() - 1).x(),
                        9),
                Panel.graph(1, name.startsWith("elevator") ? up.worded(up.step(), Axis.upAndDown(words)) : up, items));
    }

    /** A line at a speed with its name at the top. */
    private List<Item> speed(double speed, String key) {
        return List.of(
                Item.Line.upright(speed, ChartStyle.QUIET_INK, ChartStyle.THIN),
                Item.Text.quiet(Place.of(speed, Place.EDGE).moved(4, 9), words.say(key), Brush.Side.RIGHT));
    }
}
