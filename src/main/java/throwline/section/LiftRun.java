package throwline.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import throwline.section.PolarRun.Point;

/**
 * The lift points of one run in rising order of angle, with its first peak. A run that stops before its peak can be
 * continued like another one. Immutable.
 */
final class LiftRun {

    /**
     * A fall of this much lift coefficient ends a rise: nine of ten of 976 pairs of points of two runs of one model differ by
     * less than 0.029 (computed; methods manual 3.1).
     */
    private static final double FALL = 0.03;

    /**
     * A fall that lift makes good by this much within this angle is a bubble bursting and closing, not the stall
     * (PRACTICE).
     */
    private static final double RECOVERY = 0.1;

    private static final double RECOVERY_WITHIN = Math.toRadians(8);

    /**
     * A run whose lift still rises by more than this per radian at its end has not reached its peak (0.025 a degree;
     * PRACTICE).
     */
    private static final double FLAT = Math.toDegrees(0.025);

    /** A run that goes on this far past its highest point without a fall has a flat top: one point further (PRACTICE). */
    private static final double FLAT_TOP = Math.toRadians(0.9);

    /** How much a run without a peak may still rise (PRACTICE, methods manual 3.2). */
    private static final double LAST_RISE = 0.02;

    /** Fall past the stall where nothing was measured, share of maximum lift per radian (2 % a degree, practice). */
    private static final double GENTLE_FALL = Math.toDegrees(0.02);

    /** Share of the most lift from which a top begins. */
    private static final double NEARLY_ALL = 0.99;

    /**
     * Half width of an ordinary top, rad: lift falls by 0.011 times the square of the degrees from its most (wing of NACA TN
     * 1270, computed from read data), which is a hundredth of a usual most lift one degree away.
     */
    private static final double ORDINARY_TOP = Math.toRadians(1);

    private static final double DEGREE = Math.toRadians(1);

    private final double reynolds;
    private final List<Point> points;
    private final int peak;
    private final double measuredFrom;
    private final double measuredTo;

    private LiftRun(double reynolds, List<Point> points, double measuredFrom, double measuredTo) {
        this.reynolds = reynolds;
        this.points = points;
        this.peak = firstPeak(points);
        this.measuredFrom = measuredFrom;
        this.measuredTo = measuredTo;
    }

    static LiftRun of(PolarRun run) {
        List<Point> sorted = new ArrayList<>(run.points());
        sorted.sort(Comparator.comparingDouble(Point::alpha));
        List<Point> apart = new ArrayList<>();
        for (Point point : sorted) {
            if (apart.isEmpty() || point.alpha() > apart.get(apart.size() - 1).alpha()) {
                apart.add(point);
            }
        }
        return new LiftRun(
                run.reynolds(),
                apart,
                apart.get(0).alpha(),
                apart.get(apart.size() - 1).alpha());
    }

    private static int firstPeak(List<Point> points) {
        int best = 0;
        for (int i = 1; i < points.size(); i++) {
            double lift = points.get(i).lift();
            double highest = points.get(best).lift();
            if (lift > highest) {
                best = i;
            } else if (highest - lift > FALL && highest > 0.4 && !recovers(points, best)) {
                return best;
            }
        }
        return best;
    }

    private static boolean recovers(List<Point> points, int dip) {
        Point before = points.get(dip);
        return points.stream()
                .anyMatch(point -> point.alpha() > before.alpha()
                        && point.alpha() < before.alpha() + RECOVERY_WITHIN
                        && point.lift() > before.lift() + RECOVERY);
    }

    double reynolds() {
        return reynolds;
    }

    List<Point> points() {
        return points;
    }

    Point peak() {
        return points.get(peak);
    }

    /**
     * The stall: the peak, but not more than an ordinary top's half width past where lift first comes within a hundredth of
     * the peak's. Anywhere on a flatter top the flow has long begun to separate, and the place of the peak is chance: what
     * lift gains there is less than two runs of one model differ by.
     */
    Point stall() {
        double wanted = NEARLY_ALL * peak().lift();
        int i = peak;
        while (i > 0 && points.get(i - 1).lift() >= wanted) {
            i--;
        }
        double alpha = (i > 0 ? alphaAt(wanted, i) : points.get(0).alpha()) + ORDINARY_TOP;
        if (alpha >= peak().alpha()) {
            return peak();
        }
        while (points.get(i).alpha() < alpha) {
            i++;
        }
        return i == 0 ? points.get(0) : between(points.get(i - 1), points.get(i), alpha);
    }

    /** Where lift between a point and the one before it reaches a value. */
    private double alphaAt(double lift, int above) {
        Point low = points.get(above - 1);
        Point high = points.get(above);
        return low.alpha() + (lift - low.lift()) / (high.lift() - low.lift()) * (high.alpha() - low.alpha());
    }

