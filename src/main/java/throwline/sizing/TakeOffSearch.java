package throwline.sizing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import throwline.flight.Airframe;
import throwline.flight.GroundHeights;
import throwline.flight.TakeOff;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.sizing.FoundTakeOff.Trial;

/**
 * Finds the least flap with which a take-off run is short enough. Flap slows the lift-off and adds drag: the run falls and
 * then rises again, and where its least is still too long that is the answer.
 */
public final class TakeOffSearch {

    /** Flaps are found to this, rad. */
    private static final double TOLERANCE = Math.toRadians(0.1);

    private static final int MOST_EVALUATIONS = 40;

    /** A run that does not leave the ground counts as so many times the wanted one. */
    private static final double NEVER = 10;

    /** Near an end of the flaps' travel, rad. */
    private static final double AT_END = Math.toRadians(0.5);

    private final PoweredCandidates candidates;
    private final Function<SetUp, Optional<TakeOff>> pilot;

    /**
     * @param airframe the model, which has a motor
     * @param pack with this battery
     * @param groups what may be moved
     * @param name of the set-up to be found
     */
    public TakeOffSearch(Airframe airframe, Pack pack, SurfaceGroups groups, String name) {
        candidates = new PoweredCandidates(airframe, pack, groups, name);
        GroundHeights ladder = new GroundHeights(airframe);
        pilot = setUp -> candidates.ready(setUp).map(ready -> ready.powered().takeOff(ladder));
    }

    /**
     * A search among take-offs of any kind.
     *
     * @param candidates set-ups
     * @param pilot takes off; empty where no stall is found
     */
    TakeOffSearch(PoweredCandidates candidates, Function<SetUp, Optional<TakeOff>> pilot) {
        this.candidates = candidates;
        this.pilot = pilot;
    }

    /** Take-offs over what the flaps can do, rising. */
    public List<Trial> line() {
        return candidates.angles().parallelStream()
                .flatMap(angle -> trial(angle).stream())
                .toList();
    }

    /**
     * The answer.
     *
     * @param line take-offs of {@link #line}
     * @param wanted longest run, m
     * @return empty where not one stall was found
     */
    public Optional<FoundTakeOff> within(List<Trial> line, double wanted) {
        if (line.isEmpty()) {
            return Optional.empty();
        }
        double[] runs = line.stream().mapToDouble(Trial::run).toArray();
        Optional<Integer> first = PoweredCandidates.first(runs, wanted);
        if (first.isPresent()) {
            int k = first.get();
            return Optional.of(met(line, k == 0 ? line.get(0) : between(line.get(k - 1), line.get(k), wanted)));
        }
        int least = PoweredCandidates.least(runs);
        Trial shortest = shortest(line, least, wanted);
        if (shortest.run() <= wanted) {
            return Optional.of(met(line, between(line.get(Math.max(0, least - 1)), shortest, wanted)));
        }
        boolean atEnd = line.size() == 1 || shortest.flap() > candidates.most() - AT_END;
        Limit limit = !shortest.flies() ? Limit.FULL_THROTTLE : atEnd ? candidates.end() : Limit.BEST_REACHED;
        return Optional.of(new FoundTakeOff(line, shortest, false, List.of(limit)));
    }

    private static FoundTakeOff met(List<Trial> line, Trial found) {
        return new FoundTakeOff(line, found, true, List.of());
    }

    private Optional<Trial> trial(double angle) {
        SetUp setUp = candidates.setUp(angle);
        return pilot.apply(setUp).map(takeOff -> new Trial(angle, setUp, takeOff));
    }

    private double excess(double angle, double wanted) {
        return Math.min(trial(angle).map(Trial::run).orElse(Double.POSITIVE_INFINITY), NEVER * wanted) - wanted;
    }

    /** The least flap of which the run is short enough, between one that is too little and one that is enough. */
    private Trial between(Trial little, Trial enough, double wanted) {
        if (enough.flap() - little.flap() < TOLERANCE) {
            return enough;
        }
        double angle = new BracketingNthOrderBrentSolver(TOLERANCE, 5)
                .solve(
                        MOST_EVALUATIONS,
                        (UnivariateFunction) a -> excess(a, wanted),
                        little.flap(),
                        enough.flap(),
                        AllowedSolution.BELOW_SIDE);
        return trial(angle).filter(found -> found.run() <= wanted).orElse(enough);
    }

    /** The shortest run near the shortest of the line. */
    private Trial shortest(List<Trial> line, int least, double wanted) {
        Trial shortest = line.get(least);
        if (line.size() == 1 || !shortest.flies()) {
            return shortest;
        }
        double low = line.get(Math.max(0, least - 1)).flap();
        double high = line.get(Math.min(line.size() - 1, least + 1)).flap();
        double angle = new BrentOptimizer(1e-3, TOLERANCE)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high),
                        new UnivariateObjectiveFunction(a -> excess(a, wanted)))
                .getPoint();
        return trial(angle).filter(t -> t.run() < shortest.run()).orElse(shortest);
    }
}
