package throwline.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.logs.Piece.Kind;
import throwline.logs.Piece.Reason;

/** Stalls in runs with a closed throttle: slowed down evenly until the nose drops. Methods manual 22.5. */
final class LoggedStalls {

    /** A stall lies below this share of the predicted one. */
    private static final double NEAR = 1.22;

    /** Speed falls before by more than this, m/s, at more than so much, m/s^2, and not faster than that. */
    private static final double FALLS = 0.8;

    private static final double SLOWS = 0.2;
    private static final double QUICK = 1.5;

    /** Afterwards, within so many seconds, speed rises by this, or the sink rate, m/s. */
    private static final double AFTER = 1.4;

    private static final double RISES = 1.2;
    private static final double DROPS = 1.5;

    /** The end of a run may be a pilot's push on the stick or throttle, s. */
    private static final double END = 0.4;

    /** No other stall so close, and an approach that long, s. */
    private static final double ALONE = 2;

    private static final double APPROACH = 4;

    /** A dip that falls by less is no attempt, m/s. */
    private static final double ATTEMPT = 1.4;

    static final double SLOWEST_LOG = 0.55;

    /** By ground speed the lowest of several means in gusts is too low by this, s of the deceleration (COMPUTED: synthetic logs). */
    private static final double LOWEST_OF_MANY = 0.2;

    private final Trace trace;
    private final Airspeeds speeds;
    private final Map<String, StallGuide> guides;
    private final double lag;

    LoggedStalls(Trace trace, Airspeeds speeds, Map<String, StallGuide> guides, double lag) {
        this.trace = trace;
        this.speeds = speeds;
        this.guides = guides;
        this.lag = lag;
    }

    List<Piece> all() {
        List<Piece> found = new ArrayList<>();
        for (Runs run : Runs.of(trace, i -> trace.shut[i])) {
            Optional<String> setUp = run.setUp(trace);
            StallGuide guide = guides.get(setUp.orElse(""));
            if (guide != null) {
                search(run, setUp.orElse(""), guide, found);
            }
        }
        return found;
    }

    private void search(Runs run, String setUp, StallGuide guide, List<Piece> found) {
        double[] v = new double[run.to() - run.from()];
        double[] raw = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            int at = run.from() + i;
            raw[i] = speeds.bySensor ? speeds.speed[at] : speeds.level[at] / Math.cos(guide.descentAngle());
        }
        int half = Dip.half(trace.grid.step());
        for (int i = 0; i < v.length; i++) {
            v[i] = i - half < 0 || i + half >= v.length ? Double.NaN : Trace.mean(raw, i - half, i + half + 1);
        }
        int end = v.length - trace.grid.steps(END);
        for (int k = 1; k < end; k++) {
            if (v[k] < NEAR * guide.stallSpeed() && isLowest(v, k)) {
                piece(run, v, k, setUp).ifPresent(found::add);
            }
        }
    }

    private boolean isLowest(double[] v, int k) {
        int reach = trace.grid.steps(ALONE);
        for (int i = Math.max(0, k - reach); i < Math.min(v.length, k + reach + 1); i++) {
            if (v[i] < v[k] || (v[i] == v[k] && i < k)) {
                return false;
            }
        }
        return true;
    }

    private Optional<Piece> piece(Runs run, double[] v, int k, String setUp) {
        int top = k;
        for (int i = Math.max(0, k - trace.grid.steps(APPROACH)); i < k; i++) {
            top = v[i] > v[top] ? i : top;
        }
        int before = k - trace.grid.steps(Dip.BEFORE);
        double falls = v[top] - v[k];
        double slows = before >= 0 && !Double.isNaN(v[before]) ? (v[before] - v[k]) / Dip.BEFORE : Double.NaN;
        if (!(falls > FALLS) || !(slows > SLOWS)) {
            return Optional.empty();
        }
        boolean breaks = breaks(run, v, k);
        if (!breaks && falls < ATTEMPT) {
            return Optional.empty();
        }
        double hidden = new Dip(trace.grid.step(), lag).hidden() - (speeds.bySensor ? 0 : LOWEST_OF_MANY);
        double bottom = v[k] - hidden * slows;
        Reason reason = trace.grid.step() > SLOWEST_LOG
                ? Reason.TOO_SLOW_A_LOG
                : trace.fromPositions && !speeds.bySensor
                        ? Reason.POSITIONS_ONLY
                        : !breaks ? Reason.NO_BREAK : slows > QUICK ? Reason.TOO_QUICK : Reason.BREAK;
        int at = run.from() + k;
        int last = Math.min(run.to() - 1, at + trace.grid.steps(AFTER));
        return Optional.of(new Piece(
                0,
                Kind.STALL,
                trace.time(run.from() + top),
                trace.time(last),
                setUp,
                bottom,
                bottom,
                Double.NaN,
                speeds.bySensor ? 0 : Trace.mean(speeds.headingEast, at - 2, at + 3),
                speeds.bySensor ? 0 : Trace.mean(speeds.headingNorth, at - 2, at + 3),
                reason));
    }

    /** Whether speed is gained or height is lost as when the nose drops. */
    private boolean breaks(Runs run, double[] v, int k) {
        double[] sink = Airspeeds.slope(trace, trace.height, 1);
        int last = Math.min(v.length - 1, k + trace.grid.steps(AFTER));
        for (int i = k; i <= last; i++) {
            double deeper = sink[run.from() + i] - sink[run.from() + k];
            if (v[i] - v[k] > RISES || deeper > DROPS) {
                return true;
            }
        }
        return false;
    }
}