    private static Point between(Point low, Point high, double alpha) {
        double share = (alpha - low.alpha()) / (high.alpha() - low.alpha());
        return new Point(alpha, low.lift() + share * (high.lift() - low.lift()), Double.NaN, Double.NaN);
    }

    Point last() {
        return points.get(points.size() - 1);
    }

    /** Lowest and highest angle that was measured in this run, rad. */
    double measuredFrom() {
        return measuredFrom;
    }

    double measuredTo() {
        return measuredTo;
    }

    /** True where the run passes or flattens out at its peak. */
    boolean reachesPeak() {
        return last().alpha() - peak().alpha() > FLAT_TOP || last().lift() < peak().lift() - FALL || endSlope() < FLAT;
    }

    private double endSlope() {
        Point last = last();
        for (int i = points.size() - 2; i >= 0; i--) {
            Point point = points.get(i);
            if (last.alpha() - point.alpha() > DEGREE) {
                return (last.lift() - point.lift()) / (last.alpha() - point.alpha());
            }
        }
        return 0;
    }

    /**
     * This run carried on with the shape of another that passes its peak, shifted so that lift meets at the last point.
     *
     * @param donor a run that reaches its peak
     * @param peakRise how much higher than the donor's this run's peak is expected
     */
    LiftRun continuedLike(LiftRun donor, double peakRise) {
        double expected = Math.max(donor.peak().lift() + peakRise, last().lift() + 0.005);
        double liftShift = expected - donor.peak().lift();
        double meets = donor.angleBelowPeak(donor.peak().lift() - (expected - last().lift()));
        double angleShift = last().alpha() - meets;
        List<Point> longer = new ArrayList<>(points);
        for (Point point : donor.points) {
            double alpha = point.alpha() + angleShift;
            if (point.alpha() > meets && alpha > last().alpha() + 0.2 * DEGREE) {
                longer.add(new Point(alpha, point.lift() + liftShift, Double.NaN, Double.NaN));
            }
        }
        return new LiftRun(reynolds, longer, measuredFrom, measuredTo).withFall();
    }

    /** This run with its slope at the end rounded off to a peak, where no other run tells how it goes on. */
    LiftRun roundedOff() {
        double slope = Math.max(endSlope(), 0);
        double length = slope > 0 ? Math.min(2 * LAST_RISE / slope, 2 * DEGREE) : DEGREE;
        List<Point> longer = new ArrayList<>(points);
        for (int i = 1; i <= 4; i++) {
            double s = length * i / 4;
            double lift = last().lift() + slope * s * (1 - s / (2 * length));
            longer.add(new Point(last().alpha() + s, lift, Double.NaN, Double.NaN));
        }
        return new LiftRun(reynolds, longer, measuredFrom, measuredTo).withFall();
    }

    /** This run with a gentle fall where it ends at its peak. */
    LiftRun withFall() {
        double past = last().alpha() - peak().alpha();
        if (past > 3 * DEGREE) {
            return this;
        }
        List<Point> longer = new ArrayList<>(points);
        for (int i = 1; i <= 4; i++) {
            double s = i * 1.5 * DEGREE;
            double lift = last().lift() - GENTLE_FALL * peak().lift() * s;
            longer.add(new Point(last().alpha() + s, lift, Double.NaN, Double.NaN));
        }
        return new LiftRun(reynolds, longer, measuredFrom, measuredTo);
    }

    /**
     * This run of a symmetric airfoil made odd: where both sides were measured their mean, which takes out the setting of
     * the model in the tunnel (up to 0.6 degrees), beyond that the upper side.
     */
    LiftRun mirrored() {
        MonotoneCubic curve = MonotoneCubic.through(
                points.stream().mapToDouble(Point::alpha).toArray(),
                points.stream().mapToDouble(Point::lift).toArray());
        double both = Math.max(0, -points.get(0).alpha());
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (Point point : points) {
            double alpha = point.alpha();
            if (alpha > 0.2 * DEGREE) {
                double share = both > 0 ? 0.5 * (1 - Ramp.smooth((alpha / both - 0.6) / 0.4)) : 0;
                double lift = (1 - share) * point.lift() - share * curve.value(-alpha);
                upper.add(new Point(alpha, lift, point.drag(), point.moment()));
                lower.add(0, new Point(-alpha, -lift, point.drag(), -point.moment()));
            }
        }
        lower.add(new Point(0, 0, Double.NaN, Double.NaN));
        lower.addAll(upper);
        return new LiftRun(reynolds, lower, -measuredTo, measuredTo);
    }

    private double angleBelowPeak(double wanted) {
        for (int i = peak; i > 0; i--) {
            Point below = points.get(i - 1);
            Point above = points.get(i);
            if (below.lift() <= wanted) {
                double share = (wanted - below.lift()) / (above.lift() - below.lift());
                return below.alpha() + share * (above.alpha() - below.alpha());
            }
        }
        return points.get(0).alpha();
    }
}
