package throwline.liftingline;

import throwline.section.Basis;
import throwline.section.SectionCurve;

/**
 * A section that stalls both ways: straight, then a parabola to each peak, then a fall that levels off. Closed form, so
 * that tests of the solver need no measured polars; invented numbers.
 *
 * @param slope of the straight part, per radian
 * @param zeroLiftAngle rad
 * @param maxLift lift at the upper peak
 * @param minLift lift at the lower peak
 * @param rounding how much of the lift is left to each peak where the straight part ends, positive
 * @param fallen share of the peak's lift that is left far past it
 */
record PeakCurve(double slope, double zeroLiftAngle, double maxLift, double minLift, double rounding, double fallen)
        implements SectionCurve {

    /** Angle over which the fall happens, rad. */
    private static final double FALL = 0.1;

    @Override
    public double lift(double alpha) {
        double rising = risingLift(alpha);
        double past = alpha > stallAngle() ? alpha - stallAngle() : Math.min(0, alpha - negativeStallAngle());
        double gone = 1 - Math.exp(-Math.pow(past / FALL, 2));
        return rising * (1 - (1 - fallen) * gone);
    }

    @Override
    public double risingLift(double alpha) {
        double straight = slope * (alpha - zeroLiftAngle);
        if (straight > maxLift - rounding) {
            return maxLift - left(straight - maxLift + rounding);
        }
        if (straight < minLift + rounding) {
            return minLift + left(minLift + rounding - straight);
        }
        return straight;
    }

    /** Lift still missing to the peak: a parabola that leaves the straight part without a bend. */
    private double left(double beyond) {
        double share = Math.min(1, beyond / (2 * rounding));
        return rounding * (1 - share) * (1 - share);
    }

    @Override
    public double risingLiftSlope(double alpha) {
        double straight = slope * (alpha - zeroLiftAngle);
        double beyond = Math.max(straight - maxLift + rounding, minLift + rounding - straight);
        return beyond <= 0 ? slope : slope * Math.max(0, 1 - beyond / (2 * rounding));
    }

    @Override
    public double drag(double alpha) {
        return 0.01 + 0.1 * Math.pow(Math.sin(alpha - zeroLiftAngle), 2);
    }

    @Override
    public double moment(double alpha) {
        return -0.05;
    }

    @Override
    public double hinge(double alpha) {
        return -0.1 * lift(alpha);
    }

    @Override
    public double stallAngle() {
        return zeroLiftAngle + (maxLift + rounding) / slope;
    }

    @Override
    public double negativeStallAngle() {
        return zeroLiftAngle + (minLift - rounding) / slope;
    }

    @Override
    public double attachedSlope() {
        return slope;
    }

    @Override
    public Basis basis(double alpha) {
        return Basis.METHOD;
    }
}
