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
import throwline.sizing.TrialBench.Place;

/** The curve of set-ups on which a first value vanishes, flaps for each angle of the ailerons: searched along the ailerons. */
final class OnCurve {

    private static final double FLAP_TOLERANCE = Math.toRadians(0.02);
    private static final double AILERON_TOLERANCE = Math.toRadians(0.02);

    /** Flaps are looked for so far beyond those of the two neighbours on the curve. */
    private static final double ROOM = Math.toRadians(6);

    private static final int MOST_EVALUATIONS = 30;
    private static final int MOST_STEPS = 10;

    private final TrialBench bench;
    private final Range flaps;

    OnCurve(TrialBench bench, SurfaceGroups groups) {
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
    List<Trial> alongTo(List<Trial> known, ToDoubleFunction<Trial> zero, ToDoubleFunction<Trial> second) {
        List<Trial> ordered = byAileron(known);
        List<Trial> all = new ArrayList<>(known);
        for (int i = 1; i < ordered.size(); i++) {
            Trial a = ordered.get(i - 1);
            Trial b = ordered.get(i);
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
    Optional<Trial> lowest(List<Trial> known, ToDoubleFunction<Trial> zero, ToDoubleFunction<Trial> cost) {
        List<Trial> ordered = byAileron(known);
        int best = ordered.indexOf(known.get(0));
        Trial a = ordered.get(Math.max(0, best - 1));
        Trial b = ordered.get(Math.min(ordered.size() - 1, best + 1));
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

    private static List<Trial> byAileron(List<Trial> known) {
        return known.stream().sorted(Comparator.comparingDouble(Trial::aileron)).toList();
    }

    /** The set-up on the curve at an angle of the ailerons between two on the curve. */
    private Optional<Trial> at(double aileron, Trial a, Trial b, ToDoubleFunction<Trial> zero) {
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
