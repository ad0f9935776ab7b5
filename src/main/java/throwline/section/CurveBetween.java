package throwline.section;

import java.util.OptionalDouble;
import throwline.section.CurveNodes.Coefficient;

/**
 * A section curve between two others of one section, landmark with landmark, read without being made: values, angles and
 * slopes of the nodes beside an angle are taken between the two at every reading. Safe for several threads.
 */
final class CurveBetween implements SectionCurve {

    private final TabulatedCurve lower;
    private final TabulatedCurve upper;
    private final double share;
    private final AngleGrid grid;

    /**
     * @param lower the curve at share 0
     * @param upper the curve at share 1
     * @param share between 0 and 1
     */
    CurveBetween(TabulatedCurve lower, TabulatedCurve upper, double share) {
        this.lower = lower;
        this.upper = upper;
        this.share = share;
        grid = lower.grid().blend(upper.grid(), share);
    }

    @Override
    public double lift(double alpha) {
        return value(Coefficient.LIFT, alpha);
    }

    @Override
    public double drag(double alpha) {
        return value(Coefficient.DRAG, alpha);
    }

    @Override
    public double risingLift(double alpha) {
        HullCurve below = lower.risingNodes();
        HullCurve above = upper.risingNodes();
        double place = grid.place(alpha);
        int i = AngleGrid.interval(place);
        return grid.cubic(
                place,
                between(below.value(i), above.value(i)),
                between(below.value(i + 1), above.value(i + 1)),
                between(below.slope(i), above.slope(i)),
                between(below.slope(i + 1), above.slope(i + 1)));
    }

    @Override
    public double risingLiftSlope(double alpha) {
        HullCurve below = lower.risingNodes();
        HullCurve above = upper.risingNodes();
        double place = grid.place(alpha);
        int i = AngleGrid.interval(place);
        double slope = grid.cubicSlope(
                place,
                between(below.value(i), above.value(i)),
                between(below.value(i + 1), above.value(i + 1)),
                between(below.slope(i), above.slope(i)),
                between(below.slope(i + 1), above.slope(i + 1)));
        return Math.max(0, slope);
    }

    @Override
    public void risingPiece(double alpha, HullPiece piece) {
        HullCurve below = lower.risingNodes();
        HullCurve above = upper.risingNodes();
        double place = grid.place(alpha);
        int i = AngleGrid.interval(place);
        grid.piece(
                i,
                between(below.value(i), above.value(i)),
                between(below.value(i + 1), above.value(i + 1)),
                between(below.slope(i), above.slope(i)),
                between(below.slope(i + 1), above.slope(i + 1)),
                piece);
    }

    @Override
    public double moment(double alpha) {
        double place = grid.place(alpha);
        return between(
                lower.nodes().straight(Coefficient.MOMENT, place), upper.nodes().straight(Coefficient.MOMENT, place));
    }

    @Override
    public double hinge(double alpha) {
        return between(lower.hinge(alpha), upper.hinge(alpha));
    }

    @Override
    public double zeroLiftAngle() {
        return between(lower.zeroLiftAngle(), upper.zeroLiftAngle());
    }

    @Override
    public double stallAngle() {
        return between(lower.stallAngle(), upper.stallAngle());
    }

    @Override
    public double negativeStallAngle() {
        return between(lower.negativeStallAngle(), upper.negativeStallAngle());
    }

    @Override
    public double maxLift() {
        return between(lower.maxLift(), upper.maxLift());
    }

    @Override
    public double minLift() {
        return between(lower.minLift(), upper.minLift());
    }

    @Override
    public double attachedSlope() {
        return between(lower.attachedSlope(), upper.attachedSlope());
    }

    @Override
    public OptionalDouble recoveryAngle() {
        OptionalDouble below = lower.recoveryAngle();
        OptionalDouble above = upper.recoveryAngle();
        return below.isPresent() && above.isPresent()
                ? OptionalDouble.of(between(below.getAsDouble(), above.getAsDouble()))
                : OptionalDouble.empty();
    }

    @Override
    public Basis basis(double alpha) {
        return lower.basis(alpha).weaker(upper.basis(alpha)).weaker(Basis.BETWEEN);
    }

    private double value(Coefficient wanted, double alpha) {
        CurveNodes below = lower.nodes();
        CurveNodes above = upper.nodes();
        double place = grid.place(alpha);
        int i = AngleGrid.interval(place);
        return grid.cubic(
                place,
                between(below.value(wanted, i), above.value(wanted, i)),
                between(below.value(wanted, i + 1), above.value(wanted, i + 1)),
                between(below.slope(wanted, i), above.slope(wanted, i)),
                between(below.slope(wanted, i + 1), above.slope(wanted, i + 1)));
    }

    private double between(double atLower, double atUpper) {
        return atLower + share * (atUpper - atLower);
    }
}
