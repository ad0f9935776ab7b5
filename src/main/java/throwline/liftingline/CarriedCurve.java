package throwline.liftingline;

import throwline.section.Basis;
import throwline.section.ForwardingCurve;
import throwline.section.HullPiece;
import throwline.section.SectionCurve;

/**
 * Section without a surface that carries on part of the lift of the moved one beside it: the section at rest with its zero-lift
 * angle part of the way to that of the moved one. Most lift and drag at equal lift are those at rest.
 */
final class CarriedCurve extends ForwardingCurve {

    private final SectionCurve moved;
    private final double share;
    private final double turn;

    /**
     * @param rest the section with nothing moved
     * @param moved the same section with the surface beside it moved
     * @param share of the change of the zero-lift angle that is carried on, 0 to 1
     */
    CarriedCurve(SectionCurve rest, SectionCurve moved, double share) {
        super(rest);
        this.moved = moved;
        this.share = share;
        turn = share * (moved.zeroLiftAngle() - rest.zeroLiftAngle());
    }

    @Override
    public double lift(double alpha) {
        return curve.lift(alpha - turn);
    }

    @Override
    public double risingLift(double alpha) {
        return curve.risingLift(alpha - turn);
    }

    @Override
    public double risingLiftSlope(double alpha) {
        return curve.risingLiftSlope(alpha - turn);
    }

    @Override
    public void risingPiece(double alpha, HullPiece piece) {
        curve.risingPiece(alpha - turn, piece);
        piece.move(turn, 0);
    }

    @Override
    public double drag(double alpha) {
        return curve.drag(alpha - turn);
    }

    @Override
    public double moment(double alpha) {
        return (1 - share) * curve.moment(alpha - turn) + share * moved.moment(alpha);
    }

    @Override
    public double hinge(double alpha) {
        return 0;
    }

    @Override
    public double zeroLiftAngle() {
        return curve.zeroLiftAngle() + turn;
    }

    @Override
    public double stallAngle() {
        return curve.stallAngle() + turn;
    }

    @Override
    public double negativeStallAngle() {
        return curve.negativeStallAngle() + turn;
    }

    @Override
    public Basis basis(double alpha) {
        return curve.basis(alpha - turn).weaker(Basis.METHOD);
    }
}
