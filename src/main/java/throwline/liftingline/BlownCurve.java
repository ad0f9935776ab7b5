package throwline.liftingline;

import throwline.section.Basis;
import throwline.section.ForwardingCurve;
import throwline.section.HullPiece;
import throwline.section.SectionCurve;

/**
 * A section in the jet of a propeller: its lift, on the speed of the jet, times the share that a jet of finite width
 * leaves; past the stall a share of the lift that would fall is held (methods manual 20.8 and 20.10). Angles, drag and
 * moment are those of the section.
 */
public final class BlownCurve extends ForwardingCurve {

    private final double share;
    private final double held;

    /**
     * @param curve the section in even air
     * @param share of its lift, above 0 and at most 1: with more the lifting line's argument for one answer would need a
     *     new look
     * @param held share of the fall past the stall that does not happen, 0 to 1
     */
    public BlownCurve(SectionCurve curve, double share, double held) {
        super(curve);
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share of lift " + share);
        }
        this.share = share;
        this.held = held;
    }

    @Override
    public double lift(double alpha) {
        double rising = curve.risingLift(alpha);
        return share * (rising + (1 - held) * (curve.lift(alpha) - rising));
    }

    @Override
    public double risingLift(double alpha) {
        return share * curve.risingLift(alpha);
    }

    @Override
    public double risingLiftSlope(double alpha) {
        return share * curve.risingLiftSlope(alpha);
    }

    @Override
    public void risingPiece(double alpha, HullPiece piece) {
        curve.risingPiece(alpha, piece);
        piece.scale(share);
    }

    @Override
    public double maxLift() {
        return share * curve.maxLift();
    }

    @Override
    public double minLift() {
        return share * curve.minLift();
    }

    @Override
    public double attachedSlope() {
        return share * curve.attachedSlope();
    }

    @Override
    public Basis basis(double alpha) {
        return curve.basis(alpha).weaker(Basis.METHOD);
    }
}
