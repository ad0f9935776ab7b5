package throwline.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import throwline.numerics.Interpolation;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;

/**
 * Makes the lift curves of an airfoil at its measured Reynolds numbers: the lift run with rising angle where there is one,
 * else the drag run, short runs carried on, the lower side completed.
 */
final class LiftStations {

    /**
     * Runs of one airfoil nearer than this in ln Re are the same speed of the tunnel: all files of the library lie within
     * 0.017 or further apart than 0.11 (computed; methods manual 3.1).
     */
    private static final double SAME_SPEED = 0.08;

    /** The lower stall of cambered airfoils is in no file: minus maximum lift plus 0.12 per per cent camber (practice). */
    private static final double LOWER_STALL_PER_CAMBER = 12;

    /** The lower stall lies 2 degrees beyond where the straight slope meets its lift (practice). */
    private static final double LOWER_ROUNDING = Math.toRadians(2);

    /** Below this camber an airfoil is symmetric: models are no more accurate (PRACTICE, methods manual 3.1). */
    private static final double SYMMETRIC = 0.003;

    /** A lower side that falls by less than this per radian, half of thin-airfoil theory, has begun to stall (PRACTICE). */
    private static final double LOWER_FLAT = Math.PI;

    /** What lift such a lower side still loses (practice; E423 and S1223 lose 0.05 to 0.3 there). */
    private static final double LAST_FALL = 0.1;

    /** Passes that take out scatter over less than the distance of two points (PRACTICE, methods manual 3.1). */
    private static final int SMOOTHING = 8;

    /**
     * Slopes of lift per radian to carry a curve on along: half of 410 measured runs have more than 6.1; what lies outside
     * are bubbles that burst (computed; the limits PRACTICE, methods manual 3.1).
     */
    private static final double LEAST_SLOPE = 4.5;

    private static final double MOST_SLOPE = 7.2;

    private static final double DEGREE = Math.toRadians(1);

    private final Airfoil airfoil;
    private final double deflectionLift;

    /**
     * Sets up for one airfoil.
     *
     * @param airfoil the airfoil
     * @param deflectionLift what the deflection of these runs adds to maximum lift, and to the lower stall's lift
     */
    LiftStations(Airfoil airfoil, double deflectionLift) {
        this.airfoil = airfoil;
        this.deflectionLift = deflectionLift;
    }

    /** Curves in rising order of Reynolds number from runs at one deflection. */
    List<LiftStation> make(List<PolarRun> runs) {
        List<LiftRun> chosen = choose(runs);
        List<LiftRun> complete = chosen.stream()
                .filter(LiftRun::reachesPeak)
                .map(LiftRun::withFall)
                .toList();
        List<LiftStation> stations = new ArrayList<>();
        for (LiftRun run : chosen) {
            stations.add(station(run.reachesPeak() ? run.withFall() : carriedOn(run, complete), run));
        }
        return stations;
    }

    private static List<LiftRun> choose(List<PolarRun> runs) {
        List<PolarRun> kept = new ArrayList<>();
        for (Kind kind : List.of(Kind.LIFT_UP, Kind.DRAG)) {
            runs.stream()
                    .filter(run -> run.kind() == kind && run.points().size() >= 3)
                    .sorted(Comparator.comparingInt(
                            (PolarRun run) -> -run.points().size()))
                    .filter(run -> kept.stream().noneMatch(other -> sameSpeed(run, other)))
                    .forEach(kept::add);
        }
        return kept.stream()
                .sorted(Comparator.comparingDouble(PolarRun::reynolds))
                .map(LiftRun::of)
                .toList();
    }

    private static boolean sameSpeed(PolarRun a, PolarRun b) {
        return Math.abs(Math.log(a.reynolds() / b.reynolds())) < SAME_SPEED;
    }

    /** A run past the angle where its neighbour stalls never attached: it has no peak to be carried on to. */
    private LiftRun carriedOn(LiftRun run, List<LiftRun> complete) {
        return complete.stream()
                .min(Comparator.comparingDouble(donor -> Math.abs(Math.log(donor.reynolds() / run.reynolds()))))
                .filter(donor -> run.measuredTo() < donor.peak().alpha() + 2 * DEGREE)
                .map(donor ->
                        run.continuedLike(donor, ReynoldsLaw.of(airfoil).maxLiftRise(donor.reynolds(), run.reynolds())))
                .orElseGet(run::roundedOff);
    }

    private LiftStation station(LiftRun complete, LiftRun measured) {
        boolean symmetric = airfoil.camber() < SYMMETRIC && deflectionLift == 0;
        List<Point> points = (symmetric ? complete.mirrored() : complete).points();
        Point peak = complete.stall();
        double zeroLift = zeroLiftAngle(points, peak);
        int lower = symmetric ? -1 : lowerStall(points, zeroLift);
        double lowerAngle = symmetric
                ? 2 * zeroLift - peak.alpha()
                : points.get(Math.max(lower, 0)).alpha();
        MonotoneCubic curve = curve(points);
        if (lower < 0 && !symmetric) {
            double slope = slopeAbove(curve, zeroLift, peak);
            Point first = points.get(0);
            double least = -(peak.lift() - deflectionLift) + LOWER_STALL_PER_CAMBER * airfoil.camber() + deflectionLift;
            double lowest = hasBegunToStall(points)
                    ? Math.min(0, first.lift()) - LAST_FALL
                    : Math.min(least, first.lift() - 0.02);
            lowerAngle = Math.min(zeroLift + lowest / slope - LOWER_ROUNDING, first.alpha() - DEGREE);
            points = withLowerSide(points, lowerAngle, lowest, slope);
            curve = curve(points);
        }
        double[] alpha = NodeLayout.angles(lowerAngle, zeroLift, peak.alpha());
        double[] lift = new double[NodeLayout.COUNT];
        for (int i = 0; i < lift.length; i++) {
            lift[i] = curve.value(alpha[i]);
        }
        smooth(alpha, lift);
        double slope = Interpolation.clamp(LiftStation.attachedSlope(alpha, lift), LEAST_SLOPE, MOST_SLOPE);
        double[] moment = moments(complete, alpha);
        MeasuredReach reach = new MeasuredReach(
                lower >= 0 || symmetric ? 0 : measured.measuredFrom() - lowerAngle,
                Math.max(0, peak.alpha() - measured.measuredTo()),
                Math.max(2 * DEGREE, complete.last().alpha() - peak.alpha()),
                hasMoment(measured) ? Math.max(0, measured.measuredTo() - peak.alpha()) : 0);
        return new LiftStation(measured.reynolds(), alpha, lift, moment, slope, reach);
    }

