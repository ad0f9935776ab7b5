package throwline.flight;

import java.util.Optional;

/**
 * The answer to "how does it come down at this speed".
 *
 * @param outcome whether it can
 * @param attitude how; empty where there is no steady descent
 */
public record Descent(Outcome outcome, Optional<Attitude> attitude) {

    /** Whether a steady descent at the speed exists. */
    public enum Outcome {
        /** It does. */
        STEADY,
        /** The speed is below the stall. */
        TOO_SLOW,
        /** So much drag that the speed cannot be held even straight down. */
        TOO_FAST,
        /** The elevator's travel does not hold it. */
        ELEVATOR_SHORT,
        /** The search did not converge. */
        NOT_FOUND
    }

    /** The attitude, where the descent is steady. */
    public Optional<Attitude> steady() {
        return outcome == Outcome.STEADY ? attitude : Optional.empty();
    }
}
