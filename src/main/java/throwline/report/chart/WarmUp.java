package throwline.report.chart;

import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;

/** A small picture with everything that charts are made of. Nobody sees it. */
final class WarmUp {

    private static final int SIZE = 120;

    private WarmUp() {}

    static Picture picture() {
        NumberAxis across = HouseStyle.axis("x", 0, 1, 2);
        NumberAxis up = HouseStyle.axis("y", 0, 1, 2);
        Curves.Curve curve = new Curves.Curve(
                "x",
                HouseStyle.look(1),
                List.of(new double[] {0, 0}, new double[] {1, 1}),
                Optional.of(new Curves.Spot(0.5, 0.5, 0.4, 0.6)));
        return new Picture(
                "x",
                "x",
                SIZE,
                SIZE,
                HouseStyle.chart(Curves.plot(across, up, List.of(curve)), "x", List.of("x"), "x"));
    }
}
