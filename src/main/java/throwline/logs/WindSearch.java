package throwline.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import throwline.logs.Piece.Kind;
import throwline.logs.Piece.Reason;
import throwline.numerics.Interpolation;

/** Wind of a trace: from circles, else from straight runs with a closed throttle in three directions or to and fro. */
final class WindSearch {

    /** A circle turns faster than this over the ground, rad/s, at least so far, rad (PRACTICE). */
    private static final double TURN = Math.toRadians(10);

    private static final double ENOUGH = 3 * Math.PI;
    private static final double SOME = 1.4 * Math.PI;

    /** Distances from the circle: as a share of it, and m/s. */
    private static final double SCATTER = 0.12;

    private static final double LEAST_SCATTER = 1;

    /** Change of a wind with time and height: m/s, and as a share of it (PRACTICE). */
    private static final double CHANGE = 0.2;

    private static final double CHANGE_SHARE = 0.1;

    /** Left by straight runs, m/s (PRACTICE). */
    private static final double STRAIGHT = 0.4;

    private static final double OPPOSITE = Math.toRadians(30);
    private static final double SPREAD = Math.toRadians(150);
    private static final double SLOWEST = 2;

    private final Trace trace;
    private final double lag;

    /** A circle that was found, with the piece that it is. */
    record Circled(Piece piece, CircleFit fit, double turned, double height, double independent) {}

    WindSearch(Trace trace, double lag) {
        this.trace = trace;
        this.lag = lag;
    }

    /** Circles, rejected ones too. */
    List<Circled> circles() {
        double[] rate = courseRate();
        List<Circled> found = new ArrayList<>();
        for (int sign : new int[] {1, -1}) {
            for (Runs run : Runs.of(trace, i -> sign * rate[i] > TURN)) {
                double turned = 0;
                for (int i = run.from(); i < run.to(); i++) {
                    turned += Math.abs(rate[i]) * trace.grid.step();
                }
                if (turned > SOME) {
                    found.add(circle(run, turned));
                }
            }
        }
        found.sort(Comparator.comparingDouble(c -> c.piece.from()));
        return found;
    }

    private Circled circle(Runs run, double turned) {
        double[] x = Arrays.copyOfRange(trace.east, run.from(), run.to());
        double[] y = Arrays.copyOfRange(trace.north, run.from(), run.to());
        double height =
                Trace.mean(trace.height, run.from(), run.to()) - trace.height[run.from()] + trace.above(run.from());
        if (turned < ENOUGH || x.length < 8) {
            Piece piece =
                    Piece.rejected(Kind.CIRCLE, run.start(trace), run.end(trace), Optional.empty(), Reason.FEW_TURNS);
            return new Circled(piece, new CircleFit(0, 0, 0, 0), turned, height, 0);
        }
        CircleFit fit = CircleFit.of(x, y);
        boolean round = fit.scatter() < Math.max(LEAST_SCATTER, SCATTER * fit.radius());
        double airspeed = fit.unlagged(turned / run.seconds(trace), trace.fromPositions ? 0 : lag);
        Piece piece = new Piece(
                0,
                Kind.CIRCLE,
                run.start(trace),
                run.end(trace),
                "",
                airspeed,
                airspeed,
                Double.NaN,
                0,
                0,
                round ? Reason.TURNS : Reason.NO_CIRCLE);
        return new Circled(piece, fit, turned, height, independent(x, y, fit));
    }

    /** Independent samples: n (1 - a)/(1 + a) with a the correlation of residuals one step apart. */
    private static double independent(double[] x, double[] y, CircleFit fit) {
        double[] left = new double[x.length];
        Arrays.setAll(left, i -> Math.hypot(x[i] - fit.east(), y[i] - fit.north()) - fit.radius());
        double square = 0;
        double product = 0;
        for (int i = 0; i < left.length; i++) {
            square += left[i] * left[i];
            product += i > 0 ? left[i] * left[i - 1] : 0;
        }
        double a = square > 0 ? Interpolation.clamp(product / square, 0, 0.98) : 0;
        return Math.max(3, left.length * (1 - a) / (1 + a));
    }

