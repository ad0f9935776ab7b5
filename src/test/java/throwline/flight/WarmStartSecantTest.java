package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Roots in closed form, and how often a function is asked on the way to them. */
class WarmStartSecantTest {

    private static final double TOLERANCE = 1e-6;

    /** A function that keeps the places where it was asked. */
    private static final class Asked implements UnivariateFunction {
        private final UnivariateFunction function;
        private final List<Double> places = new ArrayList<>();

        Asked(UnivariateFunction function) {
            this.function = function;
        }

        @Override
        public double value(double x) {
            places.add(x);
            return function.value(x);
        }
    }

    private static double linear(double x) {
        return 3 * (x - 1.7);
    }

    /** With the right slope a line is solved in one step, with a wrong one in two: the first secant is the line itself. */
    @Test
    void lines() {
        Asked known = new Asked(WarmStartSecantTest::linear);
        assertThat(new WarmStartSecant(TOLERANCE, 0.5, 3).solve(known, 0, 5).orElseThrow())
                .isCloseTo(1.7, within(TOLERANCE));
        assertThat(known.places).hasSize(2);
        Asked guessed = new Asked(WarmStartSecantTest::linear);
        WarmStartSecant root = new WarmStartSecant(TOLERANCE, 0.5, 9);
        assertThat(root.solve(guessed, 0, 5).orElseThrow()).isCloseTo(1.7, within(TOLERANCE));
        assertThat(guessed.places).hasSize(3);
        assertThat(guessed.places.get(1)).isCloseTo(0.5 + 3.6 / 9, within(1e-12));
        assertThat(root.slope()).isCloseTo(3, within(1e-9));
    }

    /** The root of {@code exp(x) - y} is the logarithm; each is near to the one before and found in a few steps from there. */
    @Test
    void logarithms() {
        WarmStartSecant root = new WarmStartSecant(TOLERANCE, 0, 1);
        for (double y = 1; y < 2; y += 0.05) {
            double wanted = y;
            Asked asked = new Asked(x -> Math.exp(x) - wanted);
            assertThat(root.solve(asked, -1, 3).orElseThrow()).isCloseTo(Math.log(y), within(2 * TOLERANCE));
            assertThat(asked.places).hasSizeLessThanOrEqualTo(5);
            assertThat(asked.places.get(asked.places.size() - 1)).isCloseTo(Math.log(y), within(2 * TOLERANCE));
        }
    }

    /** Where the slope has the wrong sign, or steps do not settle, the ends decide. */
    @Test
    void bracketed() {
        UnivariateFunction falling = x -> Math.exp(-x) - 0.5;
        assertThat(new WarmStartSecant(TOLERANCE, 2.5, 1).solve(falling, 0, 3).orElseThrow())
                .isCloseTo(Math.log(2), within(2 * TOLERANCE));
        WarmStartSecant steep = new WarmStartSecant(TOLERANCE, 0.9, 1);
        assertThat(steep.solve(x -> Math.tanh(60 * (x - 0.3)), -1, 1).orElseThrow())
                .isCloseTo(0.3, within(2 * TOLERANCE));
        Asked next = new Asked(x -> x - 0.3);
        steep.solve(next, -1, 1);
        assertThat(next.places.get(0)).isCloseTo(0.3, within(2 * TOLERANCE));
    }

    /** A root outside the ends is none; at an end it is one. */
    @ParameterizedTest
    @ValueSource(doubles = {-1, 6})
    void outside(double root) {
        assertThat(new WarmStartSecant(TOLERANCE, 2, 1).solve(x -> x - root, 0, 5))
                .isEmpty();
        assertThat(new WarmStartSecant(TOLERANCE, 2, -1)
                        .solve(x -> x - root, Math.min(root, 0), Math.max(root, 5))
                        .orElseThrow())
                .isCloseTo(root, within(TOLERANCE));
    }
}
