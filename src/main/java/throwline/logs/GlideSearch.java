package throwline.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import throwline.air.Gravity;
import throwline.logs.Piece.Kind;
import throwline.logs.Piece.Reason;

/**
 * Glides: a closed throttle, straight and steady. The sink rate is the slope of the energy height {@code h + V^2/(2 g)}, so
 * that a change of speed counts as the height that it is worth. Methods manual 22.4.
 */
final class GlideSearch {

    /** Turns slower than this count as straight, rad/s (PRACTICE). */
    static final double TURN = Math.toRadians(12);

    private static final double STICK = 0.2;

    /** After the throttle is closed, s. */
    private static final double SETTLING = 2.5;

    private static final double SHORTEST = 6;
    private static final double SHORTEST_SLOW = 10;
    private static final double SLOW_LOG = 0.8;

    /** Shorter than this is not worth a word, s. */
    private static final double NOTHING = 3;

    private static final double STEADY = 1.2;
    private static final double SLOWING = 0.25;
    private static final double ON_THE_GROUND = 3;
    private static final double SLOWEST = 4;

    private final Trace trace;
    private final Airspeeds speeds;
    private final boolean wind;
    private final boolean[] stalling;

    GlideSearch(Trace trace, Airspeeds speeds, boolean wind, List<Piece> stalls) {
        this.trace = trace;
        this.speeds = speeds;
        this.wind = wind;
        stalling = new boolean[trace.grid.size()];
        for (int i = 0; i < stalling.length; i++) {
            for (Piece stall : stalls) {
                stalling[i] |= trace.time(i) >= stall.from() && trace.time(i) <= stall.to() + 1;
            }
        }
    }

    /** Shortest glide that is used, s. */
    static double shortest(Trace trace) {
        return trace.grid.step() > SLOW_LOG || trace.fromPositions ? SHORTEST_SLOW : SHORTEST;
    }

    List<Piece> all() {
        List<Piece> found = new ArrayList<>();
        for (Runs run : Runs.of(trace, i -> trace.shut[i])) {
            if (run.seconds(trace) < NOTHING || !flies(run)) {
                continue;
            }
            Optional<String> setUp = run.setUp(trace);
            Reason missing = missing(setUp);
            if (missing != Reason.STEADY) {
                found.add(Piece.rejected(Kind.GLIDE, run.start(trace), run.end(trace), setUp, missing));
                continue;
            }
            int from = run.from() + trace.grid.steps(SETTLING);
            List<Runs> parts = Runs.of(trace, Math.min(from, run.to()), run.to(), i -> !stalling[i] && isStraight(i));
            boolean any = false;
            for (Runs part : parts) {
                if (part.seconds(trace) >= NOTHING) {
                    found.add(piece(part));
                    any = true;
                }
            }
            boolean stalled = false;
            for (int i = run.from(); i < run.to(); i++) {
                stalled |= stalling[i];
            }
            if (!any && !stalled) {
                Reason reason = run.seconds(trace) < SETTLING + shortest(trace) ? Reason.TOO_SHORT : Reason.TURNING;
                found.add(Piece.rejected(Kind.GLIDE, run.start(trace), run.end(trace), setUp, reason));
            }
        }
        return found;
    }

    private Reason missing(Optional<String> setUp) {
        if (setUp.isEmpty()) {
            return Reason.NO_SET_UP;
        }
        if (!trace.hasHeight()) {
            return Reason.NO_HEIGHT;
        }
        return wind || speeds.bySensor ? Reason.STEADY : Reason.NO_WIND;
    }

    private boolean flies(Runs run) {
        int middle = (run.from() + run.to()) / 2;
        double high = Double.isNaN(trace.height[middle]) ? Double.POSITIVE_INFINITY : trace.above(middle);
        double moves = Trace.mean(speeds.speed, run.from(), run.to());
        double over =
                Math.hypot(Trace.mean(trace.east, run.from(), run.to()), Trace.mean(trace.north, run.from(), run.to()));
        return high > ON_THE_GROUND && (Double.isNaN(moves) ? over : moves) > SLOWEST;
    }

    private boolean isStraight(int i) {
        boolean turns = Math.abs(speeds.turn[i]) > TURN;
        boolean rolls = Math.abs(trace.stick[i]) > STICK;
        return !turns && !rolls && !Double.isNaN(trace.height[i]) && !Double.isNaN(speeds.speed[i]);
    }

    private Piece piece(Runs part) {
        SimpleRegression energy = new SimpleRegression();
        SimpleRegression speed = new SimpleRegression();
        for (int i = part.from(); i < part.to(); i++) {
            double v = speeds.speed[i];
            energy.addData(trace.time(i), trace.height[i] + v * v / (2 * Gravity.STANDARD));
            speed.addData(trace.time(i), v);
        }
        double sd = Trace.sd(speeds.speed, part.from(), part.to());
        Reason reason = part.seconds(trace) + 1e-9 < shortest(trace)
                ? Reason.TOO_SHORT
                : sd > STEADY || Math.abs(speed.getSlope()) > SLOWING ? Reason.UNSTEADY : Reason.STEADY;
        boolean ground = !speeds.bySensor;
        return new Piece(
                0,
                Kind.GLIDE,
                part.start(trace),
                part.end(trace),
                part.setUp(trace).orElse(""),
                Trace.mean(speeds.speed, part.from(), part.to()),
                -energy.getSlope(),
                Trace.mean(trace.elevator, part.from(), part.to()),
                ground ? Trace.mean(speeds.headingEast, part.from(), part.to()) : 0,
                ground ? Trace.mean(speeds.headingNorth, part.from(), part.to()) : 0,
                reason);
    }
}
