package throwline.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.sizing.CandidateEvaluator.Place;

/** Set-ups flown all over what the surfaces can do: where searches start from, and where roots are seen to lie. */
final class Lattice {

    /** Shares of an edge are found to this: a twentieth of a degree on an edge of ten degrees. */
    private static final double SHARE_TOLERANCE = 4e-3;

    private static final int MOST_EVALUATIONS = 40;

    private final CandidateEvaluator bench;
    private final double[] flaps;
    private final double[] ailerons;
    private final List<CandidateFlight> trials;

    /**
     * @param bench flies set-ups
     * @param flaps angles of the flaps, rising
     * @param ailerons angles of the ailerons, rising
     */
    Lattice(CandidateEvaluator bench, double[] flaps, double[] ailerons) {
        this.bench = bench;
        this.flaps = flaps.clone();
        this.ailerons = ailerons.clone();
        List<Place> places = new ArrayList<>();
        for (double aileron : ailerons) {
            for (double flap : flaps) {
                places.add(new Place(flap, aileron));
            }
        }
        trials = bench.at(places);
    }

    /** Two neighbours. */
    record Edge(CandidateFlight from, CandidateFlight to) {

        /** Estimate by a straight line of a second value where a first one vanishes. */
        double estimate(ToDoubleFunction<CandidateFlight> zero, ToDoubleFunction<CandidateFlight> value) {
            double a = zero.applyAsDouble(from);
            double b = zero.applyAsDouble(to);
            double share = a == b ? 0 : a / (a - b);
            return value.applyAsDouble(from) + share * (value.applyAsDouble(to) - value.applyAsDouble(from));
        }
    }

    List<CandidateFlight> trials() {
        return trials;
    }

    /** Edges at whose ends a value has different signs. */
    List<Edge> crossings(ToDoubleFunction<CandidateFlight> value) {
        List<Edge> found = new ArrayList<>();
        for (Edge edge : edges()) {
            double a = value.applyAsDouble(edge.from);
            double b = value.applyAsDouble(edge.to);
            if (a * b <= 0 && a != b) {
                found.add(edge);
            }
        }
        return found;
    }

    /** All edges. */
    List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        for (int j = 0; j < ailerons.length; j++) {
            for (int i = 0; i < flaps.length; i++) {
                if (i > 0) {
                    edges.add(new Edge(at(i - 1, j), at(i, j)));
                }
                if (j > 0) {
                    edges.add(new Edge(at(i, j - 1), at(i, j)));
                }
            }
        }
        return edges;
    }

    private CandidateFlight at(int flap, int aileron) {
        return trials.get(aileron * flaps.length + flap);
    }

    /** The set-up on an edge at which a value vanishes that has different signs at its ends. */
    Optional<CandidateFlight> root(Edge edge, ToDoubleFunction<CandidateFlight> value) {
        Place from = place(edge.from);
        Place to = place(edge.to);
        double a = value.applyAsDouble(edge.from);
        double b = value.applyAsDouble(edge.to);
        if (!(a * b <= 0)) {
            return Optional.empty();
        }
        double share = new BracketingNthOrderBrentSolver(SHARE_TOLERANCE, 5)
                .solve(
                        MOST_EVALUATIONS,
                        s -> {
                            double here = value.applyAsDouble(bench.at(from.towards(to, s)));
                            return Double.isNaN(here) ? a + s * (b - a) : here;
                        },
                        0,
                        1);
        CandidateFlight trial = bench.at(from.towards(to, share));
        return Double.isNaN(value.applyAsDouble(trial)) ? Optional.empty() : Optional.of(trial);
    }

    /** The furthest set-up that flies on the way from one that does to one that does not, by halving. */
    CandidateFlight lastGood(Edge edge) {
        boolean forward = edge.from.fault().isEmpty();
        Place good = place(forward ? edge.from : edge.to);
        Place bad = place(forward ? edge.to : edge.from);
        double low = 0;
        double high = 1;
        for (int k = 0; k < 6; k++) {
            double middle = (low + high) / 2;
            if (bench.at(good.towards(bad, middle)).fault().isEmpty()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return bench.at(good.towards(bad, low));
    }

    static Place place(CandidateFlight trial) {
        return new Place(trial.flap(), trial.aileron());
    }
}
