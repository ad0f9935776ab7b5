package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.logs.Piece;
import throwline.logs.Piece.Kind;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.Learnt;
import throwline.study.LoggedDay;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Words;

/** Sink over speed of the set-ups that glided: predicted before, with its band after, and every glide a dot. */
final class SinkChart {

    private static final int HEIGHT = 520;
    private static final double MARGIN = 0.08;

    /** Speeds beyond this many times the fastest glide are left out. */
    private static final double BEYOND = 1.2;

    private final Words words;
    private final Learnt learnt;
    private final PackResult pack;

    SinkChart(Words words, Learnt learnt) {
        this.words = words;
        this.learnt = learnt;
        pack = learnt.after().packs().get(0);
    }

    /** A glide: speed and sink, m/s. */
    private record Glide(double speed, double sink) {}

    /** Whether any glide can be drawn. */
    boolean isThere() {
        return pack.setUps().stream().anyMatch(r -> !glides(r.setUp().name()).isEmpty());
    }

    private List<Glide> glides(String setUp) {
        List<Glide> glides = new ArrayList<>();
        learnt.measured().stream()
                .filter(m -> m.setUp().equals(setUp) && m.quantity() == FlightQuantity.DESCENT_ANGLE && m.glided())
                .forEach(m -> glides.add(new Glide(m.speed(), m.sink())));
        for (LoggedDay day : learnt.logs()) {
            for (Piece piece : day.log().used(Kind.GLIDE, setUp)) {
                glides.add(new Glide(piece.speed(), piece.value()));
            }
        }
        return glides;
    }

    Picture draw(Layout layout) {
        double fastest = 0;
        double most = 0;
        double slowest = Double.POSITIVE_INFINITY;
        for (SetUpResult result : pack.setUps()) {
            for (Glide glide : glides(result.setUp().name())) {
                fastest = Math.max(fastest, glide.speed());
                most = Math.max(most, glide.sink());
                slowest = Math.min(slowest, glide.speed());
            }
        }
        double end = BEYOND * fastest;
        List<Item> bands = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        List<Item> dots = new ArrayList<>();
        for (int i = 0; i < pack.setUps().size(); i++) {
            SetUpResult result = pack.setUps().get(i);
            List<Glide> glides = glides(result.setUp().name());
            if (glides.isEmpty()) {
                continue;
            }
            ChartStyle.Look look = ChartStyle.look(i);
            Optional<List<Place>> band = band(result, end);
            band.ifPresent(places -> bands.add(Item.Area.of(places, look.band())));
            most = Math.max(most, Picture.most(band.orElse(List.of()), Place::y, most));
            before(result)
                    .ifPresent(old -> bands.add(new Item.Line(
                            places(old.sweep(), end), false, ChartStyle.QUIET_INK, ChartStyle.stroke(1.2f, 3, 3))));
            Curve curve = new Curve(result.setUp().name(), look, places(result.sweep(), end));
            curves.add(curve);
            dots.addAll(curve.marks(
                    glides.stream().map(g -> Place.of(g.speed(), g.sink())).toList()));
        }
        List<Item> items = new ArrayList<>(bands);
        items.addAll(Curve.all(curves));
        items.addAll(dots);
        double top = Picture.most(Curve.reached(curves), Place::y, most);
        double left = Picture.least(Curve.reached(curves), Place::x, slowest);
        return Picture.ofCurves(
                        "learnt-sink",
                        new Caption(
                                words.say("chart.sink.title"),
                                List.of(
                                        words.say(
                                                "chart.learnt.for",
                                                learnt.after().model().name(),
                                                pack.pack().name()),
                                        words.say("chart.sink.legend")),
                                words.say("chart.learnt.proof")),
                        HEIGHT,
                        Axis.of(words.say("chart.sink.speed"), left - 0.5, end, layout == Layout.NARROW ? 5 : 10),
                        Panel.graph(
                                HEIGHT,
                                Axis.of(words.say("chart.sink.sink"), 0, top * (1 + MARGIN), 6)
                                        .turnedOver(),
                                items))
                .wide(layout);
    }

    private Optional<SetUpResult> before(SetUpResult result) {
        return learnt.before().packs().get(0).setUps().stream()
                .filter(r -> r.setUp().equals(result.setUp()))
                .findFirst();
    }

    private static List<Place> places(List<SpeedPoint> sweep, double end) {
        return sweep.stream()
                .filter(p -> p.speed() <= end)
                .map(p -> Place.of(p.speed(), p.sinkRate()))
                .toList();
    }

    /** The curve times the ends of the band of its descent. */
    private static Optional<List<Place>> band(SetUpResult result, double end) {
        if (!(result.descentAngle() instanceof Headline.Known known)
                || known.learnt().isEmpty()) {
            return Optional.empty();
        }
        double low = Math.sin(known.low()) / Math.sin(known.value());
        double high = Math.sin(known.high()) / Math.sin(known.value());
        List<Place> curve = places(result.sweep(), end);
        List<Place> around = new ArrayList<>();
        curve.forEach(p -> around.add(Place.of(p.x(), p.y() * low)));
        for (int i = curve.size() - 1; i >= 0; i--) {
            around.add(Place.of(curve.get(i).x(), curve.get(i).y() * high));
        }
        return curve.size() < 2 ? Optional.empty() : Optional.of(around);
    }
}