    private double[] courseRate() {
        Airspeeds overGround = new Airspeeds(trace, Optional.empty(), 1);
        double[] rate = overGround.turn;
        for (int i = 0; i < rate.length; i++) {
            boolean moves = Math.hypot(trace.east[i], trace.north[i]) > SLOWEST / 4;
            rate[i] = moves ? rate[i] : Double.NaN;
        }
        return rate;
    }

    /** The wind by those circles that are used. */
    Optional<LogWind> byCircles(List<Circled> circles, Predicate<Circled> used) {
        double east = 0;
        double north = 0;
        double height = 0;
        double weight = 0;
        double variance = 0;
        for (Circled circle : circles) {
            if (circle.piece.used() && used.test(circle)) {
                weight += circle.turned;
                east += circle.turned * circle.fit.east();
                north += circle.turned * circle.fit.north();
                height += circle.turned * (Double.isNaN(circle.height) ? 0 : circle.height);
                variance += Math.pow(circle.turned, 2) * 2 * Math.pow(circle.fit.scatter(), 2) / circle.independent;
            }
        }
        if (weight == 0) {
            return Optional.empty();
        }
        double speed = Math.hypot(east, north) / weight;
        double sd = Math.hypot(Math.sqrt(variance) / weight, CHANGE + CHANGE_SHARE * speed);
        return Optional.of(new LogWind(east / weight, north / weight, height / weight, sd, LogWind.Source.CIRCLE));
    }

    /** The wind by straight runs with a closed throttle of one set-up, for logs without circles. */
    Optional<LogWind> byRuns() {
        Airspeeds overGround = new Airspeeds(trace, Optional.empty(), 1);
        Map<Integer, List<double[]>> bySetUp = new HashMap<>();
        Runs.of(
                        trace,
                        i -> trace.shut[i]
                                && trace.setUp[i] >= 0
                                && Math.abs(overGround.turn[i]) < GlideSearch.TURN
                                && Math.hypot(trace.east[i], trace.north[i]) > SLOWEST)
                .stream()
                .filter(run -> run.seconds(trace) >= GlideSearch.shortest(trace))
                .forEach(run -> bySetUp.computeIfAbsent(trace.setUp[run.from()], s -> new ArrayList<>())
                        .add(new double[] {
                            Trace.mean(trace.east, run.from(), run.to()),
                            Trace.mean(trace.north, run.from(), run.to()),
                            Trace.mean(trace.height, run.from(), run.to()) - trace.height[0] + trace.above(0)
                        }));
        return bySetUp.values().stream()
                .map(this::byRuns)
                .flatMap(Optional::stream)
                .max(Comparator.comparing(wind -> wind.source() == LogWind.Source.HEADINGS));
    }

    private Optional<LogWind> byRuns(List<double[]> runs) {
        double height = runs.stream().mapToDouble(r -> r[2]).average().orElse(0);
        if (runs.size() > 2 && widestGap(runs) < SPREAD) {
            CircleFit fit = CircleFit.of(
                    runs.stream().mapToDouble(r -> r[0]).toArray(),
                    runs.stream().mapToDouble(r -> r[1]).toArray());
            if (Double.isFinite(fit.scatter())) {
                return Optional.of(new LogWind(fit.east(), fit.north(), height, STRAIGHT, LogWind.Source.HEADINGS));
            }
        }
        for (double[] one : runs) {
            for (double[] other : runs) {
                double g1 = Math.hypot(one[0], one[1]);
                double g2 = Math.hypot(other[0], other[1]);
                double apart =
                        Math.acos(Interpolation.clamp((one[0] * other[0] + one[1] * other[1]) / (g1 * g2), -1, 1));
                if (Math.PI - apart < OPPOSITE) {
                    double along = LevelWind.opposing(g1, g2).wind();
                    return Optional.of(new LogWind(
                            along * other[0] / g2, along * other[1] / g2, height, STRAIGHT, LogWind.Source.OPPOSING));
                }
            }
        }
        return Optional.empty();
    }

    /** Widest angle between neighbouring directions. */
    private static double widestGap(List<double[]> runs) {
        double[] angles =
                runs.stream().mapToDouble(r -> Math.atan2(r[1], r[0])).sorted().toArray();
        double widest = angles[0] + 2 * Math.PI - angles[angles.length - 1];
        for (int i = 1; i < angles.length; i++) {
            widest = Math.max(widest, angles[i] - angles[i - 1]);
        }
        return widest;
    }
}
