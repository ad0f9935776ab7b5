package throwline.flight;

/**
 * The slowest flight with the motor running, where the wing has its most lift.
 *
 * @param speed m/s, of level flight at one g
 * @param throttle duty of the controller
 * @param attitude the model there
 * @param firstStrip strip of the wing that stalls first
 * @param elevatorLimited true where the elevator's travel ends first
 */
public record PoweredStall(double speed, double throttle, Attitude attitude, int firstStrip, boolean elevatorLimited) {}
