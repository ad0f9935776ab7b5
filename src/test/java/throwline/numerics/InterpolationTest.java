package throwline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

/** Straight lines against Commons Math's. */
class InterpolationTest {

    private static final double[] X = {-2, -0.5, 0, 1, 4};
    private static final double[] Y = {3, 1, -1, 5, 5};

    @Test
    void sameAsTheLibraryInside() {
        PolynomialSplineFunction library = new LinearInterpolator().interpolate(X, Y);
        Random random = new Random(7);
        for (int k = 0; k < 200; k++) {
            double at = -2 + 6 * random.nextDouble();
            assertThat(Interpolation.at(X, Y, at)).isCloseTo(library.value(at), within(1e-12));
        }
        for (int i = 0; i < X.length; i++) {
            assertThat(Interpolation.at(X, Y, X[i])).isEqualTo(Y[i]);
        }
    }

    @Test
    void levelBeyondTheEnds() {
        assertThat(Interpolation.at(X, Y, -9)).isEqualTo(3);
        assertThat(Interpolation.at(X, Y, 9)).isEqualTo(5);
        assertThat(Interpolation.interval(X, -9)).isZero();
        assertThat(Interpolation.interval(X, 9)).isEqualTo(3);
    }

    @Test
    void nearestInside() {
        assertThat(Interpolation.clamp(-3, -1, 2)).isEqualTo(-1);
        assertThat(Interpolation.clamp(3, -1, 2)).isEqualTo(2);
        assertThat(Interpolation.clamp(0.5, -1, 2)).isEqualTo(0.5);
    }
}
