package throwline.section;

import java.util.ArrayList;
import java.util.List;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;

/**
 * Predicts every measured polar of an airfoil from the airfoil's other Reynolds numbers and compares with what was
 * measured.
 */
final class LeaveOneOut {

    private static final double SAME_SPEED = 0.08;

    private LeaveOneOut() {}

    /** Where the left-out Reynolds number lies among the others. */
    enum Place {
        INSIDE,
        LOW_END,
        HIGH_END
    }

    /** What is compared. */
    enum Figure {
        MAX_LIFT,
        STALL_ANGLE,
        ZERO_LIFT_ANGLE,
        DRAG
    }

    /**
     * One comparison.
     *
     * @param airfoil its name
     * @param reynolds left out
     * @param place where it lies
     * @param figure what is compared
     * @param measured coefficient, or degrees
     * @param predicted likewise
     */
    record Miss(String airfoil, double reynolds, Place place, Figure figure, double measured, double predicted) {

        /** Share for coefficients, degrees for angles; positive where predicted too large. */
        double error() {
            return switch (figure) {
                case MAX_LIFT -> predicted / measured - 1;
                case DRAG -> Math.log(predicted / measured);
                case STALL_ANGLE, ZERO_LIFT_ANGLE -> predicted - measured;
            };
        }
    }

    /** All comparisons of one airfoil at zero deflection. */
    static List<Miss> of(Airfoil airfoil) {
        List<PolarRun> clean = airfoil.runs().stream()
                .filter(run -> run.deflection() == 0 && run.kind() != Kind.TABLE)
                .toList();
        double[] speeds = speeds(clean);
        List<Miss> misses = new ArrayList<>();
        for (int i = 0; i < speeds.length && speeds.length >= 3; i++) {
            double speed = speeds[i];
            List<PolarRun> rest =
                    clean.stream().filter(run -> !same(run, speed)).toList();
            Place place = i == 0 ? Place.LOW_END : i == speeds.length - 1 ? Place.HIGH_END : Place.INSIDE;
            boolean predictable = rest.stream().anyMatch(run -> run.kind() == Kind.DRAG);
            if (predictable) {
                Airfoil without = new Airfoil(
                        airfoil.name(), "", airfoil.thickness(), airfoil.camber(), airfoil.nominalMoment(), rest);
                clean.stream()
                        .filter(run -> same(run, speed))
                        .forEach(run -> compare(airfoil, run, clean, without, place, misses));
            }
        }
        return misses;
    }

    private static boolean same(PolarRun run, double speed) {
        return Math.abs(Math.log(run.reynolds() / speed)) < SAME_SPEED;
    }

    private static double[] speeds(List<PolarRun> runs) {
        List<Double> speeds = new ArrayList<>();
        for (double reynolds :
                runs.stream().mapToDouble(PolarRun::reynolds).sorted().toArray()) {
            if (speeds.isEmpty() || Math.log(reynolds / speeds.get(speeds.size() - 1)) > SAME_SPEED) {
                speeds.add(reynolds);
            }
        }
        return speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void compare(
            Airfoil airfoil, PolarRun run, List<PolarRun> clean, Airfoil without, Place place, List<Miss> misses) {
        if (run.kind() == Kind.LIFT_DOWN) {
            return;
        }
        SectionCurve predicted =
                new MeasuredSections().curve(SectionPlace.of(without), SurfaceState.none(), run.reynolds());
        LiftRun lift = LiftRun.of(run);
        boolean best = run.kind() == Kind.LIFT_UP
                || clean.stream().noneMatch(other -> other.kind() == Kind.LIFT_UP && same(other, run.reynolds()));
        if (best && lift.reachesPeak()) {
            add(misses, airfoil, run, place, Figure.MAX_LIFT, lift.peak().lift(), predicted.maxLift());
            add(
                    misses,
                    airfoil,
                    run,
                    place,
                    Figure.STALL_ANGLE,
                    Math.toDegrees(lift.peak().alpha()),
                    Math.toDegrees(predicted.stallAngle()));
        }
        if (best) {
            double zero = zeroLift(lift.points());
            if (!Double.isNaN(zero)) {
                add(
                        misses,
                        airfoil,
                        run,
                        place,
                        Figure.ZERO_LIFT_ANGLE,
                        zero,
                        Math.toDegrees(predicted.zeroLiftAngle()));
            }
        }
        double top = 0.95 * Math.min(lift.peak().lift(), predicted.maxLift());
        for (Point point : run.points()) {
            if (point.drag() > 0
                    && point.alpha() <= lift.peak().alpha()
                    && point.lift() < top
                    && point.lift() > predicted.minLift()) {
                add(
                        misses,
                        airfoil,
                        run,
                        place,
                        Figure.DRAG,
                        point.drag(),
                        predicted.drag(angleOf(predicted, point.lift())));
            }
        }
    }

    private static void add(
            List<Miss> misses,
            Airfoil airfoil,
            PolarRun run,
            Place place,
            Figure figure,
            double measured,
            double predicted) {
        misses.add(new Miss(airfoil.name(), run.reynolds(), place, figure, measured, predicted));
    }

    private static double zeroLift(List<Point> points) {
        for (int i = points.size() - 1; i > 0; i--) {
            Point below = points.get(i - 1);
            Point above = points.get(i);
            if (below.lift() < 0 && above.lift() >= 0) {
                double share = -below.lift() / (above.lift() - below.lift());
                return Math.toDegrees(below.alpha() + share * (above.alpha() - below.alpha()));
            }
        }
        return Double.NaN;
    }

    /** Angle at which the rising curve has this lift, rad. */
    static double angleOf(SectionCurve curve, double lift) {
        double low = curve.negativeStallAngle();
        double high = curve.stallAngle();
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            if (curve.risingLift(middle) < lift) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** A share of the sizes of errors in rising order: 0.5 for the median. */
    static double quantile(List<Miss> misses, double share) {
        double[] sizes = misses.stream()
                .mapToDouble(miss -> Math.abs(miss.error()))
                .sorted()
                .toArray();
        return sizes.length == 0 ? Double.NaN : sizes[Math.min(sizes.length - 1, (int) (share * sizes.length))];
    }
}
