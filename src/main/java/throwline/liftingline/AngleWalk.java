package throwline.liftingline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import throwline.numerics.Interpolation;
import throwline.numerics.ParabolaTop;

/**
 * Walk up in angle of attack through a stall: the points solved so far, the highest of them, and what lies between them. A
 * place in it is a number of steps from the first point, with its fraction.
 *
 * @param <P> what is known at one angle
 */
public final class AngleWalk<P extends AngleWalk.Point> {

    /** State at one angle of attack. */
    public interface Point {

        /** Angle of attack, rad. */
        double alpha();

        /** Lift coefficient. */
        double lift();

        /** False where it is not a solution that may be flown. */
        boolean converged();
    }

    /**
     * Solver of one point.
     *
     * @param <P> what is known at one angle
     */
    @FunctionalInterface
    public interface Model<P extends Point> {

        /** Point at an angle of attack, rad, started from the walk so far. */
        P at(double alpha, AngleWalk<P> before);
    }

    /** Share of the most lift from which a top begins. */
    private static final double NEARLY_ALL = 0.99;

    /**
     * Half width of an ordinary top, rad: lift falls by 0.011 times the square of the degrees from its most (wing of NACA TN
     * 1270, computed from read data), which is a hundredth of a usual most lift one degree away.
     */
    private static final double ORDINARY_TOP = Math.toRadians(1);

    /**
     * Share of the most lift below which what comes later is past the stall, though it may carry more again at a far higher
     * drag: half of what a flat top allows, and five times what the number of strips changes (PRACTICE, methods manual 6.5).
     */
    private static final double FALLEN = 0.995;

    private final List<P> points = new ArrayList<>();
    private int top = -1;
    private int risen;
    private boolean ended;

    /**
     * Even steps up until an end is met.
     *
     * @param first angle of attack of the first point, rad
     * @param step rad
     * @param most number of points
     * @param model solves them; the first that did not converge ends the walk without its end being met
     * @param end true where the walk need not go on
     */
    public static <P extends Point> AngleWalk<P> up(
            double first, double step, int most, Model<P> model, Predicate<AngleWalk<P>> end) {
        AngleWalk<P> walk = new AngleWalk<>();
        for (int k = 0; k < most && !walk.ended; k++) {
            walk.add(model.at(first + k * step, walk));
            if (!walk.last().converged()) {
                return walk;
            }
            walk.ended = end.test(walk);
        }
        return walk;
    }

    /** Goes on to a point. */
    public void add(P point) {
        double most = top < 0 ? Double.NEGATIVE_INFINITY : points.get(top).lift();
        boolean falls = point.converged() && most > 0 && point.lift() < FALLEN * most;
        boolean fell = risen < points.size();
        points.add(point);
        if (!falls && !fell) {
            risen = points.size();
            top = point.converged() && point.lift() > most ? risen - 1 : top;
        }
    }

    /** Number of points before lift falls from its most. */
    public int risen() {
        return risen;
    }

    /** True where the end was met and every point on the way is a solution. */
    public boolean ended() {
        return ended;
    }

    /** Copy of the points so far. */
    public List<P> points() {
        return new ArrayList<>(points);
    }

    /** Number of points. */
    public int size() {
        return points.size();
    }

    /** Point at a number of steps. */
    public P get(int step) {
        return points.get(step);
    }

    /** Point that was added last; empty at the beginning. */
    public Optional<P> latest() {
        return points.isEmpty() ? Optional.empty() : Optional.of(last());
    }

    /** Point that was added last, where there is one. */
    public P last() {
        return points.get(points.size() - 1);
    }

    /** Number of the highest point before lift falls, the first of equals; -1 where none is a solution. */
    public int top() {
        return top;
    }

    /** Angle and lift at the top of the parabola through the highest point and its neighbours. */
    public Peak peak() {
        P middle = points.get(top);
        if (top == 0 || top == points.size() - 1) {
            return new Peak(middle.alpha(), middle.lift());
        }
        return Peak.of(points.get(top - 1), middle, points.get(top + 1));
    }

    /**
     * Stall: the peak, but not more than an ordinary top's half width past where lift first comes within a hundredth of the
     * peak's. On a flatter top the place of the peak is chance.
     */
    public Peak stall() {
        Peak peak = peak();
        double wanted = NEARLY_ALL * peak.lift();
        double begins = get(0).lift() >= wanted
                ? 0
                : firstFall(point -> wanted - point.lift(), 0, top).orElse(top);
        double alpha = value(begins, Point::alpha) + ORDINARY_TOP;
        if (alpha >= peak.alpha()) {
            return peak;
        }
        double place = firstFall(point -> alpha - point.alpha()).orElse(top);
        return new Peak(alpha, value(place, Point::lift));
    }

    /** First place up to a number of steps at which a quantity is zero or below, straight between the points. */
    public OptionalDouble firstFall(ToDoubleFunction<P> quantity, int from, int to) {
        for (int i = from + 1; i <= to; i++) {
            double a = quantity.applyAsDouble(points.get(i - 1));
            double b = quantity.applyAsDouble(points.get(i));
            if (b <= 0) {
                return OptionalDouble.of(i - 1 + (a > b ? Interpolation.clamp(a / (a - b), 0, 1) : 0));
            }
        }
        return OptionalDouble.empty();
    }

    /** The same over all points. */
    public OptionalDouble firstFall(ToDoubleFunction<P> quantity) {
        return firstFall(quantity, 0, points.size() - 1);
    }

    /** Value of a quantity at a place, straight between the points. */
    public double value(double place, ToDoubleFunction<P> quantity) {
        int i = (int) Interpolation.clamp(Math.floor(place), 0, points.size() - 2.0);
        return Interpolation.between(
                quantity.applyAsDouble(points.get(i)), quantity.applyAsDouble(points.get(i + 1)), place - i);
    }

    /**
     * Top of a parabola.
     *
     * @param alpha angle of attack there, rad
     * @param lift lift coefficient there
     */
    public record Peak(double alpha, double lift) {

        /** Top of the parabola through three points of which the middle one is the highest. */
        public static Peak of(Point left, Point middle, Point right) {
            double[] angles = {left.alpha(), middle.alpha(), right.alpha()};
            double[] lifts = {left.lift(), middle.lift(), right.lift()};
            return ParabolaTop.through(angles, lifts)
                    .map(top -> new Peak(top.x(), top.y()))
                    .orElseGet(() -> new Peak(middle.alpha(), middle.lift()));
        }
    }
}
