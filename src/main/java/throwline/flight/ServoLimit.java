package throwline.flight;

/**
 * The highest speed that the servos allow, and the surface that sets it.
 *
 * @param speed m/s
 * @param surface name of the surface
 */
public record ServoLimit(double speed, String surface) {}
