package throwline.flight;

import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.model.Pack;
import throwline.model.Stick;

/** Entry speed below which a pull stick at full stalls the wing. */
public final class PullStallSpeed {

    /** The speed is found to this, m/s. */
    private static final double TOLERANCE = 0.02;

    private static final int ORDER = 5;

    private static final int MOST_EVALUATIONS = 60;

    /** Slower than this over the stall speed nobody pulls (PRACTICE, methods manual 17.7). */
    private static final double SLOWEST = 1.2;

    private final Flight flight;
    private final Pack pack;
    private final Stall stall;

    /**
     * @param flight in a set-up
     * @param pack with this battery
     * @param stall its stall
     */
    public PullStallSpeed(Flight flight, Pack pack, Stall stall) {
        this.flight = flight;
        this.pack = pack;
        this.stall = stall;
    }

    /**
     * The speed, m/s.
     *
     * @param stick at full
     * @param fastest entry speed that is looked at, m/s
     * @return empty where full stick does not stall the wing down to 1.2 times the stall speed; the fastest speed itself
     *     where full stick stalls it there too
     */
    public OptionalDouble of(Stick.Pull stick, double fastest) {
        double slowest = SLOWEST * stall.speed();
        if (slowest >= fastest || !stalls(stick, slowest)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                stalls(stick, fastest)
                        ? fastest
                        : new BracketingNthOrderBrentSolver(TOLERANCE, ORDER)
                                .solve(
                                        MOST_EVALUATIONS,
                                        v -> stalls(stick, v) ? -1 : 1,
                                        slowest,
                                        fastest,
                                        AllowedSolution.RIGHT_SIDE));
    }

    private boolean stalls(Stick.Pull stick, double speed) {
        return flight.pull(stick, pack, stall, speed)
                .filter(pull -> pull.limit() == PullUp.Limit.WING)
                .isPresent();
    }
}
