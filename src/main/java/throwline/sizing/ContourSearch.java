package throwline.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import throwline.sizing.CandidateEvaluator.Place;

/** The curve of set-ups on which a first value vanishes, flaps for each angle of the ailerons: searched along the ailerons. */
final class ContourSearch {

    private static final double FLAP_TOLERANCE = Math.toRadians(0.02);
    private static final double AILERON_TOLERANCE = Math.toRadians(0.02);

    /** Flaps are looked for so far beyond those of the two neighbours on the curve. */
    private static final double ROOM = Math.toRadians(6);

    private static final int MOST_EVALUATIONS = 30;
    private static final int MOST_STEPS = 10;

    private final CandidateEvaluator bench;
    private final Range flaps;

    ContourSearch(CandidateEvaluator bench, SurfaceGroups groups) {
        this.bench = bench;
        flaps = groups.flapTravel();
    }

    /**
     * Set-ups on the curve at which a second value vanishes too; where there are none, those given.
     *
     * @param known set-ups on the curve
     * @param zero vanishes on the curve
     * @param second is to vanish too
     */
    List<CandidateFlight> alongTo(
            List<CandidateFlight> known,
            ToDoubleFunction<CandidateFlight> zero,
            ToDoubleFunction<CandidateFlight> second) {
        List<CandidateFlight> ordered = byAileron(known);
        List<CandidateFlight> all = new ArrayList<>(known);
        for (int i = 1; i < ordered.size(); i++) {
            CandidateFlight a = ordered.get(i - 1);
            CandidateFlight b = ordered.get(i);
            if (second.applyAsDouble(a) * second.applyAsDouble(b) <= 0
                    && b.aileron() - a.aileron() > AILERON_TOLERANCE) {
                UnivariateFunction value = aileron -> {
                    double share = (aileron - a.aileron()) / (b.aileron() - a.aileron());
                    double straight =
                            second.applyAsDouble(a) + share * (second.applyAsDouble(b) - second.applyAsDouble(a));
                    return at(aileron, a, b, zero).map(second::applyAsDouble).orElse(straight);
                };
                double root = new BracketingNthOrderBrentSolver(AILERON_TOLERANCE, 5)
                        .solve(MOST_EVALUATIONS, value, a.aileron(), b.aileron());
                at(root, a, b, zero).filter(t -> t.fault().isEmpty()).ifPresent(all::add);
            }
        }
        return all;
    }

    /** The set-up on the curve with the lowest cost between the neighbours of the best known. */
    Optional<CandidateFlight> lowest(
            List<CandidateFlight> known,
            ToDoubleFunction<CandidateFlight> zero,
            ToDoubleFunction<CandidateFlight> cost) {
        List<CandidateFlight> ordered = byAileron(known);
        int best = ordered.indexOf(known.get(0));
        CandidateFlight a = ordered.get(Math.max(0, best - 1));
        CandidateFlight b = ordered.get(Math.min(ordered.size() - 1, best + 1));
        if (b.aileron() - a.aileron() < AILERON_TOLERANCE) {
            return Optional.empty();
        }
        double found = new BrentOptimizer(
                        1e-3, AILERON_TOLERANCE, (iteration, previous, current) -> iteration >= MOST_STEPS)
                .optimize(
                        GoalType.MINIMIZE,
                        new MaxEval(MOST_EVALUATIONS),
                        new SearchInterval(
                                a.aileron(), b.aileron(), known.get(0).aileron()),
                        new UnivariateObjectiveFunction(aileron ->
                                at(aileron, a, b, zero).map(cost::applyAsDouble).orElse(Double.MAX_VALUE)))
                .getPoint();
        return at(found, a, b, zero).filter(t -> t.fault().isEmpty());
    }

    private static List<CandidateFlight> byAileron(List<CandidateFlight> known) {
        return known.stream()
                .sorted(Comparator.comparingDouble(CandidateFlight::aileron))
                .toList();
    }

    /** The set-up on the curve at an angle of the ailerons between two on the curve. */
    private Optional<CandidateFlight> at(
            double aileron, CandidateFlight a, CandidateFlight b, ToDoubleFunction<CandidateFlight> zero) {
        double low = flaps.clamp(Math.min(a.flap(), b.flap()) - ROOM);
        double high = flaps.clamp(Math.max(a.flap(), b.flap()) + ROOM);
        UnivariateFunction value = flap -> zero.applyAsDouble(bench.at(new Place(flap, aileron)));
        double atLow = value.value(low);
        double atHigh = value.value(high);
        if (!(atLow * atHigh <= 0)) {
            return Optional.empty();
        }
        double flap = new BracketingNthOrderBrentSolver(FLAP_TOLERANCE, 5)
                .solve(
                        MOST_EVALUATIONS,
                        f -> {
                            double here = value.value(f);
                            return Double.isNaN(here) ? atLow + (f - low) / (high - low) * (atHigh - atLow) : here;
                        },
                        low,
                        high);
        return Optional.of(bench.at(new Place(flap, aileron)));
    }
}
