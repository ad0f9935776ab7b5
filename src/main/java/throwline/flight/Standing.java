package throwline.flight;

import java.util.Optional;
import throwline.linkage.ServoBlowBack;

/**
 * Angles of one surface: where it is told to stand, and where it does.
 *
 * @param surface name of the surface
 * @param stick with this stick at full; empty without one
 * @param side -1 the left side, 1 the right one, 0 the elevator
 * @param told rad, trailing edge down positive
 * @param bench where the servo brings it with nothing pushing, rad
 * @param inAir where it rests against the air; empty where the servo's torque is not given, or it was not found
 */
public record Standing(
        String surface, String stick, int side, double told, double bench, Optional<ServoBlowBack.Rest> inAir) {}
