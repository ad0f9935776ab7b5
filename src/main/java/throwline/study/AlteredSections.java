package throwline.study;

import java.util.OptionalDouble;
import throwline.liftingline.ShiftedStallCurve;
import throwline.section.Basis;
import throwline.section.ForwardingCurve;
import throwline.section.HullPiece;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

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
    private static final class Turned extends ForwardingCurve {

        private final double turn;
        private final double drag;

        Turned(SectionCurve curve, double turn, double drag) {
            super(curve);
            this.turn = turn;
            this.drag = drag;
        }

        @Override
        public double lift(double alpha) {
            return curve.lift(alpha - turn);
        }

        @Override
        public double drag(double alpha) {
            return drag * curve.drag(alpha - turn);
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
}
