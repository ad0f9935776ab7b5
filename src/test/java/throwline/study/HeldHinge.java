package throwline.study;

import java.util.function.DoubleUnaryOperator;
import throwline.section.Basis;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/** Measured sections whose hinge moment coefficient is given by the deflection alone, as in a worked example. */
final class HeldHinge implements SectionCurve {

    private final SectionCurve curve;
    private final double hinge;

    private HeldHinge(SectionCurve curve, double hinge) {
        this.curve = curve;
        this.hinge = hinge;
    }

    /** Sections with this hinge moment coefficient over the deflection, rad. */
    static SectionAerodynamics sections(DoubleUnaryOperator hinge) {
        MeasuredSections measured = new MeasuredSections();
        return (place, surface, reynolds) ->
                new HeldHinge(measured.curve(place, surface, reynolds), hinge.applyAsDouble(surface.deflection()));
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
        return hinge;
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
    public Basis basis(double alpha) {
        return curve.basis(alpha);
    }
}
