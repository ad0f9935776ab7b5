package throwline.flight;

import java.util.OptionalDouble;

/**
 * Load of one servo at a speed: the worst of the set-up alone and with each stick at full.
 *
 * @param surface name of the surface
 * @param stick with this stick at full; empty without one
 * @param side -1 the left side's servo, 1 the right one's, 0 the elevator's, which moves both halves
 * @param deflection where the surface stands, rad, trailing edge down positive
 * @param hinge hinge moment, N m, positive where the air drives the trailing edge down
 * @param servo torque at the servo, N m, not negative; empty where the linkage does not reach the deflection
 */
public record ServoLoad(String surface, String stick, int side, double deflection, double hinge, OptionalDouble servo) {

    /** By which loads are compared: the servo's torque, or the hinge moment where there is none. */
    double size() {
        return servo.orElse(Math.abs(hinge));
    }
}
