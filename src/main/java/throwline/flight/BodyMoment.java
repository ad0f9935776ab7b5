package throwline.flight;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import throwline.model.Body;
import throwline.numerics.Interpolation;

/**
 * The nose-up moment of a slender body at incidence: Munk's twice volume times dynamic pressure times the difference of
 * apparent-mass factors times angle (NACA Report 184, from memory; methods manual 7.4).
 */
final class BodyMoment {

    /** Volume over length times width squared of a body that narrows to both ends (PRACTICE); its width is what counts. */
    private static final double FULLNESS = 0.5;

    /** Munk's difference of apparent-mass factors over fineness ratio (MEMORY, NACA TR 184). */
    private static final PolynomialSplineFunction FACTOR = new LinearInterpolator()
            .interpolate(new double[] {1, 2, 4, 6, 8, 10, 14, 100}, new double[] {0, .49, .78, .87, .91, .94, .965, 1});

    private BodyMoment() {}

    /** Moment over dynamic pressure and angle, m^3/rad, nose up positive. */
    static double slope(Body body) {
        double fineness = Interpolation.clamp(body.length() / body.width(), 1, 100);
        double volume = FULLNESS * body.length() * body.width() * body.width();
        return 2 * volume * FACTOR.value(fineness);
    }
}