    /**
     * Takes the scatter between neighbouring points (0.02 in lift, a degree apart) out of the attached part, else the slope
     * of lift would carry it threefold. Repeated means with the neighbours' chord widen to about 0.7 degrees and leave a
     * straight line straight; nothing moves at the stalls.
     */
    private static void smooth(double[] alpha, double[] lift) {
        for (int pass = 0; pass < SMOOTHING; pass++) {
            double before = lift[NodeLayout.LOWER_STALL];
            for (int i = NodeLayout.LOWER_STALL + 1; i < NodeLayout.STALL; i++) {
                double share = (alpha[i] - alpha[i - 1]) / (alpha[i + 1] - alpha[i - 1]);
                double chord = before + share * (lift[i + 1] - before);
                double away = Math.min(alpha[i] - alpha[NodeLayout.LOWER_STALL], alpha[NodeLayout.STALL] - alpha[i]);
                before = lift[i];
                lift[i] += 0.5 * Ramp.smooth(away / (3 * DEGREE)) * (chord - lift[i]);
            }
        }
    }

    /** The last upward crossing before the peak; beyond the first point on a straight line. */
    private static double zeroLiftAngle(List<Point> points, Point peak) {
        for (int i = lastUpTo(points, peak); i > 0; i--) {
            Point below = points.get(i - 1);
            Point above = points.get(i);
            if (below.lift() < 0 && above.lift() >= 0) {
                double share = -below.lift() / (above.lift() - below.lift());
                return below.alpha() + share * (above.alpha() - below.alpha());
            }
        }
        Point first = points.get(0);
        return first.alpha() - first.lift() / (2 * Math.PI);
    }

    private static int lastUpTo(List<Point> points, Point end) {
        int i = points.size() - 1;
        while (i > 0 && points.get(i).alpha() > end.alpha()) {
            i--;
        }
        return i;
    }

    /** Index of a measured lower stall, or -1. */
    private static int lowerStall(List<Point> points, double zeroLift) {
        int lowest = -1;
        for (int i = points.size() - 1; i >= 0; i--) {
            Point point = points.get(i);
            if (point.alpha() < zeroLift
                    && (lowest < 0 || point.lift() < points.get(lowest).lift())) {
                lowest = i;
            }
        }
        if (lowest < 0) {
            return -1;
        }
        return points.get(0).lift() - points.get(lowest).lift() > 0.03 ? lowest : -1;
    }

    private static boolean hasBegunToStall(List<Point> points) {
        Point first = points.get(0);
        return points.stream()
                .filter(point -> point.alpha() - first.alpha() > 1.9 * DEGREE)
                .findFirst()
                .map(point -> (point.lift() - first.lift()) / (point.alpha() - first.alpha()) < LOWER_FLAT)
                .orElse(false);
    }

    private static double slopeAbove(MonotoneCubic curve, double zeroLift, Point peak) {
        double span = 0.5 * (peak.alpha() - zeroLift);
        return Interpolation.clamp(curve.value(zeroLift + span) / span, LEAST_SLOPE, MOST_SLOPE);
    }

    /** Adds a rounded lower side from the first point down to the lower stall. */
    private static List<Point> withLowerSide(List<Point> points, double angle, double lift, double slope) {
        Point first = points.get(0);
        double width = first.alpha() - angle;
        double right = Math.min(slope, 3 * (first.lift() - lift) / width);
        List<Point> longer = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double s = width * i / 8;
            double value = MonotoneCubic.value(s, width, lift, first.lift(), 0, right);
            longer.add(new Point(angle + s, value, Double.NaN, Double.NaN));
        }
        longer.addAll(points);
        return longer;
    }

    private static MonotoneCubic curve(List<Point> points) {
        return MonotoneCubic.through(
                points.stream().mapToDouble(Point::alpha).toArray(),
                points.stream().mapToDouble(Point::lift).toArray());
    }

    private static boolean hasMoment(LiftRun run) {
        return run.points().stream()
                        .filter(point -> !Double.isNaN(point.moment()))
                        .count()
                > run.points().size() / 2;
    }

    private double[] moments(LiftRun run, double[] alpha) {
        List<Point> known = run.points().stream()
                .filter(point -> !Double.isNaN(point.moment()))
                .toList();
        double[] moment = new double[alpha.length];
        Arrays.fill(moment, airfoil.nominalMoment());
        if (known.size() >= 3) {
            MonotoneCubic curve = MonotoneCubic.through(
                    known.stream().mapToDouble(Point::alpha).toArray(),
                    known.stream().mapToDouble(Point::moment).toArray());
            Arrays.setAll(moment, i -> curve.value(alpha[i]));
        }
        return moment;
    }
}
