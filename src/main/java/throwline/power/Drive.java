package throwline.power;

import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Propeller, motor, controller and battery together. The controller steps the battery's voltage down without loss; its
 * losses are in the motor's resistance (methods manual 20.5). Immutable.
 */
public final class Drive {

    /** Turns a second are found to this. */
    private static final double TOLERANCE = 1e-6;

    private static final int MOST_EVALUATIONS = 100;
    private static final double SLOWEST_TURNS = 0.5;

    /** Airspeed over diameter that drives any propeller no faster than this advance ratio. */
    private static final double LEAST_ADVANCE = 0.25;

    private final PropellerChart chart;
    private final BladeElements blades;
    private final ElectricMotor motor;
    private final Supply supply;

    /**
     * @param blades the propeller
     * @param chart its coefficients
     * @param motor the motor
     * @param supply the battery
     */
    public Drive(BladeElements blades, PropellerChart chart, ElectricMotor motor, Supply supply) {
        this.blades = blades;
        this.chart = chart;
        this.motor = motor;
        this.supply = supply;
    }

    /** The same drive with another battery or another state of it. */
    public Drive with(Supply other) {
        return new Drive(blades, chart, motor, other);
    }

    /** The propeller's blades. */
    public BladeElements blades() {
        return blades;
    }

    /** The motor. */
    public ElectricMotor motor() {
        return motor;
    }

    /** The battery. */
    public Supply supply() {
        return supply;
    }

    /** Area of the disc, m^2. */
    public double discArea() {
        return Math.PI * blades.diameter() * blades.diameter() / 4;
    }

    /**
     * Where motor and propeller agree.
     *
     * @param speed airspeed, m/s, not negative
     * @param throttle duty of the controller, above 0 to 1
     * @param density of the air, kg/m^3
     */
    public OperatingPoint at(double speed, double throttle, double density) {
        double fastest = Math.max(
                1.05 * throttle * supply.voltage() * motor.speedConstant() / (2 * Math.PI),
                speed / (LEAST_ADVANCE * blades.diameter()));
        double turns = new BracketingNthOrderBrentSolver(TOLERANCE, 5)
                .solve(
                        MOST_EVALUATIONS,
                        n -> motor.torque(motorCurrent(n, throttle)) - torque(n, speed, density),
                        SLOWEST_TURNS,
                        fastest);
        return point(speed, throttle, turns, density);
    }

    private OperatingPoint point(double speed, double throttle, double turns, double density) {
        double current = throttle * motorCurrent(turns, throttle);
        Coefficients c = chart.at(speed / (turns * blades.diameter()), turns);
        return new OperatingPoint(
                speed,
                throttle,
                turns,
                c.thrust() * density * turns * turns * Math.pow(blades.diameter(), 4),
                torque(turns, speed, density),
                current,
                supply.at(current),
                chart.isBeyond(speed / (turns * blades.diameter())));
    }

    /** Current through the motor, A; the controller lets none back. */
    private double motorCurrent(double turns, double throttle) {
        double left = throttle * supply.voltage() - 2 * Math.PI * turns / motor.speedConstant();
        return Math.max(0, left / (motor.resistance() + throttle * throttle * supply.resistance()));
    }

    private double torque(double turns, double speed, double density) {
        double power = chart.at(speed / (turns * blades.diameter()), turns).power();
        return power * density * turns * turns * Math.pow(blades.diameter(), 5) / (2 * Math.PI);
    }
}
