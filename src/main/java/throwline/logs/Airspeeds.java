package throwline.logs;

import java.util.Arrays;
import java.util.Optional;

/** Airspeeds and headings of a trace: from a sensor with its scale put right, or from ground velocity less the wind. */
final class Airspeeds {

    /** A heading turns between two times so far apart, s. */
    private static final double TURN_SPAN = 2;

    /** The sink rate is the slope of height over so long, s. */
    private static final double SINK_SPAN = 2;

    /** Level parts, m/s; not a number without a wind. */
    final double[] level;
    /** Airspeeds, m/s. */
    final double[] speed;
    /** Turn rates of the heading, rad/s. */
    final double[] turn;
    /** Unit vectors of the heading. */
    final double[] headingEast;

    final double[] headingNorth;
    final boolean bySensor;

    Airspeeds(Trace trace, Optional<LogWind> wind, double scale) {
        int n = trace.grid.size();
        level = new double[n];
        speed = new double[n];
        headingEast = new double[n];
        headingNorth = new double[n];
        double[] sink = slope(trace, trace.height, SINK_SPAN);
        bySensor = trace.hasSensor();
        for (int i = 0; i < n; i++) {
            double factor = wind.isPresent() && !Double.isNaN(trace.height[i])
                    ? wind.get().factor(trace.above(i))
                    : 1;
            double x = trace.east[i] - wind.map(LogWind::east).orElse(0.0) * factor;
            double y = trace.north[i] - wind.map(LogWind::north).orElse(0.0) * factor;
            double length = Math.hypot(x, y);
            headingEast[i] = x / length;
            headingNorth[i] = y / length;
            level[i] = wind.isPresent() ? length : Double.NaN;
            double down = Double.isNaN(sink[i]) ? 0 : sink[i];
            speed[i] = bySensor ? trace.sensor[i] / scale : Math.hypot(level[i], down);
        }
        turn = turn(trace);
    }

    private double[] turn(Trace trace) {
        int half = Math.max(1, trace.grid.steps(TURN_SPAN) / 2);
        double[] rates = new double[level.length];
        Arrays.fill(rates, Double.NaN);
        each(trace, half, (i, from, to) -> {
            double cross = headingEast[from] * headingNorth[to] - headingNorth[from] * headingEast[to];
            double dot = headingEast[from] * headingEast[to] + headingNorth[from] * headingNorth[to];
            rates[i] = -Math.atan2(cross, dot) / (trace.time(to) - trace.time(from));
        });
        return rates;
    }

    /** Slope of a channel downward, of a line between two times so far apart. */
    static double[] slope(Trace trace, double[] values, double span) {
        int half = Math.max(1, trace.grid.steps(span) / 2);
        double[] slopes = new double[values.length];
        Arrays.fill(slopes, Double.NaN);
        each(
                trace,
                half,
                (i, from, to) -> slopes[i] = (values[from] - values[to]) / (trace.time(to) - trace.time(from)));
        return slopes;
    }

    private interface Span {
        void take(int at, int from, int to);
    }

    private static void each(Trace trace, int half, Span span) {
        int[] starts = trace.grid.starts();
        for (int s = 0; s + 1 < starts.length; s++) {
            for (int i = starts[s]; i < starts[s + 1]; i++) {
                int from = Math.max(starts[s], i - half);
                int to = Math.min(starts[s + 1] - 1, i + half);
                if (to > from) {
                    span.take(i, from, to);
                }
            }
        }
    }
}
