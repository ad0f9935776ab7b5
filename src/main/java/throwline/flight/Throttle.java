package throwline.flight;

import throwline.power.Drive;

/**
 * A drive at one throttle.
 *
 * @param drive propeller, motor and battery
 * @param setting duty of the controller, above 0 to 1
 */
public record Throttle(Drive drive, double setting) {}
