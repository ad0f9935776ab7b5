package throwline.logs;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Channels of a log at even times, heights in real metres. What a log does not have is not a number. */
final class Trace {

    /** A throttle below this share, or a current below this share of the largest, is closed. */
    private static final double SHUT = 0.05;

    private static final double IDLE = 0.03;

    final Grid grid;
    final double[] height;
    final double[] east;
    final double[] north;
    final double[] sensor;
    final double[] elevator;
    final double[] stick;
    final double[] rollRate;
    final double[] throttle;
    final boolean[] shut;
    final int[] setUp;
    final boolean fromPositions;
    private final List<String> setUps;
    private final double ground;

    Trace(FlightLog log, LogAir air) {
        double[] t = log.channel(Channel.TIME);
        grid = Grid.of(t);
        GroundTrack track = GroundTrack.of(log);
        fromPositions = track.fromPositions();
        east = grid.resample(track.times(), track.east());
        north = grid.resample(track.times(), track.north());
        height = real(log, air, t);
        ground = Arrays.stream(height).filter(h -> !Double.isNaN(h)).min().orElse(0);
        sensor = grid(log, t, Channel.AIRSPEED);
        elevator = grid(log, t, Channel.ELEVATOR);
        stick = grid(log, t, Channel.ROLL_STICK);
        rollRate = grid(log, t, Channel.ROLL_RATE);
        throttle = grid(log, t, Channel.THROTTLE);
        setUps = log.setUps();
        setUp = grid.latest(t, log.channel(Channel.SWITCH), -1);
        shut = shut(log, t);
    }

    private double[] grid(FlightLog log, double[] t, Channel channel) {
        if (!log.has(channel)) {
            double[] none = new double[grid.size()];
            Arrays.fill(none, Double.NaN);
            return none;
        }
        return grid.resample(t, log.channel(channel));
    }

    private double[] real(FlightLog log, LogAir air, double[] t) {
        if (!log.has(Channel.HEIGHT) && log.has(Channel.PRESSURE)) {
            double[] pressure = grid(log, t, Channel.PRESSURE);
            double first = first(pressure);
            return Arrays.stream(pressure).map(p -> air.climbed(first, p)).toArray();
        }
        double[] shown = grid(log, t, Channel.HEIGHT);
        double first = first(shown);
        return Arrays.stream(shown)
                .map(h -> first + (h - first) * air.realMetre(air.heightAboveSea() + (h - first) / 2))
                .toArray();
    }

    private static double first(double[] values) {
        return Arrays.stream(values).filter(v -> !Double.isNaN(v)).findFirst().orElse(Double.NaN);
    }

    private boolean[] shut(FlightLog log, double[] t) {
        boolean[] closed = new boolean[grid.size()];
        double[] current = grid(log, t, Channel.CURRENT);
        double most = Arrays.stream(current).filter(v -> !Double.isNaN(v)).max().orElse(Double.NaN);
        for (int i = 0; i < closed.length; i++) {
            closed[i] = log.has(Channel.THROTTLE)
                    ? throttle[i] < SHUT
                    : log.has(Channel.CURRENT) ? current[i] < IDLE * most : log.shutInSpans() && setUp[i] >= 0;
        }
        return closed;
    }

    /** Height above the lowest point of the log, m. */
    double above(int i) {
        return height[i] - ground;
    }

    Optional<String> setUpAt(int i) {
        return setUp[i] >= 0 && setUp[i] < setUps.size() ? Optional.of(setUps.get(setUp[i])) : Optional.empty();
    }

    double time(int i) {
        return grid.times()[i];
    }

    boolean hasSensor() {
        return Arrays.stream(sensor).anyMatch(v -> !Double.isNaN(v));
    }

    boolean hasHeight() {
        return Arrays.stream(height).anyMatch(v -> !Double.isNaN(v));
    }

    /** Mean of known values between two places, the second one past the last. */
    static double mean(double[] values, int from, int to) {
        double sum = 0;
        int count = 0;
        for (int i = Math.max(0, from); i < Math.min(values.length, to); i++) {
            if (!Double.isNaN(values[i])) {
                sum += values[i];
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Standard deviation of known values. */
    static double sd(double[] values, int from, int to) {
        double mean = mean(values, from, to);
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(values[i])) {
                sum += Math.pow(values[i] - mean, 2);
                count++;
            }
        }
        return count == 0 ? Double.NaN : Math.sqrt(sum / count);
    }
}
