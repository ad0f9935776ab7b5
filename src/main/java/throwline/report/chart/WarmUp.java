package throwline.report.chart;

import java.util.List;
import java.util.Optional;

/** A small picture with everything that charts are made of. Nobody sees it. */
final class WarmUp {

    private static final int SIZE = 120;

    private WarmUp() {}

    static Picture picture() {
        Axis axis = Axis.of("x", 0, 1, 2);
        Curve curve = new Curve(
                "x",
                ChartStyle.look(1),
                List.of(Place.of(0, 0), Place.of(1, 1)),
                Optional.of(new Curve.Spot(0.5, 0.5, 0.4, 0.6)));
        Panel panel = Panel.graph(1, axis, Curve.all(List.of(curve)));
        return Picture.ofCurves("x", new Caption("x", List.of("x"), "x"), SIZE, axis, panel);
    }
}
