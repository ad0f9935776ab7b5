package throwline.flight;

import java.util.Optional;
import throwline.model.Pack;

/**
 * The slowest level turn at a bank: the load that the bank asks for, and the elevator that holds the nose up against the
 * turn's own pitch rate.
 *
 * @param bank rad
 * @param speed m/s
 * @param limitedByElevator true where the elevator's travel ends before the wing lets go
 */
public record TurnStall(double bank, double speed, boolean limitedByElevator) {

    /** The walk up begins this far below the stall in straight flight, rad. */
    private static final double BELOW = Math.toRadians(6);

    /** Passes until speed and pitch rate agree to half a per cent; each goes half of the way, for whole ones swing about. */
    private static final int PASSES = 5;

    /** The slowest turn; empty where a part of it is not a solution. */
    static Optional<TurnStall> at(Trimmer trimmer, Pack pack, Stall stall, double bank) {
        double load = 1 / Math.cos(bank);
        double speed = stall.speed() * Math.sqrt(load);
        double from = stall.attitude().alpha() - BELOW;
        boolean limited = stall.elevatorLimited();
        for (int pass = 0; pass < PASSES; pass++) {
            double at = speed;
            double pitch = Gravity.STANDARD * (load - 1 / load) / (at * at);
            HeightPolar straight = new HeightPolar(trimmer, pack, at, from);
            HeightPolar turning = new HeightPolar(angle -> trimmer.at(pack, at, angle, pitch), from);
            // The search for the stall is finer than these walks: only their ratio counts.
            double next = stall.speed() * Math.sqrt(load * straight.limit() / turning.limit());
            speed = pass == 0 ? next : (at + next) / 2;
            limited = turning.limitedByElevator();
            if (!straight.converged() || !turning.converged()) {
                return Optional.empty();
            }
        }
        return Optional.of(new TurnStall(bank, speed, limited));
    }
}
