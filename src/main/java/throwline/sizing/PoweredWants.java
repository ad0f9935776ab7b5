package throwline.sizing;

import java.util.Optional;

/**
 * Wants of the motor.
 *
 * @param takeOffWithin longest take-off run, m; empty where none is wanted
 * @param climb least climb; empty where none is wanted
 */
public record PoweredWants(Optional<Double> takeOffWithin, Optional<WantedClimb> climb) {

    /** Nothing. */
    public static PoweredWants none() {
        return new PoweredWants(Optional.empty(), Optional.empty());
    }

    /** True where nothing is wanted. */
    public boolean isEmpty() {
        return takeOffWithin.isEmpty() && climb.isEmpty();
    }

    /**
     * A wanted climb.
     *
     * @param value rad above the horizon, or m/s of height; positive
     * @param as which of both
     */
    public record WantedClimb(double value, As as) {}

    /** What a climb is measured by. */
    public enum As {
        /** Angle of the path above the horizon. */
        ANGLE,
        /** Height gained a second. */
        RATE
    }
}
