package throwline.liftingline;

import java.util.function.DoubleUnaryOperator;
import throwline.section.Basis;
import throwline.section.SectionCurve;

/** A section with a closed-form, never falling lift law and no drag: what theory cases are stated for. */
public record LawCurve(DoubleUnaryOperator law, DoubleUnaryOperator slope, double zeroLiftAngle, double moment)
        implements SectionCurve {

    /** Lift slope 2 pi, zero-lift angle shifted by a surface (rad, the shift of incidence it is worth). */
    public static LawCurve linear(double shift) {
        return linear(shift, 0);
    }

    public static LawCurve linear(double shift, double moment) {
        double a = 2 * Math.PI;
        return new LawCurve(x -> a * (x + shift), x -> a, -shift, moment);
    }

    public static LawCurve tanh(double max) {
        double a = 2 * Math.PI;
        return new LawCurve(
                x -> max * Math.tanh(a * x / max), x -> a * (1 - Math.pow(Math.tanh(a * x / max), 2)), 0, 0);
    }

    @Override
    public double lift(double alpha) {
        return law.applyAsDouble(alpha);
    }

    @Override
    public double drag(double alpha) {
        return 0;
    }

    @Override
    public double moment(double alpha) {
        return moment;
    }

    @Override
    public double hinge(double alpha) {
        return 0;
    }

    @Override
    public double risingLift(double alpha) {
        return lift(alpha);
    }

    @Override
    public double risingLiftSlope(double alpha) {
        return slope.applyAsDouble(alpha);
    }

    @Override
    public double stallAngle() {
        return Math.PI;
    }

    @Override
    public double negativeStallAngle() {
        return -Math.PI;
    }

    @Override
    public double maxLift() {
        return Double.MAX_VALUE;
    }

    @Override
    public double minLift() {
        return -Double.MAX_VALUE;
    }

    @Override
    public double attachedSlope() {
        return 2 * Math.PI;
    }

    @Override
    public Basis basis(double alpha) {
        return Basis.METHOD;
    }
}
