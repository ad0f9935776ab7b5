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
 */
public record Servo(
        String surface,
        OptionalDouble torque,
        OptionalDouble arm,
        OptionalDouble horn,
        OptionalDouble rod,
        OptionalDouble swing,
        double lean,
        double offset) {

    /** Name of the elevator among the surfaces. */
    public static final String ELEVATOR = "elevator";

    /** A servo of which nothing is known. */
    public static Servo unknown(String surface) {
        OptionalDouble nothing = OptionalDouble.empty();
        return new Servo(surface, nothing, nothing, nothing, nothing, nothing, 0, 0);
    }
}
