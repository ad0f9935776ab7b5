package throwline.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import throwline.words.Words;

/** Drag against lift of the whole trimmed model, for the curious. */
final class DragLiftChart {

    private static final int HEIGHT = 590;

    private final ChartSource source;

    DragLiftChart(ChartSource source) {
        this.source = source;
    }

    Picture draw() {
        List<Curve> curves =
                IntStream.range(0, source.setUps().size()).mapToObj(this::curve).toList();
        List<Place> reached = Curve.reached(curves);
        double drag = Picture.most(reached, Place::x, 0);
        double lift = Picture.most(reached, Place::y, 0);
        double least = Picture.least(reached, Place::y, 0);
        Words words = source.words();
        Axis up = Axis.of(words.say("chart.axis.lift"), 1.06 * least, lift > 0 ? 1.06 * lift : 1, 8);
        return Picture.ofCurves(
                        "drag-lift",
                        source.caption("chart.draglift.title", "chart.draglift.for"),
                        HEIGHT,
                        Axis.of(words.say("chart.axis.drag"), 0, drag > 0 ? 1.04 * drag : 1, 8),
                        Panel.graph(1, up, Curve.all(curves)))
                .wide(source.layout());
    }

    private Curve curve(int index) {
        List<Place> points = new ArrayList<>();
        source.setUps().get(index).sweep().forEach(point -> points.add(Place.of(point.drag(), point.lift())));
        // The label stands at the slow end, where curves lie apart.
        Collections.reverse(points);
        return new Curve(
                source.name(index),
                ChartStyle.look(index),
                points,
                source.comingIn(index).map(p -> new Curve.Spot(p.drag(), p.lift(), p.lift(), p.lift())));
    }
}
