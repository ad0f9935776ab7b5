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
        double[] slope = new double[x.length];
        if (x.length > 1) {
            fillSlopes(x, y, slope, 0, x.length - 1);
        }
        return slope;
    }

    /** Fills in these slopes from one point to another, the two included. */
    static void fillSlopes(double[] x, double[] y, double[] slope, int from, int to) {
        double stepBefore = x[from + 1] - x[from];
        double chordBefore = (y[from + 1] - y[from]) / stepBefore;
        slope[from] = chordBefore;
        for (int i = from + 1; i < to; i++) {
            double step = x[i + 1] - x[i];
            double chord = (y[i + 1] - y[i]) / step;
            slope[i] = harmonic(chordBefore, chord, stepBefore, step);
            stepBefore = step;
            chordBefore = chord;
        }
        slope[to] = chordBefore;
    }

    /** Slope between two chords and the widths that they span. */
    static double harmonic(double before, double after, double stepBefore, double step) {
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
}
