package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import throwline.model.Tail;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.ReportFile;
import throwline.report.document.PagePicture;
import throwline.study.FieldAnswer;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.Handling.Moves;
import throwline.study.Headline;
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

    /** All charts, each as SVG and as PNG. */
    public List<ReportFile> draw(FlyResult result) {
        return PictureFiles.ofReady(pictures(result));
    }

    /**
     * All charts for a page.
     *
     * @param result what was found
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(FlyResult result, String prefix) {
        return PagePictures.of(
                pictures(result).stream()
                        .<Supplier<Picture>>map(picture -> () -> picture)
                        .toList(),
                prefix,
                words);
    }

    List<Picture> pictures(FlyResult result) {
        List<SpeedPoint> sweep = result.glance().sweep();
        if (sweep.size() < 2) {
            return List.of();
        }
        Tail tail = result.model().tail();
        EdgeThrow edge = new EdgeThrow(tail.throwChord());
        List<Picture> pictures = new ArrayList<>();
        pictures.add(picture(
                result,
                "descent-over-speed",
                points(sweep, p -> Math.toDegrees(p.descentAngle())),
                spot(result, result.glance().descentAngle(), Math.toDegrees(1))));
        pictures.add(picture(
                result,
                "sink-over-speed",
                points(sweep, SpeedPoint::sinkRate),
                spot(result, result.glance().sinkRate(), 1)));
        pictures.add(picture(
                result,
                "elevator-over-speed",
                points(sweep, p -> MILLIMETRES * edge.distance(p.elevator())),
                elevatorSpot(result, edge)));
        if (result.rollSweep().size() > 1) {
            List<double[]> rolls = new ArrayList<>();
            result.rollSweep().forEach(p -> rolls.add(new double[] {p.speed(), Math.toDegrees(p.rate())}));
            Headline first = result.glance().rollRates().get(0).rate();
            pictures.add(picture(result, "roll-over-speed", rolls, spot(result, first, Math.toDegrees(1))));
        }
        landing(result).ifPresent(pictures::add);
        if (!result.handling().loops().isEmpty()) {
            pictures.add(new LoopChart(result.handling().loops(), words)
                    .draw(holdsFor(result, "chart.loop.for"), words.say("chart.loop.proof")));
        }
        result.handling().moves().ifPresent(moves -> moves(result, moves, pictures));
        new ServoLoadChart(result, words).draw().ifPresent(pictures::add);
        return pictures;
    }

    private void moves(FlyResult result, Moves moves, List<Picture> pictures) {
        MoveChart chart = new MoveChart(
                moves,
                result.glance().setUp().name(),
                result.model().reference().name(),
                words.say("chart.of", result.model().name(), result.pack().name()),
                words);
        pictures.add(chart.lowering());
        if (!moves.raising().isEmpty()) {
            pictures.add(chart.raising());
        }
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
                .draw(holdsFor(result, "chart.landing.for.one"), words.say("chart.proof.assumed")));
    }

    private List<String> holdsFor(FlyResult result, String key) {
        return List.of(
                words.say(key, result.glance().setUp().name()),
                words.say("chart.of", result.model().name(), result.pack().name()));
    }

    private static List<double[]> points(List<SpeedPoint> sweep, ToDoubleFunction<SpeedPoint> value) {
        List<double[]> points = new ArrayList<>();
        sweep.forEach(p -> points.add(new double[] {p.speed(), value.applyAsDouble(p)}));
        return points;
    }

    private static Optional<Curves.Spot> spot(FlyResult result, Headline headline, double factor) {
        return Headlines.known(result.glance().approachSpeed())
                .flatMap(speed -> Headlines.known(headline)
                        .map(known -> new Curves.Spot(
                                speed.value(), factor * known.value(), factor * known.low(), factor * known.high())));
    }

    private static Optional<Curves.Spot> elevatorSpot(FlyResult result, EdgeThrow edge) {
        return Headlines.known(result.glance().approachSpeed())
                .flatMap(speed -> Headlines.known(result.glance().elevator())
                        .map(known -> new Curves.Spot(
                                speed.value(),
                                MILLIMETRES * edge.distance(known.value()),
                                MILLIMETRES * edge.distance(known.low()),
                                MILLIMETRES * edge.distance(known.high()))));
    }

    private Picture picture(FlyResult result, String name, List<double[]> points, Optional<Curves.Spot> spot) {
        double slowest = Headlines.known(result.glance().stallSpeed())
                .map(Headline.Known::value)
                .orElse(points.get(0)[0]);
        double fastest = points.get(points.size() - 1)[0];
        double low = spot.map(s -> Math.min(s.low(), s.high())).orElse(points.get(0)[1]);
        double high = spot.map(s -> Math.max(s.low(), s.high())).orElse(points.get(0)[1]);
        for (double[] point : points) {
            low = Math.min(low, point[1]);
            high = Math.max(high, point[1]);
        }
        boolean fromZero = low >= 0;
        double room = ROOM * (high - low);
        String title = words.say("chart.fly." + name + ".title");
        Curves.Curve curve = new Curves.Curve(result.glance().setUp().name(), HouseStyle.look(0), points, spot);
        XYPlot plot = Curves.plot(
                HouseStyle.axis(words.say("chart.axis.airspeed"), 0.95 * slowest, fastest, 9),
                HouseStyle.axis(words.say("chart.fly." + name + ".axis"), fromZero ? 0 : low - room, high + room, 8),
                List.of(curve));
        mark(plot, slowest, words.say("chart.fly.stall"));
        Headlines.known(result.glance().approachSpeed())
                .ifPresent(v -> mark(plot, v.value(), words.say("chart.fly.come-in")));
        List<String> holdsFor = List.of(
                words.say("chart.fly.for"),
                words.say("chart.of", result.model().name(), result.pack().name()));
        return new Picture(
                name,
                title,
                HouseStyle.WIDTH,
                HEIGHT,
                HouseStyle.chart(plot, title, holdsFor, words.say("chart.proof.assumed")));
    }

    private static void mark(XYPlot plot, double speed, String label) {
        ValueMarker marker = new ValueMarker(speed, HouseStyle.QUIET_INK, HouseStyle.THIN);
        marker.setLabel(label);
        marker.setLabelFont(HouseStyle.SMALL);
        marker.setLabelPaint(HouseStyle.QUIET_INK);
        marker.setLabelBackgroundColor(HouseStyle.GROUND);
        marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
        marker.setLabelTextAnchor(TextAnchor.TOP_LEFT);
        plot.addDomainMarker(marker);
    }
}
