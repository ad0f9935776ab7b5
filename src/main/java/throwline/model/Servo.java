package throwline.model;

import java.util.OptionalDouble;

/**
 * The servo of a surface and the linkage between them. Wing surfaces have one servo a side; one servo moves the whole
 * elevator.
 *
 * @param surface name of the surface
 * @param torque rating, N m; empty where not given
 * @param arm hole in the servo arm from the servo's axis, m; empty where not given
 * @param horn hole in the horn from the hinge line, m; empty where not given
 * @param rod hole to hole, m; empty where not given
 * @param swing how far the servo turns to each side, rad; empty where not given
 * @param lean how far arm and horn lean away from the surface's down side with the surface at neutral, rad
 * @param offset how far the servo stands from the middle of its swing with the surface at neutral, away from the surface's
 *     down side, rad
 * @param give angle by which the servo yields when it is loaded to its torque, rad, not negative
 * @param play movement of the surface's trailing edge by hand with the servo holding, from end to end, m, not negative
 */
public record Servo(
        String surface,
        OptionalDouble torque,
        OptionalDouble arm,
        OptionalDouble horn,
        OptionalDouble rod,
        OptionalDouble swing,
        double lean,
        double offset,
        double give,
        double play) {

    /** Give of a servo whose own was not measured, rad (common practice, no source). */
    public static final double USUAL_GIVE = Math.toRadians(4);

    /** Play at a trailing edge where it was not measured, m: less is good building (PRACTICE, methods manual 17.5). */
    public static final double USUAL_PLAY = 0.001;

    /** Name of the elevator among the surfaces. */
    public static final String ELEVATOR = "elevator";

    /** A servo whose give and play were not measured. */
    public Servo(
            String surface,
            OptionalDouble torque,
            OptionalDouble arm,
            OptionalDouble horn,
            OptionalDouble rod,
            OptionalDouble swing,
            double lean,
            double offset) {
        this(surface, torque, arm, horn, rod, swing, lean, offset, USUAL_GIVE, USUAL_PLAY);
    }

    /** A servo of which nothing is known. */
    public static Servo unknown(String surface) {
        OptionalDouble nothing = OptionalDouble.empty();
        return new Servo(surface, nothing, nothing, nothing, nothing, nothing, 0, 0);
    }
}
