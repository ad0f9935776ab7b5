package throwline.flight;

import throwline.power.OperatingPoint;

/**
 * Steady straight flight with the motor running.
 *
 * @param drive state of the drive
 * @param attitude of the model; its lift and drag hold what the propeller pulls
 */
public record PoweredPoint(OperatingPoint drive, Attitude attitude) {

    /** Airspeed, m/s. */
    public double speed() {
        return attitude.speed();
    }

    /** Angle of the path above the horizon, rad. */
    public double climbAngle() {
        return -attitude.descentAngle();
    }

    /** Height gained a second, m/s. */
    public double climbRate() {
        return speed() * Math.sin(climbAngle());
    }
}
