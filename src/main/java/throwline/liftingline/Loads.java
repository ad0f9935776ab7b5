package throwline.liftingline;

/**
 * Forces and moments about a point over dynamic pressure, in the directions of the air: lift across it and upwards, drag
 * along it, side force to the right.
 *
 * @param lift m^2, up positive
 * @param drag m^2, backwards positive
 * @param side m^2, right positive
 * @param rolling m^3, right wing down positive
 * @param pitching m^3, nose up positive
 * @param yawing m^3, nose right positive
 */
public record Loads(double lift, double drag, double side, double rolling, double pitching, double yawing) {}
