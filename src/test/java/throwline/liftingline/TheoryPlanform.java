package throwline.liftingline;

import java.util.function.DoubleUnaryOperator;

/**
 * Planforms of theory: an ellipse or a straight taper of given aspect ratio, span 2 m, straight quarter-chord line.
 *
 * @param twistLaw twist over distance from the middle, rad
 */
record TheoryPlanform(boolean elliptic, double aspect, double taper, DoubleUnaryOperator twistLaw) implements Planform {

    static TheoryPlanform ellipse(double aspect) {
        return new TheoryPlanform(true, aspect, 0, y -> 0);
    }

    static TheoryPlanform tapered(double aspect, double taper) {
        return new TheoryPlanform(false, aspect, taper, y -> 0);
    }

    /** Twist linear over the span to this angle at the tip, rad. */
    TheoryPlanform twisted(double tip) {
        return twisted(y -> tip * y);
    }

    TheoryPlanform twisted(DoubleUnaryOperator law) {
        return new TheoryPlanform(elliptic, aspect, taper, law);
    }

    @Override
    public double semiSpan() {
        return 1;
    }

    @Override
    public double[] breaks() {
        return new double[0];
    }

    @Override
    public double chord(double y) {
        if (elliptic) {
            return 8 / (Math.PI * aspect) * Math.sqrt(1 - y * y);
        }
        return 4 / (aspect * (1 + taper)) * (1 - (1 - taper) * y);
    }

    @Override
    public double twist(double y) {
        return twistLaw.applyAsDouble(y);
    }

    @Override
    public double quarterChord(double y) {
        return 0;
    }

    @Override
    public double sweep(double y) {
        return 0;
    }

    @Override
    public double dihedral() {
        return 0;
    }
}
