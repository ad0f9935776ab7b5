package throwline.power;

/**
 * A direct-current motor of the first order with its controller (methods manual 20.5): {@code volts = turning / constant
 * + amps R}, {@code torque = (amps - amps without load) / constant}.
 *
 * @param speedConstant rad/s a volt
 * @param resistance of windings and controller under load, ohm: not the one of the catalogue, which leaves most losses out
 * @param noLoadCurrent A
 */
public record ElectricMotor(double speedConstant, double resistance, double noLoadCurrent) {

    private static final double RPM = 2 * Math.PI / 60;

    /** Speed constant for turns a minute a volt, as motors are sold. */
    public static double speedConstant(double turnsAMinuteAVolt) {
        return turnsAMinuteAVolt * RPM;
    }

    /** Torque at a current, N m; without current the friction is left. */
    double torque(double current) {
        return (current - noLoadCurrent) / speedConstant;
    }
}
