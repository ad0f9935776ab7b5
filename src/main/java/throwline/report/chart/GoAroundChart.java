package throwline.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.flight.PathPoint;
import throwline.study.FlightQuantity;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Going around seen from the side: height over the way from the decision on, with the band of what is lost. */
final class GoAroundChart {

    private static final int HEIGHT = 590;
    private static final double ROOM = 1.1;

    private final ChartSource source;

    GoAroundChart(ChartSource source) {
        this.source = source;
    }

    /** True where any set-up goes around. */
    static boolean isDrawn(ChartSource source) {
        return source.setUps().stream()
                .anyMatch(each -> !each.power().goingAround().isEmpty());
    }

    Picture draw() {
        List<Curve> curves = IntStream.range(0, source.setUps().size())
                .filter(i -> !source.setUps().get(i).power().goingAround().isEmpty())
                .mapToObj(this::curve)
                .toList();
        List<Place> reached = Curve.reached(curves);
        double far = Picture.most(reached, Place::x, 1);
        double high = Picture.most(reached, Place::y, 1);
        double low = Picture.least(reached, Place::y, -1);
        Words words = source.words();
        List<Item> items = new ArrayList<>();
        items.add(Item.Line.level(0, ChartStyle.QUIET_INK, ChartStyle.THICK));
        items.addAll(Curve.all(curves));
        return Picture.ofCurves(
                        "going-around",
                        source.caption("chart.goaround.title", "chart.goaround.for"),
                        HEIGHT,
                        Axis.of(words.say("chart.axis.decision"), 0, 1.02 * far, 8),
                        Panel.graph(
                                1,
                                Axis.of(words.say("chart.axis.against.decision"), ROOM * low, ROOM * high, 8),
                                items))
                .wide(source.layout());
    }

    private Curve curve(int index) {
        SetUpResult result = source.setUps().get(index);
        List<Place> way = result.power().goingAround().stream()
                .map(spot -> Place.of(spot.along(), spot.height()))
                .toList();
        PathPoint lowest = result.power().goingAround().stream()
                .min(Comparator.comparingDouble(PathPoint::height))
                .orElseThrow();
        Optional<Curve.Spot> band = result.number(FlightQuantity.GO_AROUND_LOSS)
                .known()
                .map(lost -> new Curve.Spot(lowest.along(), -lost.value(), -lost.high(), -lost.low()));
        return new Curve(source.name(index), ChartStyle.look(index), way, band);
    }
}
