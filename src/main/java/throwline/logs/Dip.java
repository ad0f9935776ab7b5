package throwline.logs;

/**
 * Bottom of a dip in airspeed: what averaging, sampling and the lag of a receiver hide of it. A model that slows down
 * evenly and gains speed again when the nose drops is put through the same means; what is missing there goes with the
 * deceleration. Methods manual 22.5.
 *
 * @param step between samples, s
 * @param lag first order, s
 */
record Dip(double step, double lag) {

    /** Deceleration before and gain of speed after, m/s^2 (PRACTICE). */
    private static final double DOWN = 0.65;

    private static final double UP = 2.2;

    /** The mean over this, and the time over which deceleration is read, s. */
    static final double MEAN = 1;

    static final double BEFORE = 2.4;

    private static final int PHASES = 16;
    private static final double REACH = 5;

    /** What the lowest mean lies above the bottom, for each m/s^2 of the deceleration as it is read, s. */
    double hidden() {
        double sum = 0;
        for (int phase = 0; phase < PHASES; phase++) {
            sum += hidden(step * phase / PHASES);
        }
        return sum / PHASES;
    }

    private double hidden(double phase) {
        int half = half(step);
        int before = (int) Math.round(BEFORE / step);
        double lowest = Double.POSITIVE_INFINITY;
        double slowing = DOWN;
        for (double t = -REACH + phase; t < REACH / 2; t += step) {
            double mean = mean(t, half);
            if (mean < lowest) {
                lowest = mean;
                slowing = (mean(t - before * step, half) - mean) / (before * step);
            }
        }
        return lowest / slowing;
    }

    private double mean(double t, int half) {
        double sum = 0;
        for (int i = -half; i <= half; i++) {
            sum += shown(t + i * step);
        }
        return sum / (2 * half + 1);
    }

    /** Steps to either side that a mean over a second takes in. */
    static int half(double step) {
        return (int) Math.max(0, Math.round((MEAN / step - 1) / 2));
    }

    /** Speed above the bottom as a lagging receiver shows it. */
    private double shown(double t) {
        if (t < 0) {
            return DOWN * (lag - t);
        }
        double fades = lag > 0 ? (DOWN + UP) * lag * Math.exp(-t / lag) : 0;
        return UP * (t - lag) + fades;
    }
}
