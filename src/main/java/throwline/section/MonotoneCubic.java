package throwline.section;

import java.util.Arrays;

/**
 * Piecewise cubic through points that keeps their rises and falls: no overshoot, continuous slope. Slopes are the
 * weighted harmonic mean of the neighbouring chords and zero at a local extreme (F. N. Fritsch, J. Butland, SIAM J. Sci.
 * Stat. Comput. 5, 1984, eq. 5 generalised to unequal steps). Held constant outside. Immutable.
 */
final class MonotoneCubic {

    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCubic(double[] x, double[] y, double[] slope) {
        this.x = x;
        this.y = y;
        this.slope = slope;
    }

    /**
     * The curve through points.
     *
     * @param x strictly rising
     * @param y as many
     */
    static MonotoneCubic through(double[] x, double[] y) {
        return new MonotoneCubic(x.clone(), y.clone(), slopes(x, y));
    }

    /** Slopes at the points of a curve that keeps their rises and falls. */
    static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] slope = new double[n];
        if (n < 2) {
            return slope;
        }
        double stepBefore = x[1] - x[0];
        double chordBefore = (y[1] - y[0]) / stepBefore;
        slope[0] = chordBefore;
        for (int i = 1; i < n - 1; i++) {
            double step = x[i + 1] - x[i];
            double chord = (y[i + 1] - y[i]) / step;
            slope[i] = harmonic(chordBefore, chord, stepBefore, step);
            stepBefore = step;
            chordBefore = chord;
        }
        slope[n - 1] = chordBefore;
        return slope;
    }

    private static double harmonic(double before, double after, double stepBefore, double step) {
        if (before * after <= 0) {
            return 0;
        }
        double weightBefore = 2 * step + stepBefore;
        double weightAfter = step + 2 * stepBefore;
        return (weightBefore + weightAfter) * before * after / (weightBefore * after + weightAfter * before);
    }

    double value(double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int found = Arrays.binarySearch(x, at);
        int i = Math.min(found >= 0 ? found : -found - 2, last - 1);
        return value(at - x[i], x[i + 1] - x[i], y[i], y[i + 1], slope[i], slope[i + 1]);
    }

    /** Cubic on one interval, from its left end: distance, width, both values, both slopes. */
    static double value(double s, double width, double left, double right, double leftSlope, double rightSlope) {
        double chord = (right - left) / width;
        double c = (3 * chord - 2 * leftSlope - rightSlope) / width;
        double d = (leftSlope + rightSlope - 2 * chord) / (width * width);
        return left + s * (leftSlope + s * (c + s * d));
    }

    /** Slope of that cubic. */
    static double slope(double s, double width, double left, double right, double leftSlope, double rightSlope) {
        double chord = (right - left) / width;
        double c = (3 * chord - 2 * leftSlope - rightSlope) / width;
        double d = (leftSlope + rightSlope - 2 * chord) / (width * width);
        return leftSlope + s * (2 * c + 3 * s * d);
    }
}
