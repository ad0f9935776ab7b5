package throwline.flight;

import java.util.Optional;
import throwline.model.Pack;

/** Steady straight flights at one throttle, each looked for from the one before. */
final class SteadyPower {

    private final Trimmer trimmer;
    private final DescentSolver solver;

    /**
     * @param trimmer the model with its motor running
     * @param pack with this battery
     * @param atStall its stall with the throttle closed
     */
    SteadyPower(Trimmer trimmer, Pack pack, Attitude atStall) {
        this.trimmer = trimmer;
        solver = new DescentSolver(trimmer, pack, atStall);
    }

    /** The same, the next flight looked for from an attitude. */
    SteadyPower from(Attitude attitude) {
        solver.startFrom(attitude);
        return this;
    }

    /** Flight at a speed, m/s, climbing or not; empty where there is none. */
    Optional<PoweredPoint> at(double speed) {
        return solver.next(speed)
                .steady()
                .map(attitude ->
                        new PoweredPoint(trimmer.jet(speed).orElseThrow().point(), attitude));
    }
}
