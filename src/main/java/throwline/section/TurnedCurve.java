package throwline.section;

import java.util.OptionalDouble;

/** Curve that answers at every angle as another does at an angle less by a constant. */
public abstract class TurnedCurve extends ForwardingCurve {

    /** Angle by which all is later, rad. */
    protected final double turn;

    /**
     * @param curve the other
     * @param turn angle by which all is later, rad
     */
    protected TurnedCurve(SectionCurve curve, double turn) {
        super(curve);
        this.turn = turn;
    }

    @Override
    public double lift(double alpha) {
        return curve.lift(alpha - turn);
    }

    @Override
    public double drag(double alpha) {
        return curve.drag(alpha - turn);
    }

    @Override
    public double moment(double alpha) {
        return curve.moment(alpha - turn);
    }

    @Override
    public double hinge(double alpha) {
        return curve.hinge(alpha - turn);
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
    public OptionalDouble recoveryAngle() {
        OptionalDouble angle = curve.recoveryAngle();
        return angle.isPresent() ? OptionalDouble.of(angle.getAsDouble() + turn) : angle;
    }

    @Override
    public Basis basis(double alpha) {
        return curve.basis(alpha - turn);
    }
}
