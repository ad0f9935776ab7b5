package throwline.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import throwline.numerics.Interpolation;

/**
 * Makes the drag tables of an airfoil at its measured Reynolds numbers: drag in lift as measured, short runs carried on
 * with the shape of the nearest longer one, growth up to the stall and the state past it by laws fitted to the runs that
 * were measured that far (computed: Clark Y, E214C, NACA 0009, E472, NACA 63-215 and 63-415).
 */
final class DragStations {

    /** As in {@link LiftStations} (methods manual 3.1). */
    private static final double SAME_SPEED = 0.08;

    /**
     * Growth of ln drag per radian beyond the last point, up to and past a gentle stall: 0.2 a degree, the middle over the
     * last three degrees of 90 runs, of which nine of ten lie between 0.09 and 0.42 (computed; methods manual 3.4).
     */
    private static final double GROWTH = Math.toDegrees(0.2);

    /**
     * Drag of a fully separated section above lift times tangent of the angle, as NACA 63-215 and 63-415 past 24 degrees and
     * E423 past 6 have it within 14 % (computed; methods manual 3.4).
     */
    private static final double SEPARATED_EXTRA = 0.02;

    /**
     * Below the measured lift the logarithm of drag rises as at the end of the run, within limits (PRACTICE) that hold the
     * middle half of 158 runs, 1.0 to 2.5 per unit of lift, and most of the rest (methods manual 3.4).
     */
    private static final double LEAST_LOWER_SLOPE = 0.3;

    private static final double MOST_LOWER_SLOPE = 2.5;

    /** It stops rising at this drag, or at the last measured if that is higher (practice). */
    private static final double MOST_LOWER_DRAG = 0.08;

    private static final double DEGREE = Math.toRadians(1);

    /** Drag by the lower stall begins to grow this far above it, on the side that no run reaches (PRACTICE). */
    private static final double LOWER_GROWS = 4 * DEGREE;

    /**
     * A drag run is carried on by lift to no nearer than this below the most lift, where lift no longer tells drag
     * (PRACTICE).
     */
    private static final double BELOW_MOST = 0.02;

    /**
     * Share of lift lost past the stall at which drag begins to be, and within which it becomes, that of a separated section:
     * a twentieth is the scatter, a third what thick sections lose at once (NACA 2415 and S8036, 34 to 39 %, computed).
     */
    private static final double LOST_BEGINS = 0.05;

    private static final double LOST_WITHIN = 0.3;

    private final boolean symmetric;

    DragStations(boolean symmetric) {
        this.symmetric = symmetric;
    }

    /**
     * Tables in rising order of Reynolds number; empty where no run measured drag.
     *
     * @param runs runs at one deflection
     * @param liftAt the lift curve at a Reynolds number
     */
    List<DragStation> make(List<PolarRun> runs, DoubleFunction<LiftStation> liftAt) {
        List<DragRun> usable = runs.stream()
                .flatMap(run -> DragRun.of(run, symmetric).stream())
                .sorted(Comparator.comparingDouble(DragRun::reynolds))
                .toList();
        List<DragStation> stations = new ArrayList<>();
        double sharing = 0;
        for (DragRun run : usable) {
            DragStation station = station(run, usable, liftAt.apply(run.reynolds()));
            int last = stations.size() - 1;
            if (last >= 0 && Math.log(run.reynolds() / stations.get(last).reynolds()) < SAME_SPEED) {
                sharing++;
                DragStation before = stations.get(last);
                double weight = 1 / (sharing + 1);
                double reynolds = before.reynolds() + weight * (run.reynolds() - before.reynolds());
                stations.set(last, before.blend(station, weight, reynolds));
            } else {
                sharing = 0;
                stations.add(station);
            }
        }
        return stations;
    }

