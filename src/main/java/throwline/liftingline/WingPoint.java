package throwline.liftingline;

/**
 * The wing alone at one angle of attack.
 *
 * @param alpha as the walk counts it, rad
 * @param lift lift coefficient
 * @param solution the lifting line
 * @param reading how near to the stall it is
 */
public record WingPoint(double alpha, double lift, LiftingLineSolution solution, StallReading reading)
        implements AngleWalk.Point {

    /** Reading of a solution at an angle. */
    public static WingPoint of(double alpha, LiftingLineSolution solution) {
        return new WingPoint(alpha, StripForces.of(solution).liftCoefficient(), solution, StallReading.of(solution));
    }

    /** Smallest angle left before the stall, rad. */
    public double margin() {
        return reading.margin();
    }

    @Override
    public boolean converged() {
        return solution.status().converged();
    }
}
