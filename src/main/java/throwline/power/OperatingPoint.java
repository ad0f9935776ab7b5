package throwline.power;

/**
 * State of a drive at one airspeed and throttle.
 *
 * @param speed airspeed, m/s
 * @param throttle duty of the controller, 0 to 1
 * @param turns turns a second
 * @param thrust N, negative where the propeller brakes
 * @param torque that the air puts against the propeller, N m
 * @param current out of the battery, A
 * @param voltage of the battery under load, V
 * @param beyond true where the propeller turns so slowly for this airspeed that its thrust is not computed but held
 */
public record OperatingPoint(
        double speed,
        double throttle,
        double turns,
        double thrust,
        double torque,
        double current,
        double voltage,
        boolean beyond) {

    /** Power at the shaft, W. */
    public double shaftPower() {
        return torque * 2 * Math.PI * turns;
    }

    /** Power out of the battery, W. */
    public double electricPower() {
        return current * voltage;
    }

    /** Shaft power over electric power. */
    public double motorEfficiency() {
        return shaftPower() / electricPower();
    }
}
