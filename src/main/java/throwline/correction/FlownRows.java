package throwline.correction;

/** Rows of the answer as they follow from the state, in the air of the prediction. */
public final class FlownRows {

    private final Flying flying;
    private final double approach;

    /**
     * @param flying the set-up
     * @param approach approach speed over stall speed
     */
    public FlownRows(Flying flying, double approach) {
        this.flying = flying;
        this.approach = approach;
    }

    /** Logarithm of the stall speed. */
    public Expectation stall() {
        return x -> Math.log(flying.stallSpeed(x, 0));
    }

    /** Logarithm of the path below the horizon at the approach speed. */
    public Expectation descent() {
        return x -> Math.log(flying.descentAngle(x, speed(x), 0));
    }

    /** Elevator at the approach speed, rad. */
    public Expectation elevator() {
        return x -> flying.elevator(x, speed(x), 0);
    }

    /** Logarithm of the roll rate of a stick at the approach speed. */
    public Expectation roll(String stick) {
        return x -> Math.log(flying.rollRate(x, stick, speed(x)));
    }

    /** Approach speed, m/s. */
    public double speed(double[] state) {
        return approach * flying.stallSpeed(state, 0);
    }

    /** Logarithm of the gust that takes the angle left: speed times that angle, which goes with the largest lift. */
    public double gust(double[] state) {
        return Math.log(flying.stallSpeed(state, 0)) + flying.lift(state);
    }

    /** Logarithm of the best ratio of lift to drag. */
    public Expectation bestGlide() {
        double speed = flying.predicted().approachSpeed();
        return x -> -flying.drag(x, speed);
    }

    /** Logarithm of the speed straight down, at which drag carries the weight. */
    public Expectation noseDown(double before) {
        return x -> Math.log(before) + (flying.weight(x) - flying.drag(x, before)) / 2;
    }
}
