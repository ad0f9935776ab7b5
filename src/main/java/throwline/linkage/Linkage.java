package throwline.linkage;

import java.util.OptionalDouble;
import throwline.numerics.Interpolation;

/**
 * Linkage from a servo's arm to a surface. Both angles are counted from where the surface is at neutral, in rad, down
 * positive.
 */
public interface Linkage {

    /** Angle of the surface at a servo angle; empty past the place where the linkage locks. */
    OptionalDouble surfaceAt(double servo);

    /** Servo angle that puts the surface at an angle, the one nearest to neutral; empty where no servo angle does. */
    OptionalDouble servoAt(double surface);

    /** Change of surface angle over change of servo angle at a servo angle; empty past the place where it locks. */
    OptionalDouble ratioAt(double servo);

    /** Surface angles that it can give on either side of neutral, whatever the servo's swing. */
    AngleRange surface();

    /**
     * Ends of a movement.
     *
     * @param low furthest up, rad, negative
     * @param high furthest down, rad
     */
    record AngleRange(double low, double high) {

        /** True where an angle lies between the ends, or so little outside. */
        boolean holds(double angle, double slack) {
            return angle >= low - slack && angle <= high + slack;
        }

        /** Nearest angle between the ends. */
        public double clamp(double angle) {
            return Interpolation.clamp(angle, low, high);
        }
    }
}
