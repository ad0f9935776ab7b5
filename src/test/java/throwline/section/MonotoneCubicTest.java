package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.interpolation.HermiteInterpolator;
import org.junit.jupiter.api.Test;

/** What a monotone cubic must do: keep rises and falls, be straight on straight lines, and be the Hermite cubic between points. */
class MonotoneCubicTest {

    private static final double[] X = {0, 1, 1.5, 3, 4, 6};
    private static final double[] Y = {0, 2, 2.2, 2.2, 1, -3};

    @Test
    void keepsRisesAndFalls() {
        MonotoneCubic curve = MonotoneCubic.through(X, Y);
        for (int i = 0; i < X.length; i++) {
            assertThat(curve.value(X[i])).isCloseTo(Y[i], within(1e-12));
        }
        for (int i = 1; i < X.length; i++) {
            double before = Y[i - 1];
            for (int k = 1; k <= 50; k++) {
                double here = curve.value(X[i - 1] + (X[i] - X[i - 1]) * k / 50);
                assertThat((here - before) * Math.signum(Y[i] - Y[i - 1])).isGreaterThan(-1e-12);
                before = here;
            }
        }
        assertThat(curve.value(2)).isCloseTo(2.2, within(1e-12));
        assertThat(curve.value(-1)).isEqualTo(0);
        assertThat(curve.value(9)).isEqualTo(-3);
    }

    @Test
    void straightLines() {
        double[] line = new double[X.length];
        for (int i = 0; i < X.length; i++) {
            line[i] = 3 - 0.7 * X[i];
        }
        MonotoneCubic curve = MonotoneCubic.through(X, line);
        for (double x = 0; x < 6; x += 0.17) {
            assertThat(curve.value(x)).isCloseTo(3 - 0.7 * x, within(1e-12));
        }
        assertThat(MonotoneCubic.slopes(X, line)).containsOnly(new double[] {-0.7}, within(1e-12));
    }

    /** Equal steps: the harmonic mean {@code 2 a b / (a + b)}; unequal ones lean to the chord of the shorter step; none at an extreme. */
    @Test
    void harmonicMean() {
        assertThat(MonotoneCubic.harmonic(1, 3, 0.5, 0.5)).isCloseTo(1.5, within(1e-12));
        assertThat(MonotoneCubic.harmonic(-1, -3, 2, 2)).isCloseTo(-1.5, within(1e-12));
        // Weights 2 h2 + h1 = 5 and h2 + 2 h1 = 4 by hand for steps of 1 and 2.
        assertThat(MonotoneCubic.harmonic(1, 3, 1, 2)).isCloseTo(9.0 / (5.0 / 1 + 4.0 / 3), within(1e-12));
        assertThat(MonotoneCubic.harmonic(1, -3, 1, 2)).isZero();
        assertThat(MonotoneCubic.harmonic(0, 3, 1, 2)).isZero();
    }

    /** Against the Hermite interpolation of Commons Math with the same values and slopes at both ends. */
    @Test
    void hermiteCubic() {
        HermiteInterpolator hermite = new HermiteInterpolator();
        hermite.addSamplePoint(0, new double[] {2}, new double[] {0.5});
        hermite.addSamplePoint(1.7, new double[] {-1}, new double[] {-3});
        for (double s = 0; s <= 1.7; s += 0.1) {
            assertThat(MonotoneCubic.value(s, 1.7, 2, -1, 0.5, -3)).isCloseTo(hermite.value(s)[0], within(1e-12));
        }
    }

    /** A column may be filled in parts. */
    @Test
    void partOfASlope() {
        double[] slope = {9, 9, 9, 9, 9, 9};
        MonotoneCubic.fillSlopes(X, Y, slope, 1, 3);
        assertThat(slope[0]).isEqualTo(9);
        assertThat(slope[1]).isCloseTo(0.4, within(1e-12));
        assertThat(slope[2]).isZero();
        assertThat(slope[3]).isZero();
        assertThat(slope[4]).isEqualTo(9);
        assertThat(MonotoneCubic.slopes(new double[] {1}, new double[] {4})).containsExactly(0);
    }
}
