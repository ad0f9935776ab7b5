package throwline.liftingline;

/**
 * How the surface moves through the air besides straight ahead. Rates are over the airspeed.
 *
 * @param roll roll rate over speed, rad/m, right wing down positive
 * @param pitch pitch rate over speed, rad/m, nose up positive
 * @param yaw yaw rate over speed, rad/m, nose right positive
 * @param sideslip rad, wind from the right positive; it works through the dihedral
 */
public record Motion(double roll, double pitch, double yaw, double sideslip) {

    /** Straight flight. */
    public static Motion straight() {
        return new Motion(0, 0, 0, 0);
    }

    /** Steady roll at this rate over speed, rad/m. */
    public static Motion rolling(double roll) {
        return new Motion(roll, 0, 0, 0);
    }

    /** True where left and right meet the same air. */
    public boolean isSymmetric() {
        return roll == 0 && yaw == 0 && sideslip == 0;
    }
}
