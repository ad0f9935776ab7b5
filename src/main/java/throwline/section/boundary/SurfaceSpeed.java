package throwline.section.boundary;

import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import throwline.numerics.Interpolation;

/** Speed along a surface from the stagnation point, smooth between stations (H. Akima, 1970). Immutable. */
final class SurfaceSpeed {

    private static final double LEAST = 1e-6;

    private final double end;
    private final PolynomialSplineFunction speed;
    private final PolynomialSplineFunction slope;

    /**
     * A speed.
     *
     * @param s rising from 0, five or more
     * @param u speed over that of the air, 0 at the stagnation point
     */
    SurfaceSpeed(double[] s, double[] u) {
        end = s[s.length - 1];
        speed = new AkimaSplineInterpolator().interpolate(s, u);
        slope = speed.polynomialSplineDerivative();
    }

    double end() {
        return end;
    }

    double at(double s) {
        return Math.max(LEAST, speed.value(Interpolation.clamp(s, 0, end)));
    }

    double slope(double s) {
        return slope.value(Interpolation.clamp(s, 0, end));
    }
}
