package throwline.numerics;

import java.util.Arrays;

/** Straight-line interpolation that does not leave the values known. */
public final class Interpolation {

    private Interpolation() {}

    /** Nearest value from {@code low} to {@code high}, which are in order. */
    public static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }

    /** Value a share of the way between two others; beyond them outside 0 to 1. */
    public static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    /**
     * Value between nodes, straight from one to the next, that of the end node beyond the ends.
     *
     * @param x nodes, strictly rising, two or more
     * @param y as many values
     * @param at where
     */
    public static double at(double[] x, double[] y, double at) {
        int i = interval(x, at);
        return between(y[i], y[i + 1], clamp((at - x[i]) / (x[i + 1] - x[i]), 0, 1));
    }

    /**
     * Number of the interval that holds a value, the first or the last where none does; 0 lies above the first node.
     *
     * @param x nodes, strictly rising, two or more
     * @param at where
     */
    public static int interval(double[] x, double at) {
        int found = Arrays.binarySearch(x, at);
        return (int) clamp(found >= 0 ? found : -found - 2, 0, x.length - 2);
    }
}
