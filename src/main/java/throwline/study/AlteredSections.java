package throwline.study;

import throwline.liftingline.ShiftedStallCurve;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.TurnedCurve;

/**
 * Sections of which one airfoil is another than thought.
 *
 * @param sections as thought
 * @param airfoil name of the airfoil
 * @param lift more maximum lift, share
 * @param angle zero-lift angle further up, rad
 * @param drag more drag, share
 */
record AlteredSections(SectionAerodynamics sections, String airfoil, double lift, double angle, double drag)
        implements SectionAerodynamics {

    @Override
    public SectionCurve curve(SectionPlace place, SurfaceState surface, double reynolds) {
        SectionCurve curve = sections.curve(place, surface, reynolds);
        boolean meant =
                place.inner().name().equals(airfoil) || place.outer().name().equals(airfoil);
        if (!meant) {
            return curve;
        }
        SectionCurve raised = lift == 0 ? curve : new ShiftedStallCurve(curve, lift * curve.maxLift());
        return angle == 0 && drag == 0 ? raised : new Turned(raised, angle, 1 + drag);
    }

    /** A curve at other angles and with another drag. */
    private static final class Turned extends TurnedCurve {

        private final double drag;

        Turned(SectionCurve curve, double turn, double drag) {
            super(curve, turn);
            this.drag = drag;
        }

        @Override
        public double drag(double alpha) {
            return drag * super.drag(alpha);
        }
    }
}
