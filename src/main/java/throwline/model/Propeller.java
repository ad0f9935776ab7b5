package throwline.model;

/**
 * The propeller and what it does when the throttle is shut.
 *
 * @param diameter diameter, m
 * @param pitch pitch, m
 * @param blades number of blades
 * @param shut what it does with the throttle shut
 * @param height thrust line above the balance point, m
 * @param kind shape of its blades
 * @param downThrust nose-down angle of the thrust line to the body's axis, rad
 */
public record Propeller(
        double diameter, double pitch, int blades, Shut shut, double height, Kind kind, double downThrust) {

    /** A propeller of which no more is known. */
    public Propeller(double diameter, double pitch, int blades, Shut shut, double height) {
        this(diameter, pitch, blades, shut, height, Kind.UNKNOWN, 0);
    }

    /** The same propeller doing something else with the throttle shut. */
    public Propeller doing(Shut other) {
        return new Propeller(diameter, pitch, blades, other, height, kind, downThrust);
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

    /** Shape of the blades. */
    public enum Kind {
        /** Narrow and stiff, for engines or electric motors. */
        SPORT,
        /** Thin and wider, for electric motors. */
        THIN_ELECTRIC,
        /** Wide and slow. */
        SLOW_FLY,
        /** Not said. */
        UNKNOWN
    }
}
