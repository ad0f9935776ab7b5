package throwline.flight;

import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.numerics.Interpolation;

/**
 * Root of a monotone function of which a near-by root and slope are known from the point before: secant steps from there,
 * two or three evaluations as a rule; a bracketing solver over the whole interval where they do not settle.
 */
final class WarmStartSecant {

    private static final int MOST_SECANTS = 8;
    private static final int MOST_EVALUATIONS = 100;

    private final double tolerance;
    private double guess;
    private double slope;

    /**
     * @param tolerance of the root
     * @param guess first guess of the root
     * @param slope first guess of the slope, not zero
     */
    WarmStartSecant(double tolerance, double guess, double slope) {
        this.tolerance = tolerance;
        this.guess = guess;
        this.slope = slope;
    }

    /** Slope of the last step. */
    double slope() {
        return slope;
    }

    /**
     * Finds the root between two ends and remembers it for the next call. A root found by secants is the last point at
     * which the function was evaluated.
     *
     * @param function monotone between the ends, in the same sense as the slope
     * @param low lower end
     * @param high upper end
     * @return the root; empty where the function does not change sign between the ends
     */
    OptionalDouble solve(UnivariateFunction function, double low, double high) {
        double x = Interpolation.clamp(guess, low, high);
        double f = function.value(x);
        for (int k = 0; k < MOST_SECANTS; k++) {
            if (Math.abs(f / slope) < tolerance) {
                guess = x;
                return OptionalDouble.of(x);
            }
            double next = Interpolation.clamp(x - f / slope, low, high);
            if (next == x) {
                break;
            }
            double g = function.value(next);
            double secant = (g - f) / (next - x);
            if (!(secant * slope > 0)) {
                break;
            }
            slope = secant;
            x = next;
            f = g;
        }
        return bracketed(function, low, high);
    }

    private OptionalDouble bracketed(UnivariateFunction function, double low, double high) {
        double atLow = function.value(low);
        double atHigh = function.value(high);
        if (!(atLow * atHigh <= 0)) {
            return OptionalDouble.empty();
        }
        guess = new BracketingNthOrderBrentSolver(tolerance, 5).solve(MOST_EVALUATIONS, function, low, high);
        return OptionalDouble.of(guess);
    }
}
