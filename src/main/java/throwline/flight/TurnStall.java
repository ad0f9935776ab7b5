package throwline.flight;

import java.util.Optional;
import throwline.air.Gravity;
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

    /** The speed is found where the turn's own pitch rate at it gives it again, to this share. */
    private static final double AGREES = 5e-3;

    /** Each pass goes half of the way, for whole ones swing about. */
    private static final int MOST_PASSES = 16;

    /** The slowest turn; empty where a part of it is not a solution or the speed does not settle. */
    static Optional<TurnStall> at(Trimmer trimmer, Pack pack, Stall stall, double bank) {
        double load = 1 / Math.cos(bank);
        double speed = stall.speed() * Math.sqrt(load);
        double from = stall.attitude().alpha() - BELOW;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double at = speed;
            double pitch = Gravity.STANDARD * (load - 1 / load) / (at * at);
            HeightPolar straight = new HeightPolar(trimmer, pack, at, from);
            HeightPolar turning = new HeightPolar(angle -> trimmer.at(pack, at, angle, pitch), from);
            if (!straight.converged() || !turning.converged()) {
                return Optional.empty();
            }
            // The search for the stall is finer than these walks: only their ratio counts.
            double next = stall.speed() * Math.sqrt(load * straight.limit() / turning.limit());
            if (Math.abs(next - at) < AGREES * at) {
                return Optional.of(new TurnStall(bank, next, turning.limitedByElevator()));
            }
            speed = pass == 0 ? next : (at + next) / 2;
        }
        return Optional.empty();
    }
}
