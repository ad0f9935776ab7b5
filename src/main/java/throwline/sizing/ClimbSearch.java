package throwline.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.flight.Airframe;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.sizing.FoundClimb.Climb;
import throwline.sizing.FoundClimb.Trial;
import throwline.sizing.PoweredCandidates.Ready;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;

/** Finds the least throttle, and the furthest flap at full throttle, that climbs as wanted. */
public final class ClimbSearch {

    private static final double THROTTLE_TOLERANCE = 2e-3;
    private static final double LEAST_THROTTLE = 0.1;
    private static final double FLAP_TOLERANCE = Math.toRadians(0.2);
    private static final int MOST_EVALUATIONS = 40;

    private final PoweredCandidates candidates;
    private final WantedClimb wanted;

    /**
     * @param airframe the model, which has a motor
     * @param pack with this battery
     * @param groups what may be moved
     * @param wanted the climb
     */
    public ClimbSearch(Airframe airframe, Pack pack, SurfaceGroups groups, WantedClimb wanted) {
        candidates = new PoweredCandidates(airframe, pack, groups, "");
        this.wanted = wanted;
    }

    /** The answer for a set-up. */
    public FoundClimb in(SetUp setUp) {
        Optional<Ready> flight = candidates.ready(setUp);
        Optional<Climb> full = flight.flatMap(powered -> best(powered, 1));
        Optional<Climb> enough =
                full.filter(climb -> spare(climb) >= 0).flatMap(climb -> enough(flight.orElseThrow(), climb));
        List<Trial> line = candidates.angles().parallelStream()
                .flatMap(angle -> trial(angle).stream())
                .toList();
        Optional<Double> mostFlap = mostFlap(line);
        return new FoundClimb(
                setUp,
                full,
                enough,
                mostFlap,
                mostFlap.filter(flap -> flap >= candidates.most()).isPresent(),
                line.stream().max(Comparator.comparingDouble(t -> t.climb().worth(wanted))),
                enough.isPresent() ? List.of() : List.of(full.isEmpty() ? Limit.NO_SOLUTION : Limit.FULL_THROTTLE));
    }

    private double spare(Climb climb) {
        return climb.worth(wanted) - wanted.value();
    }

    private Optional<Climb> best(Ready ready, double throttle) {
        PoweredFlight powered = ready.powered();
        Optional<PoweredPoint> best =
                wanted.as() == As.ANGLE ? powered.steepestClimb(throttle) : powered.bestClimb(throttle);
        Optional<Climb> found = best.map(Climb::of);
        if (throttle < 1 || ready.straightUp().isEmpty()) {
            return found;
        }
        double speed = ready.straightUp().getAsDouble();
        Climb up = new Climb(1, speed, Math.PI / 2, powered.thrust(speed));
        return found.filter(climb -> climb.worth(wanted) > up.worth(wanted)).or(() -> Optional.of(up));
    }

    private Optional<Climb> enough(Ready powered, Climb full) {
        UnivariateFunction spare =
                throttle -> best(powered, throttle).map(this::spare).orElse(-wanted.value());
        if (spare(full) == 0 || spare.value(LEAST_THROTTLE) >= 0) {
            return Optional.of(full);
        }
        double throttle = new BracketingNthOrderBrentSolver(THROTTLE_TOLERANCE, 5)
                .solve(MOST_EVALUATIONS, spare, LEAST_THROTTLE, 1, AllowedSolution.ABOVE_SIDE);
        return best(powered, throttle).or(() -> Optional.of(full));
    }

    private Optional<Trial> trial(double angle) {
        SetUp setUp = candidates.setUp(angle);
        return candidates.ready(setUp).flatMap(ready -> best(ready, 1)).map(climb -> new Trial(angle, setUp, climb));
    }

    /** The furthest flap that climbs so; empty where none does. */
    private Optional<Double> mostFlap(List<Trial> line) {
        int last = line.size() - 1;
        while (last >= 0 && spare(line.get(last).climb()) < 0) {
            last--;
        }
        if (last < 0) {
            return Optional.empty();
        }
        double from = line.get(last).flap();
        if (last == line.size() - 1) {
            return Optional.of(from);
        }
        UnivariateFunction spare =
                flap -> trial(flap).map(t -> spare(t.climb())).orElse(-wanted.value());
        return Optional.of(new BracketingNthOrderBrentSolver(FLAP_TOLERANCE, 5)
                .solve(MOST_EVALUATIONS, spare, from, line.get(last + 1).flap(), AllowedSolution.ABOVE_SIDE));
    }
}
