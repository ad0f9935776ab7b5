package throwline.study;

import java.util.function.DoubleUnaryOperator;
import throwline.section.ForwardingCurve;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/** Measured sections whose hinge moment coefficient is given by the deflection alone, as in a worked example. */
final class HeldHinge extends ForwardingCurve {

    private final double hinge;

    private HeldHinge(SectionCurve curve, double hinge) {
        super(curve);
        this.hinge = hinge;
    }

    /** Sections with this hinge moment coefficient over the deflection, rad. */
    static SectionAerodynamics sections(DoubleUnaryOperator hinge) {
        MeasuredSections measured = new MeasuredSections();
        return (place, surface, reynolds) ->
                new HeldHinge(measured.curve(place, surface, reynolds), hinge.applyAsDouble(surface.deflection()));
    }

    @Override
    public double hinge(double alpha) {
        return hinge;
    }
}
