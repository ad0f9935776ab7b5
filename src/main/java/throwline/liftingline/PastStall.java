package throwline.liftingline;

import throwline.section.SectionCurve;

/**
 * Loss of lift of the strips past their stall. How far a strip is past its stall angle is averaged over one local chord, as
 * in {@link StallReading}, because the upwash beside the end of a surface grows without limit as strips get narrower; within
 * a strip it goes straight towards the neighbours, so that lift does not fall in steps as strip after strip stalls. The fall
 * is faded in over one degree past the stall angle.
 */
final class PastStall {

    private static final double FALL_SPREAD = Math.toRadians(1);

    private final LiftingLineSolution solution;
    private final SpanGrid grid;
    private final double[] upper;
    private final double[] lower;

    /** Of a solution. */
    PastStall(LiftingLineSolution solution) {
        this.solution = solution;
        grid = solution.grid();
        int n = grid.size();
        double[] past = new double[n];
        double[] below = new double[n];
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            SectionCurve curve = solution.problem().curves().get(i);
            past[i] = solution.sectionAngle(i) - curve.stallAngle();
            below[i] = curve.negativeStallAngle() - solution.sectionAngle(i);
            most = Math.max(most, past[i]);
            least = Math.max(least, below[i]);
        }
        upper = most > 0 ? averaged(past) : new double[0];
        lower = least > 0 ? averaged(below) : new double[0];
    }

    private double[] averaged(double[] past) {
        double[] averages = new double[past.length];
        for (int i = 0; i < past.length; i++) {
            averages[i] = StallReading.average(grid, past, i);
        }
        return averages;
    }

    /** How much less than the hull a strip carries; not positive above. */
    double fall(int strip) {
        if (upper.length == 0 && lower.length == 0) {
            return 0;
        }
        SectionCurve curve = solution.problem().curves().get(strip);
        double sum = 0;
        if (upper.length > 0) {
            sum += fall(curve, strip, upper, curve.stallAngle(), 1);
        }
        if (lower.length > 0) {
            sum += fall(curve, strip, lower, curve.negativeStallAngle(), -1);
        }
        return sum;
    }

    private double fall(SectionCurve curve, int strip, double[] past, double stall, int side) {
        double here = past[strip];
        double left = edge(past, strip, strip - 1);
        double right = edge(past, strip, strip + 1);
        if (here <= 0 && left <= 0 && right <= 0) {
            return 0;
        }
        double leftWidth = grid.control(strip) - grid.edge(strip);
        double rightWidth = grid.edge(strip + 1) - grid.control(strip);
        double inLeft = fall(curve, (here + left) / 2, stall, side);
        double inRight = fall(curve, (here + right) / 2, stall, side);
        return (leftWidth * inLeft + rightWidth * inRight) / grid.width(strip);
    }

    private double edge(double[] past, int strip, int next) {
        if (next < 0 || next >= past.length) {
            return past[strip];
        }
        double edge = grid.edge(Math.max(strip, next));
        double share = (edge - grid.control(strip)) / (grid.control(next) - grid.control(strip));
        return past[strip] + share * (past[next] - past[strip]);
    }

    private static double fall(SectionCurve curve, double past, double stall, int side) {
        if (past <= 0) {
            return 0;
        }
        double angle = stall + side * past;
        return Math.min(1, past / FALL_SPREAD) * (curve.lift(angle) - curve.risingLift(angle));
    }
}
