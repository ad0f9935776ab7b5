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

    /** Drag is compared up to this share of maximum lift. */
    private static final double TOP = 0.95;

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
     * A measured run and what the other Reynolds numbers say of it.
     *
     * @param airfoil its name
     * @param run what was measured
     * @param best true where this is the run that tells lift at this Reynolds number
     * @param place where it lies
     * @param predicted from the rest
     */
    record Prediction(String airfoil, PolarRun run, boolean best, Place place, SectionCurve predicted) {}

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

    /** All predictions of one airfoil at zero deflection; none where it was measured at fewer than three speeds. */
    static List<Prediction> predictions(Airfoil airfoil) {
        List<PolarRun> clean = airfoil.runs().stream()
                .filter(run -> run.deflection() == 0 && run.kind() != Kind.TABLE)
                .toList();
        double[] speeds = speeds(clean);
        List<Prediction> predictions = new ArrayList<>();
        for (int i = 0; i < speeds.length && speeds.length >= 3; i++) {
            double speed = speeds[i];
            Place place = i == 0 ? Place.LOW_END : i == speeds.length - 1 ? Place.HIGH_END : Place.INSIDE;
            List<PolarRun> rest =
                    clean.stream().filter(run -> !same(run, speed)).toList();
            if (rest.stream().noneMatch(run -> run.kind() == Kind.DRAG)) {
                continue;
            }
            Airfoil without = new Airfoil(
                    airfoil.name(), "", airfoil.thickness(), airfoil.camber(), airfoil.nominalMoment(), rest);
            List<PolarRun> here = clean.stream()
                    .filter(run -> same(run, speed) && run.kind() != Kind.LIFT_DOWN)
                    .toList();
            boolean lift = here.stream().anyMatch(run -> run.kind() == Kind.LIFT_UP);
            for (PolarRun run : here) {
                predictions.add(new Prediction(
                        airfoil.name(),
                        run,
                        run.kind() == Kind.LIFT_UP || !lift,
                        place,
                        new MeasuredSections().curve(SectionPlace.of(without), SurfaceState.none(), run.reynolds())));
            }
        }
        return predictions;
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

    /** All comparisons of one airfoil. */
    static List<Miss> of(Airfoil airfoil) {
        List<Miss> misses = new ArrayList<>();
        for (Prediction prediction : predictions(airfoil)) {
            LiftRun lift = LiftRun.of(prediction.run());
            SectionCurve curve = prediction.predicted();
            if (prediction.best() && lift.reachesPeak()) {
                misses.add(miss(prediction, Figure.MAX_LIFT, lift.peak().lift(), curve.maxLift()));
                misses.add(miss(
                        prediction,
                        Figure.STALL_ANGLE,
                        Math.toDegrees(lift.peak().alpha()),
                        Math.toDegrees(curve.stallAngle())));
            }
            double zero = zeroLift(lift.points());
            if (prediction.best() && !Double.isNaN(zero)) {
                misses.add(miss(prediction, Figure.ZERO_LIFT_ANGLE, zero, Math.toDegrees(curve.zeroLiftAngle())));
            }
            double top = TOP * Math.min(lift.peak().lift(), curve.maxLift());
            for (Point point : prediction.run().points()) {
                boolean attached = point.alpha() <= lift.peak().alpha() && point.lift() > curve.minLift();
                if (point.drag() > 0 && attached && point.lift() < top) {
                    misses.add(miss(prediction, Figure.DRAG, point.drag(), curve.drag(angleOf(curve, point.lift()))));
                }
            }
        }
        return misses;
    }

    private static Miss miss(Prediction of, Figure figure, double measured, double predicted) {
        return new Miss(of.airfoil(), of.run().reynolds(), of.place(), figure, measured, predicted);
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
