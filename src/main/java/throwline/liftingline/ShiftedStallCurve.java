package throwline.liftingline;

import throwline.section.Basis;
import throwline.section.HullPiece;
import throwline.section.SectionCurve;
import throwline.section.TurnedCurve;

/**
 * A section whose stall is raised or lowered by its neighbours: the whole curve moved along its own attached slope, so
 * that the attached lift stays and the maximum, with its angle, moves. Drag is read at the angle that is as far between
 * zero lift and the stall as on the curve it came from.
 */
public final class ShiftedStallCurve extends TurnedCurve {

    private final double rise;
    private final double zero;
    private final double toStall;
    private final double toLowerStall;

    /**
     * @param curve the section alone
     * @param rise change of its maximum lift coefficient
     */
    public ShiftedStallCurve(SectionCurve curve, double rise) {
        super(curve, rise / curve.attachedSlope());
        this.rise = rise;
        zero = curve.zeroLiftAngle();
        toStall = curve.stallAngle() - zero;
        toLowerStall = curve.negativeStallAngle() - zero;
    }

    @Override
    public double lift(double alpha) {
        return super.lift(alpha) + rise;
    }

    @Override
    public double risingLift(double alpha) {
        return super.risingLift(alpha) + rise;
    }

    @Override
    public void risingPiece(double alpha, HullPiece piece) {
        super.risingPiece(alpha, piece);
        piece.move(0, rise);
    }

    @Override
    public double drag(double alpha) {
        return curve.drag(alike(alpha));
    }

    @Override
    public double moment(double alpha) {
        return curve.moment(alike(alpha));
    }

    @Override
    public double hinge(double alpha) {
        return curve.hinge(alike(alpha));
    }

    /** The angle on the original curve that is as near to its stall. */
    private double alike(double alpha) {
        double share = Math.min(1, Math.abs((alpha - zero) / (alpha >= zero ? toStall : toLowerStall)));
        return alpha - turn * share;
    }

    @Override
    public double zeroLiftAngle() {
        return zero;
    }

    @Override
    public double maxLift() {
        return curve.maxLift() + rise;
    }

    @Override
    public double minLift() {
        return curve.minLift() + rise;
    }

    @Override
    public Basis basis(double alpha) {
        return curve.basis(alike(alpha)).weaker(Basis.METHOD);
    }
}
