package throwline.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import throwline.logs.Piece.Kind;
import throwline.logs.Piece.Reason;

/** Rolls at full aileron, by a rate gyro. Bank from satellite speeds is too slow for them. */
final class RollSearch {

    private static final double FULL = 0.9;

    /** Time until the rate is steady, and the least left for its mean, s (PRACTICE). */
    private static final double DROPPED = 0.6;

    private static final double LEAST = 0.6;

    private final Trace trace;
    private final Airspeeds speeds;

    RollSearch(Trace trace, Airspeeds speeds) {
        this.trace = trace;
        this.speeds = speeds;
    }

    List<Piece> all() {
        boolean gyro = Arrays.stream(trace.rollRate).anyMatch(r -> !Double.isNaN(r));
        List<Piece> found = new ArrayList<>();
        for (Runs run : Runs.of(trace, i -> Math.abs(trace.stick[i]) > FULL)) {
            if (run.seconds(trace) < DROPPED) {
                continue;
            }
            Optional<String> setUp = run.setUp(trace);
            int from = run.from() + trace.grid.steps(DROPPED);
            double speed = Trace.mean(speeds.speed, run.from(), run.to());
            Reason reason = trace.grid.step() > LoggedStalls.SLOWEST_LOG
                    ? Reason.TOO_SLOW_A_LOG
                    : setUp.isEmpty()
                            ? Reason.NO_SET_UP
                            : !gyro
                                    ? Reason.NO_GYRO
                                    : (run.to() - from) * trace.grid.step() < LEAST
                                            ? Reason.TOO_SHORT
                                            : Double.isNaN(speed) ? Reason.NO_WIND : Reason.FULL_STICK;
            double rate = Math.abs(Trace.mean(trace.rollRate, from, run.to()));
            found.add(new Piece(
                    0,
                    Kind.ROLL,
                    run.start(trace),
                    run.end(trace),
                    setUp.orElse(""),
                    speed,
                    rate,
                    Double.NaN,
                    0,
                    0,
                    reason));
        }
        return found;
    }
}
