package throwline.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Even times that a log is read at: five a second, or as many as it has; a gap splits it into stretches.
 *
 * @param step s
 * @param times s, rising
 * @param starts place of the first time of each stretch, and one past the last time of all
 */
@SuppressWarnings("ArrayRecordComponent") // times, never compared
record Grid(double step, double[] times, int[] starts) {

    /** Five a second: what the sums over a stall were worked out for (COMPUTED, methods manual 22.5). */
    private static final double FINEST = 0.2;

    /** Longer without a row is a gap, s; in a slow log so many steps. */
    private static final double GAP = 1;

    private static final double GAP_STEPS = 2.5;

    /** The grid for the times of the rows. */
    static Grid of(double[] rows) {
        double step = Math.max(FINEST, median(rows));
        List<Double> times = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= rows.length; i++) {
            if (i == rows.length || rows[i] - rows[i - 1] > gap(step)) {
                int count = (int) Math.floor((rows[i - 1] - rows[first]) / step + 1e-6) + 1;
                starts.add(times.size());
                for (int k = 0; k < count; k++) {
                    times.add(rows[first] + k * step);
                }
                first = i;
            }
        }
        starts.add(times.size());
        return new Grid(
                step,
                times.stream().mapToDouble(Double::doubleValue).toArray(),
                starts.stream().mapToInt(Integer::intValue).toArray());
    }

    private static double gap(double step) {
        return Math.max(GAP, GAP_STEPS * step);
    }

    /** Longest time between two values that still may be joined by a line, s. */
    double gap() {
        return gap(step);
    }

    /** Median distance of rows, s. */
    static double median(double[] rows) {
        double[] apart = new double[Math.max(0, rows.length - 1)];
        Arrays.setAll(apart, i -> rows[i + 1] - rows[i]);
        Arrays.sort(apart);
        return apart.length == 0 ? FINEST : apart[apart.length / 2];
    }

    int size() {
        return times.length;
    }

    /** Places within so many seconds. */
    int steps(double seconds) {
        return Math.max(1, (int) Math.round(seconds / step));
    }

    /** Values at the times of the grid: the mean of those around each, or a line between neighbours no further apart than a gap. */
    double[] resample(double[] at, double[] values) {
        double[] known = new double[at.length];
        double[] held = new double[at.length];
        int n = 0;
        for (int i = 0; i < at.length; i++) {
            if (!Double.isNaN(values[i])) {
                known[n] = at[i];
                held[n++] = values[i];
            }
        }
        double[] result = new double[times.length];
        int low = 0;
        for (int k = 0; k < times.length; k++) {
            while (low < n && known[low] < times[k] - step / 2 - 1e-9) {
                low++;
            }
            double sum = 0;
            int count = 0;
            for (int i = low; i < n && known[i] < times[k] + step / 2 - 1e-9; i++) {
                sum += held[i];
                count++;
            }
            result[k] = count > 0 ? sum / count : between(known, held, low, n, times[k]);
        }
        return result;
    }

    private double between(double[] known, double[] held, int next, int n, double time) {
        if (next == 0 || next >= n || known[next] - known[next - 1] > gap()) {
            return Double.NaN;
        }
        double share = (time - known[next - 1]) / (known[next] - known[next - 1]);
        return held[next - 1] + share * (held[next] - held[next - 1]);
    }

    /** The value of the last row at or before each time, for switches. */
    int[] latest(double[] at, double[] values, int none) {
        int[] result = new int[times.length];
        int row = -1;
        for (int k = 0; k < times.length; k++) {
            while (row + 1 < at.length && at[row + 1] <= times[k] + 1e-9) {
                row++;
            }
            result[k] = row >= 0 && row < values.length && !Double.isNaN(values[row]) ? (int) values[row] : none;
        }
        return result;
    }
}
