package throwline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parabolas in closed form: y = c - b (x - a) (x - a). */
class ParabolaTopTest {

    @ParameterizedTest
    @CsvSource({"1.3, 2, 0.5", "-4, 1e-3, 7", "0.8, 30, -2"})
    void the_top_comes_back(double a, double b, double c) {
        double[] x = {a - 0.7, a + 0.1, a + 1.9};
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = c - b * (x[i] - a) * (x[i] - a);
        }
        ParabolaTop top = ParabolaTop.through(x, y).orElseThrow();
        assertThat(top.x()).isCloseTo(a, within(1e-9));
        assertThat(top.y()).isCloseTo(c, within(1e-9));
    }

    /** A straight line, a valley and a point that is none have no top. */
    @Test
    void no_top() {
        double[] x = {0, 1, 3};
        assertThat(ParabolaTop.through(x, new double[] {0, 1, 3})).isEmpty();
        assertThat(ParabolaTop.through(x, new double[] {0, 1, 9})).isEmpty();
        assertThat(ParabolaTop.through(x, new double[] {0, Double.NaN, 0})).isEmpty();
    }
}
