package throwline.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import throwline.section.PolarRun.Point;

/** The drag points of one run, its attached part over lift and the whole over angle. Immutable. */
final class DragRun {

    /** Fewest points with drag that tell a shape. */
    private static final int FEWEST = 3;

    /**
     * A fall of this much lift, once there is some, ends the attached part, as in {@link LiftRun} (methods manual 3.1).
     */
    private static final double FALL = 0.03;

    private static final double SOME_LIFT = 0.4;

    /** Lift that rises by less from point to point is level: a tenth of the scatter of two runs (PRACTICE). */
    private static final double LEVEL = 0.002;

    /** A mirrored point this near to a measured one is the same (PRACTICE: points lie about a degree apart). */
    private static final double SAME_ANGLE = Math.toRadians(0.3);

    /**
     * Share at each end of the attached part, where runs bend, that does not count for their offset in angle (PRACTICE).
     */
    private static final double ENDS = 0.2;

    private final double reynolds;
    private final List<Point> points;
    private final List<Point> attached;
    private final MonotoneCubic overLift;
    private final MonotoneCubic overAngle;

    private DragRun(double reynolds, List<Point> points) {
        this.reynolds = reynolds;
        this.points = points;
        this.attached = attachedPart(points);
        this.overLift =
                MonotoneCubic.through(attached.stream().mapToDouble(Point::lift).toArray(), logs(attached));
        this.overAngle =
                MonotoneCubic.through(points.stream().mapToDouble(Point::alpha).toArray(), logs(points));
    }

    /** A run's drag; empty where it has fewer than three points with drag. */
    static Optional<DragRun> of(PolarRun run, boolean symmetric) {
        List<Point> known = new ArrayList<>(
                run.points().stream().filter(point -> point.drag() > 0).toList());
        known.sort(Comparator.comparingDouble(Point::alpha));
        if (known.size() < FEWEST) {
            return Optional.empty();
        }
        if (symmetric) {
            double lowest = known.get(0).alpha();
            List<Point> mirrored = known.stream()
                    .filter(point -> -point.alpha() < lowest - SAME_ANGLE)
                    .map(point -> new Point(-point.alpha(), -point.lift(), point.drag(), -point.moment()))
                    .toList();
            known.addAll(mirrored);
            known.sort(Comparator.comparingDouble(Point::alpha));
        }
        return Optional.of(new DragRun(run.reynolds(), known));
    }

    private static double[] logs(List<Point> points) {
        return points.stream().mapToDouble(point -> Math.log(point.drag())).toArray();
    }

    /** From the lowest to the highest lift, lift strictly rising. */
    private static List<Point> attachedPart(List<Point> points) {
        int top = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).lift() > points.get(top).lift()) {
                top = i;
            } else if (points.get(top).lift() - points.get(i).lift() > FALL
                    && points.get(top).lift() > SOME_LIFT) {
                break;
            }
        }
        List<Point> rising = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (int i = top; i >= 0; i--) {
            Point point = points.get(i);
            if (point.lift() < least - LEVEL) {
                rising.add(0, point);
                least = point.lift();
            }
        }
        return rising;
    }

    double reynolds() {
        return reynolds;
    }

    double lowestLift() {
        return attached.get(0).lift();
    }

    double highestLift() {
        return attached.get(attached.size() - 1).lift();
    }

    double highestAngle() {
        return points.get(points.size() - 1).alpha();
    }

    double lowestAngle() {
        return points.get(0).alpha();
    }

    double logByLift(double lift) {
        return overLift.value(lift);
    }

    double logByAngle(double alpha) {
        return overAngle.value(alpha);
    }

    /** Slope of the logarithm over lift at the lower end of the attached part. */
    double lowerSlope() {
        Point first = attached.get(0);
        Point next = attached.get(Math.min(2, attached.size() - 1));
        return Math.log(next.drag() / first.drag()) / (next.lift() - first.lift());
    }

    /** How far a lift curve's angles lie above this run's at equal lift, over the middle of the attached part, rad. */
    double angleOffset(LiftStation lift) {
        double low = lowestLift() + ENDS * (highestLift() - lowestLift());
        double high = lowestLift() + (1 - ENDS) * (highestLift() - lowestLift());
        return attached.stream()
                .filter(point -> point.lift() >= low && point.lift() <= high)
                .mapToDouble(point -> lift.angleOf(point.lift()) - point.alpha())
                .average()
                .orElse(0);
    }
}
