package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import throwline.units.Key;

/**
 * Motion of the model while its surfaces go from one set-up to another, throttle shut.
 *
 * @param time that the surfaces take, s
 * @param history moments from the steady descent at first, in steps of 0.01 s; it ends where the angle of attack leaves the
 *     range that was solved
 * @param followed false where it left that range
 */
public record SurfaceMove(double time, List<Moment> history, boolean followed) {

    /** A path steeper by less than this is no steeper, rad: the eye does not see it. */
    private static final double STEEPER = Math.toRadians(0.1);

    /** Takes a copy of the history, which is never empty. */
    public SurfaceMove {
        history = List.copyOf(history);
    }

    /**
     * One moment.
     *
     * @param time s
     * @param moved how far the surfaces have gone, 0 to 1
     * @param height over the start, m
     * @param offPath height above the path that it was on, m
     * @param angle of the path below the horizon, rad
     * @param alpha angle of attack, rad
     * @param speed airspeed, m/s
     * @param load lift over weight
     */
    public record Moment(
            double time,
            double moved,
            double height,
            double offPath,
            @Key(Key.NONE) double angle,
            @Key(Key.NONE) double alpha,
            double speed,
            double load) {}

    /** How it comes back to a path no steeper than the one it was on. */
    public enum Return {
        /** It was never steeper. */
        NEVER_LEFT,
        /** It was steeper for a while. */
        BACK,
        /** It was still steeper at the end of the time watched. */
        NOT_YET,
        /** The angle of attack left the range that was solved. */
        LOST
    }

    /** Most that it rises above the path it was on, m, not negative. */
    public double balloon() {
        return most(Moment::offPath);
    }

    /** Most that it sinks below the path it was on, m, not negative. */
    public double drop() {
        return -least(Moment::offPath);
    }

    /** Largest load. */
    public double mostLoad() {
        return most(Moment::load);
    }

    /** Smallest load. */
    public double leastLoad() {
        return least(Moment::load);
    }

    /** Lowest airspeed, m/s. */
    public double slowest() {
        return least(Moment::speed);
    }

    /** Highest airspeed, m/s. */
    public double fastest() {
        return most(Moment::speed);
    }

    /** True where it left the range that was solved with its nose going up. */
    public boolean lostNoseUp() {
        return !followed
                && history.get(history.size() - 1).alpha() > history.get(0).alpha();
    }

    /** Whether and how it comes back to a path no steeper than the one it was on. */
    public Return comesBack() {
        if (!followed) {
            return Return.LOST;
        }
        return lastSteeper()
                .map(last -> last == history.size() - 1 ? Return.NOT_YET : Return.BACK)
                .orElse(Return.NEVER_LEFT);
    }

    /** Height lost from the start until the path is no steeper than at first, m; empty where it did not come back. */
    public Optional<Double> heightLost() {
        return comesBack() == Return.BACK
                ? lastSteeper().map(last -> -history.get(last + 1).height())
                : Optional.empty();
    }

    private Optional<Integer> lastSteeper() {
        double limit = history.get(0).angle() + STEEPER;
        for (int i = history.size() - 1; i >= 0; i--) {
            if (history.get(i).angle() > limit) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private double most(ToDoubleFunction<Moment> quantity) {
        return history.stream().mapToDouble(quantity).max().orElseThrow();
    }

    private double least(ToDoubleFunction<Moment> quantity) {
        return history.stream().mapToDouble(quantity).min().orElseThrow();
    }
}