    private DragStation station(DragRun run, List<DragRun> all, LiftStation lift) {
        double top = all.stream().mapToDouble(DragRun::highestLift).max().orElse(run.highestLift());
        double[] byLift = new double[DragStation.STEPS];
        Arrays.setAll(byLift, i -> logByLift(run, all, Math.min(DragStation.liftAt(i), top)));
        if (symmetric) {
            double[] asRead = byLift.clone();
            Arrays.setAll(byLift, i -> 0.5 * (asRead[i] + DragStation.logDrag(asRead, -DragStation.liftAt(i))));
        }
        return new DragStation(run.reynolds(), byLift, byNode(run, byLift, lift, top));
    }

    private static double logByLift(DragRun run, List<DragRun> all, double lift) {
        if (lift < run.lowestLift()) {
            double slope = Interpolation.clamp(-run.lowerSlope(), LEAST_LOWER_SLOPE, MOST_LOWER_SLOPE);
            double last = run.logByLift(run.lowestLift());
            return Math.min(last + slope * (run.lowestLift() - lift), Math.max(last, Math.log(MOST_LOWER_DRAG)));
        }
        if (lift <= run.highestLift()) {
            return run.logByLift(lift);
        }
        DragRun donor = all.stream()
                .filter(other -> other.highestLift() > run.highestLift())
                .min(Comparator.comparingDouble(other -> Math.abs(Math.log(other.reynolds() / run.reynolds()))))
                .orElse(run);
        double from = run.highestLift();
        double to = Math.min(lift, donor.highestLift());
        double reached = run.logByLift(from) + donor.logByLift(to) - donor.logByLift(from);
        return lift > to ? reached + logByLift(donor, all, lift) - donor.logByLift(to) : reached;
    }

    private double[] byNode(DragRun run, double[] byLift, LiftStation lift, double top) {
        double[] byNode = new double[NodeLayout.COUNT];
        double[] alpha = lift.alpha();
        double offset = run.angleOffset(lift);
        double last = Math.max(run.highestAngle() + offset, lift.angleOf(Math.min(top, lift.maxLift() - BELOW_MOST)));
        double first = symmetric ? run.lowestAngle() + offset : lift.lowerStallAngle() + LOWER_GROWS;
        for (int i = 0; i < byNode.length; i++) {
            double at = alpha[i] - offset;
            byNode[i] = at >= run.lowestAngle() && at <= run.highestAngle() && (symmetric || alpha[i] >= first)
                    ? run.logByAngle(at)
                    : DragStation.logDrag(byLift, lift.lift()[i]);
        }
        int lastNode = nodeBelow(alpha, last);
        for (int i = lastNode + 1; i < alpha.length; i++) {
            byNode[i] = grown(byNode[lastNode], alpha[i] - alpha[lastNode], lift, i, NodeLayout.STALL);
        }
        int firstNode = nodeBelow(alpha, first) + 1;
        for (int i = firstNode - 1; i >= 0; i--) {
            byNode[i] = grown(byNode[firstNode], alpha[firstNode] - alpha[i], lift, i, NodeLayout.LOWER_STALL);
        }
        return byNode;
    }

    private static int nodeBelow(double[] alpha, double angle) {
        int i = 0;
        while (i < alpha.length - 2 && alpha[i + 1] <= angle) {
            i++;
        }
        return i;
    }

    /** Drag beyond what was measured: growing, and going over to a separated section's as lift is lost past the stall. */
    private static double grown(double logStart, double beyond, LiftStation lift, int node, int stall) {
        double alpha = lift.alpha()[node];
        double separated = Math.abs(lift.lift()[node] * Math.tan(alpha)) + SEPARATED_EXTRA;
        double grown = Math.min(Math.exp(logStart + GROWTH * beyond), Math.max(separated, Math.exp(logStart)));
        boolean past = stall == NodeLayout.STALL ? node > stall : node < stall;
        if (!past) {
            return Math.log(grown);
        }
        double lost = 1 - lift.lift()[node] / lift.lift()[stall];
        double share = Ramp.smooth((lost - LOST_BEGINS) / LOST_WITHIN);
        return Math.log((1 - share) * grown + share * separated);
    }
}
