package throwline.sizing;

import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Stall;
import throwline.model.SetUp;

/**
 * One set-up tried in flight.
 *
 * @param flap where the flaps stand, rad, trailing edge down positive
 * @param aileron where the ailerons stand, rad
 * @param setUp the same as a set-up
 * @param stall its slowest steady flight; empty where it was not found
 * @param descent its steady descent at the wanted speed; empty where no speed is wanted or no stall was found
 */
public record Trial(double flap, double aileron, SetUp setUp, Optional<Stall> stall, Optional<Descent> descent) {

    /** Less angle than this left before the tail stalls is not safe, rad (FLIGHT-METHODS 6.8: red below two degrees). */
    public static final double SAFE_TAIL = Math.toRadians(2);

    /** Stall speed, m/s; not a number where it was not found. */
    public double stallSpeed() {
        return stall.map(Stall::speed).orElse(Double.NaN);
    }

    /** Descent angle at the wanted speed, rad; straight down where there is too much drag; not a number where none is. */
    public double angle() {
        return descent.map(d -> d.outcome() == Descent.Outcome.TOO_FAST
                        ? Math.PI / 2
                        : d.attitude().map(Attitude::descentAngle).orElse(Double.NaN))
                .orElse(Double.NaN);
    }

    /** Why this cannot be flown; empty where it can. */
    public Optional<Limit> fault() {
        if (stall.isEmpty()) {
            return Optional.of(Limit.NO_SOLUTION);
        }
        if (descent.isEmpty()) {
            return Optional.empty();
        }
        return switch (descent.get().outcome()) {
            case TOO_SLOW -> Optional.of(Limit.WING_STALL);
            case TOO_FAST -> Optional.of(Limit.TOO_MUCH_DRAG);
            case ELEVATOR_SHORT -> Optional.of(Limit.ELEVATOR_TRAVEL);
            case NOT_FOUND -> Optional.of(Limit.NO_SOLUTION);
            case STEADY ->
                descent.get().attitude().filter(a -> a.tailMargin() < SAFE_TAIL).map(a -> Limit.TAIL_MARGIN);
        };
    }
}
