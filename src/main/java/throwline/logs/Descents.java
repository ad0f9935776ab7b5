package throwline.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import throwline.air.Air;

/**
 * Stretches of a log in which a set-up may have been flown: a closed throttle, or where nothing tells of the throttle, steady
 * loss of height. They are offered to a person who says which set-up it was.
 */
public final class Descents {

    /** Shorter than this no glide is used, s. */
    private static final double SHORTEST = 6;

    /** Loss of height, m/s, over so many seconds to either side, that no level flight has (PRACTICE). */
    private static final double SINKS = 0.4;

    private static final double SIDE = 2;
    private static final double ON_THE_GROUND = 3;

    private Descents() {}

    /**
     * A stretch.
     *
     * @param from s, as the log counts
     * @param to s
     * @param lost height, m; not a number where the log has none
     */
    public record Descent(double from, double to, double lost) {}

    /** All of a log, in the order of time. */
    public static List<Descent> of(FlightLog log) {
        Air standard = Air.at(0, OptionalDouble.empty());
        Trace trace = new Trace(log, new LogAir(OptionalDouble.empty(), standard.pressure(), 0, true));
        boolean told = log.has(Channel.THROTTLE) || log.has(Channel.CURRENT);
        List<Descent> found = new ArrayList<>();
        for (Runs run : Runs.of(trace, i -> told ? trace.shut[i] : sinks(trace, i))) {
            int last = run.to() - 1;
            double lost = trace.height[run.from()] - trace.height[last];
            boolean flies = Double.isNaN(lost) || (lost > 0 && trace.above(run.from()) > ON_THE_GROUND);
            if (run.seconds(trace) >= SHORTEST && flies) {
                found.add(new Descent(run.start(trace), run.end(trace), lost));
            }
        }
        return found;
    }

    private static boolean sinks(Trace trace, int i) {
        int side = trace.grid.steps(SIDE);
        int before = Math.max(0, i - side);
        int after = Math.min(trace.grid.size() - 1, i + side);
        double seconds = trace.time(after) - trace.time(before);
        return seconds > 0 && trace.height[before] - trace.height[after] > SINKS * seconds;
    }
}
