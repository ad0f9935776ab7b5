package throwline.liftingline;

/**
 * Motion of the surface through the air besides straight ahead. Rates are over the airspeed.
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

    /**
     * Angle by which the air comes from further below at a strip because of this motion, times the strip's speed over the
     * reference speed; small angles. A turning section has the lift of a flat one at the angle of its three-quarter chord
     * (thin airfoil theory).
     *
     * @param grid the surface; its pitch rate turns about the quarter chord in the middle
     * @param strip number of the strip
     */
    double upflow(SpanGrid grid, int strip) {
        double y = grid.control(strip);
        double slip = sideslip * Math.sin(grid.planform().dihedral()) * Math.signum(y);
        double turned = grid.quarterChord(strip) + grid.chord(strip) / 2;
        return roll * y + pitch * turned + slip;
    }

    /** True where left and right meet the same air. */
    public boolean isSymmetric() {
        return roll == 0 && yaw == 0 && sideslip == 0;
    }
}
