package throwline.flight;

/**
 * A take-off at full throttle.
 *
 * @param outcome whether it leaves the ground
 * @param liftOff airspeed at lift-off, m/s
 * @param run distance rolled, m; 0 where it does not leave the ground
 * @param seconds that takes, s
 * @param distance from standing still to over the obstacle, m; infinite where it does not climb
 */
public record TakeOff(Outcome outcome, double liftOff, double run, double seconds, double distance) {

    /** Whether it leaves the ground. */
    public enum Outcome {
        /** It does. */
        FLIES,
        /** The wheels do not roll on this ground. */
        WILL_NOT_ROLL,
        /** It rolls, but hardly gains speed near lift-off. */
        TOO_LITTLE_THRUST
    }
}
