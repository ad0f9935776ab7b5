package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import throwline.model.Hinge;
import throwline.model.Surface;
import throwline.sizing.CandidateEvaluator.Place;

/** The curve of one wanted value searched for a second one and for a least cost: circle, line and parabola in closed form. */
class ContourSearchTest {

    private static final SurfaceGroups GROUPS = new SurfaceGroups(
            List.of(new Surface("flaps", 0, 0.5, 0.25, 0, 1.2, Hinge.TAPED)),
            List.of(new Surface("ailerons", 0.5, 1, 0.25, 0.5, 0.5, Hinge.TAPED)));

    /** On the circle of half a radian. */
    private static double circle(CandidateFlight t) {
        return t.angle() - 0.25;
    }

    private final CandidateEvaluator bench = Candidates.of((f, a) -> f * f + a * a);

    private List<CandidateFlight> known(double... ailerons) {
        return DoubleStream.of(ailerons)
                .mapToObj(a -> bench.at(new Place(Math.sqrt(0.25 - a * a), a)))
                .toList();
    }

    /** Circle and the line flap = 3 aileron meet at 0.5 (3, 1) / sqrt(10). */
    @Test
    void meetsASecondCurve() {
        List<CandidateFlight> all = new ContourSearch(bench, GROUPS)
                .alongTo(known(-0.1, 0.1, 0.3), ContourSearchTest::circle, t -> t.flap() - 3 * t.aileron());
        assertThat(all).hasSize(4);
        assertThat(all.get(3).aileron()).isCloseTo(0.5 / Math.sqrt(10), within(1e-3));
        assertThat(all.get(3).flap()).isCloseTo(1.5 / Math.sqrt(10), within(1e-3));
    }

    @Test
    void nothingWhereItDoesNotMeet() {
        List<CandidateFlight> known = known(-0.1, 0.1);
        assertThat(new ContourSearch(bench, GROUPS).alongTo(known, ContourSearchTest::circle, t -> 1))
                .isEqualTo(known);
    }

    /** The nearest place of the circle to the point (1, 0.25), whichever of its neighbours is known best. */
    @Test
    void leastCostOnTheCurve() {
        ToDoubleFunction<CandidateFlight> cost = t -> Math.pow(t.flap() - 1, 2) + Math.pow(t.aileron() - 0.25, 2);
        CandidateFlight found = new ContourSearch(bench, GROUPS)
                .lowest(known(0.1, -0.05, 0.3), ContourSearchTest::circle, cost)
                .orElseThrow();
        double expected = 0.5 * 0.25 / Math.hypot(1, 0.25);
        assertThat(found.aileron()).isCloseTo(expected, within(5e-3));
        assertThat(found.angle()).isCloseTo(0.25, within(1e-3));
        assertThat(new ContourSearch(bench, GROUPS).lowest(known(0.1), ContourSearchTest::circle, cost))
                .isEmpty();
    }

    /** A place on the curve that does not fly is none. */
    @Test
    void onlyWhatFlies() {
        CandidateEvaluator some = Candidates.of((f, a) -> f * f + a * a, (f, a) -> Math.abs(a - 0.16) - 0.03);
        List<CandidateFlight> ends = DoubleStream.of(-0.1, 0.1, 0.3)
                .mapToObj(a -> some.at(new Place(Math.sqrt(0.25 - a * a), a)))
                .toList();
        ContourSearch search = new ContourSearch(some, GROUPS);
        assertThat(search.alongTo(ends, ContourSearchTest::circle, t -> t.flap() - 3 * t.aileron()))
                .hasSize(3);
        List<CandidateFlight> best = List.of(ends.get(1), ends.get(0), ends.get(2));
        assertThat(search.lowest(best, ContourSearchTest::circle, t -> Math.abs(t.aileron() - 0.16)))
                .isEmpty();
    }
}
