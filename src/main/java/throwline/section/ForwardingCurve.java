package throwline.section;

import java.util.OptionalDouble;

/** Curve that answers as another does, but for what is overridden. */
public abstract class ForwardingCurve implements SectionCurve {

    /** The other. */
    protected final SectionCurve curve;

    /**
     * @param curve the other
     */
    protected ForwardingCurve(SectionCurve curve) {
        this.curve = curve;
    }

    @Override
    public double lift(double alpha) {
        return curve.lift(alpha);
    }

    @Override
    public double drag(double alpha) {
        return curve.drag(alpha);
    }

    @Override
    public double moment(double alpha) {
        return curve.moment(alpha);
    }

    @Override
    public double hinge(double alpha) {
        return curve.hinge(alpha);
    }

    @Override
    public double risingLift(double alpha) {
        return curve.risingLift(alpha);
    }

    @Override
    public double risingLiftSlope(double alpha) {
        return curve.risingLiftSlope(alpha);
    }

    @Override
    public double zeroLiftAngle() {
        return curve.zeroLiftAngle();
    }

    @Override
    public double stallAngle() {
        return curve.stallAngle();
    }

    @Override
    public double negativeStallAngle() {
        return curve.negativeStallAngle();
    }

    @Override
    public double maxLift() {
        return curve.maxLift();
    }

    @Override
    public double minLift() {
        return curve.minLift();
    }

    @Override
    public double attachedSlope() {
        return curve.attachedSlope();
    }

    @Override
    public OptionalDouble recoveryAngle() {
        return curve.recoveryAngle();
    }

    @Override
    public Basis basis(double alpha) {
        return curve.basis(alpha);
    }
}
