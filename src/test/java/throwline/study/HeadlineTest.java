package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.study.Headline.Basis;
import throwline.study.Headline.Known;

/** Differences of two numbers whose errors are partly the same. */
class HeadlineTest {

    private static final int DRAWS = 200_000;

    /** Nine of ten normal errors lie inside 1.645 standard deviations. */
    private static final double NINE_OF_TEN = 1.6449;

    /**
     * Draws errors of two numbers with a common part, and looks how many of their differences lie inside the smallest
     * difference that can be told apart: nine of ten, as for the bands themselves.
     */
    @ParameterizedTest
    @CsvSource({"1, 1, 0", "1, 1, 0.8", "1, 1, 0.95", "1, 2, 0.8", "0.3, 2, 0.5", "1, 3, 1"})
    void theBandOfADifferenceHoldsNineOfTen(double first, double second, double shared) {
        double band = smallestDifferenceToldApart(first, second, shared);
        RandomGenerator random = new Well19937c(7);
        int inside = 0;
        for (int i = 0; i < DRAWS; i++) {
            double common = random.nextGaussian();
            double a = error(first, shared, common, random.nextGaussian());
            double b = error(second, shared, common, random.nextGaussian());
            inside += Math.abs(a - b) <= band ? 1 : 0;
        }
        assertThat((double) inside / DRAWS).isCloseTo(0.9, within(0.003));
    }

    private static double error(double half, double shared, double common, double own) {
        return half / NINE_OF_TEN * (shared * common + Math.sqrt(1 - shared * shared) * own);
    }

    private static double smallestDifferenceToldApart(double first, double second, double shared) {
        Known a = new Known(0, -first, first, Basis.ASSUMED, shared);
        double low = 0;
        double high = 10;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (a.tooCloseTo(new Known(middle, middle - second, middle + second, Basis.ASSUMED, shared))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
