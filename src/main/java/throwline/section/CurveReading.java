package throwline.section;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Readings of a section curve by its lift, on the branch that rises between the stalls. */
public final class CurveReading {

    /** Far below what an angle is worth, rad. */
    private static final double TOLERANCE = 1e-12;

    private static final int MOST_READINGS = 200;

    private CurveReading() {}

    /** Angle at which the rising branch has this lift, rad; that of its end where it does not go so far. */
    public static double angleOf(SectionCurve curve, double lift) {
        double low = curve.negativeStallAngle();
        double high = curve.stallAngle();
        if (curve.risingLift(low) >= lift) {
            return low;
        }
        if (curve.risingLift(high) <= lift) {
            return high;
        }
        return new BrentSolver(TOLERANCE).solve(MOST_READINGS, alpha -> curve.risingLift(alpha) - lift, low, high);
    }

    /** Drag at a lift. */
    public static double dragAt(SectionCurve curve, double lift) {
        return curve.drag(angleOf(curve, lift));
    }
}
