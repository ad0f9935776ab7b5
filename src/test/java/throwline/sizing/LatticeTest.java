package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import throwline.sizing.Lattice.Edge;

/** Roots and borders between the nodes of a lattice, on closed forms. */
class LatticeTest {

    private static final double[] FLAPS = {0, 0.2, 0.5, 1};
    private static final double[] AILERONS = {-0.2, 0, 0.1};

    private static ToDoubleFunction<CandidateFlight> above(double level) {
        return trial -> trial.angle() - level;
    }

    /** A lattice of four by three nodes has 9 edges along and 8 across. */
    @Test
    void countsItsEdges() {
        Lattice lattice = new Lattice(Candidates.of((f, a) -> f), FLAPS, AILERONS);
        assertThat(lattice.trials()).hasSize(12);
        assertThat(lattice.edges()).hasSize(17);
        assertThat(lattice.edges())
                .allMatch(e -> e.from().flap() == e.to().flap() ^ e.from().aileron() == e.to().aileron());
    }

    /** A circle about the origin is crossed where its radius says (closed form). */
    @Test
    void rootsOnACircle() {
        Lattice lattice = new Lattice(Candidates.of((f, a) -> f * f + a * a), FLAPS, AILERONS);
        ToDoubleFunction<CandidateFlight> value = above(0.36);
        List<Edge> crossings = lattice.crossings(value);
        assertThat(crossings).hasSize(3);
        for (Edge edge : crossings) {
            CandidateFlight root = lattice.root(edge, value).orElseThrow();
            assertThat(root.flap()).isCloseTo(Math.sqrt(0.36 - root.aileron() * root.aileron()), within(2.5e-3));
        }
        Edge inside = lattice.edges().get(0);
        assertThat(lattice.root(inside, value)).isEmpty();
    }

    /** A value that is not known in the middle of an edge does not keep the root from being found. */
    @Test
    void rootsPastWhatIsNotKnown() {
        Lattice lattice = new Lattice(
                Candidates.of((f, a) -> f > 0.7 && f < 0.78 ? Double.NaN : f * f),
                new double[] {0.5, 1},
                new double[] {0});
        CandidateFlight root = lattice.root(lattice.edges().get(0), above(0.36)).orElseThrow();
        assertThat(root.flap()).isCloseTo(0.6, within(2.5e-3));
    }

    /** A straight estimate is exact on a plane. */
    @Test
    void estimatesOnAPlane() {
        Lattice lattice = new Lattice(Candidates.of((f, a) -> 2 * f + a), FLAPS, AILERONS);
        for (Edge edge : lattice.crossings(above(0.7))) {
            double flap = edge.estimate(above(0.7), CandidateFlight::flap);
            double aileron = edge.estimate(above(0.7), CandidateFlight::aileron);
            assertThat(2 * flap + aileron).isCloseTo(0.7, within(1e-12));
        }
        Edge level = new Edge(lattice.trials().get(0), lattice.trials().get(0));
        assertThat(level.estimate(above(9), CandidateFlight::flap)).isEqualTo(0);
    }

    /** The last that flies lies before the border and within a sixty-fourth of the edge of it, from either side. */
    @Test
    void lastThatFlies() {
        for (boolean below : new boolean[] {true, false}) {
            Lattice lattice =
                    new Lattice(Candidates.of((f, a) -> f, (f, a) -> below ? 0.83 - f : f - 0.83), FLAPS, AILERONS);
            Edge border = lattice.edges().stream()
                    .filter(e -> e.from().fault().isEmpty() != e.to().fault().isEmpty())
                    .findFirst()
                    .orElseThrow();
            CandidateFlight last = lattice.lastGood(border);
            assertThat(last.fault()).isEmpty();
            assertThat(Math.abs(last.flap() - 0.83)).isLessThanOrEqualTo(0.5 / 64);
        }
    }

    /** Every set-up is flown once. */
    @Test
    void fliesEachOnce() {
        CandidateEvaluator bench = Candidates.of((f, a) -> f);
        new Lattice(bench, FLAPS, AILERONS);
        new Lattice(bench, FLAPS, AILERONS);
        assertThat(bench.flights()).isEqualTo(12);
    }
}
