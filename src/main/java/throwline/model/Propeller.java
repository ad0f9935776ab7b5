package throwline.model;

/**
 * The propeller and what it does when the throttle is shut.
 *
 * @param diameter diameter, m
 * @param pitch pitch, m
 * @param blades number of blades
 * @param shut what it does with the throttle shut
 * @param height thrust line above the balance point, m
 */
public record Propeller(double diameter, double pitch, int blades, Shut shut, double height) {

    /** The same propeller doing something else with the throttle shut. */
    public Propeller doing(Shut other) {
        return new Propeller(diameter, pitch, blades, other, height);
    }

    /** What the propeller does with the throttle shut. */
    public enum Shut {
        /** Held by the motor brake. */
        STOPPED,
        /** Turned by the air. */
        TURNING,
        /** Blades folded back. */
        FOLDED
    }
}
