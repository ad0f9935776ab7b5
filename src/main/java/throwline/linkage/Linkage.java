package throwline.linkage;

import java.util.OptionalDouble;

/** How a servo's arm moves a surface. Both angles are counted from where the surface is at neutral, in rad, down positive. */
public interface Linkage {

    /** Angle of the surface at a servo angle; empty past the place where the linkage locks. */
    OptionalDouble surfaceAt(double servo);

    /** Servo angle that puts the surface at an angle, the one nearest to neutral; empty where no servo angle does. */
    OptionalDouble servoAt(double surface);

    /** Change of surface angle over change of servo angle at a servo angle; empty past the place where it locks. */
    OptionalDouble ratioAt(double servo);
}
