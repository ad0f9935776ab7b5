package throwline.section;

import java.util.OptionalDouble;

/**
 * A section curve on an {@link AngleGrid}: monotone cubics for lift, its hull and drag, straight lines for the moment.
 * Immutable.
 */
final class TabulatedCurve implements SectionCurve {

    private final AngleGrid grid;
    private final Nodes lift;
    private final Nodes rising;
    private final Nodes drag;
    private final double[] moment;
    private final Traits traits;
    private final double zeroLiftAngle;

    /**
     * A curve from its values at all angles of a grid.
     *
     * @param grid the angles
     * @param lift lift coefficients
     * @param drag drag coefficients
     * @param moment quarter-chord moment coefficients
     * @param traits what else is known of it
     */
    TabulatedCurve(AngleGrid grid, double[] lift, double[] drag, double[] moment, Traits traits) {
        this.grid = grid;
        this.moment = moment;
        this.traits = traits;
        double[] alpha = grid.angles();
        this.lift = new Nodes(lift, MonotoneCubic.slopes(alpha, lift));
        this.drag = new Nodes(drag, MonotoneCubic.slopes(alpha, drag));
        double[] hull = hull(lift);
        double[] hullSlope = new double[lift.length];
        MonotoneCubic.fillSlopes(alpha, hull, hullSlope, AngleGrid.LOWER_STALL, AngleGrid.STALL);
        hullSlope[AngleGrid.LOWER_STALL] = 0;
        hullSlope[AngleGrid.STALL] = 0;
        rising = new Nodes(hull, hullSlope);
        zeroLiftAngle = findZeroLift();
    }

    /** Values and slopes per rad at the nodes of the grid. */
    static final class Nodes {
        private final double[] value;
        private final double[] slope;

        Nodes(double[] value, double[] slope) {
            this.value = value;
            this.slope = slope;
        }

        double[] value() {
            return value;
        }

        double[] slope() {
            return slope;
        }
    }

    /**
     * What is known of a curve beside its values.
     *
     * @param attachedSlope per rad
     * @param recovery how far below the stall lift comes back with falling angle, rad; empty where not measured
     * @param hinge hinge moments
     * @param bases what every stretch rests on
     */
    record Traits(double attachedSlope, OptionalDouble recovery, HingeMoment hinge, BasisMap bases) {

        Traits blend(Traits other, double weight) {
            OptionalDouble both = recovery.isPresent() && other.recovery.isPresent()
                    ? OptionalDouble.of((1 - weight) * recovery.getAsDouble() + weight * other.recovery.getAsDouble())
                    : OptionalDouble.empty();
            return new Traits(
                    attachedSlope + weight * (other.attachedSlope - attachedSlope),
                    both,
                    hinge.blend(other.hinge, weight),
                    bases.blend(other.bases, weight));
        }
    }

    /** Between the stalls the running maximum upwards, level outside. */
    private static double[] hull(double[] lift) {
        double[] hull = new double[lift.length];
        double most = Math.max(lift[AngleGrid.STALL], lift[AngleGrid.LOWER_STALL]);
        double reached = lift[AngleGrid.LOWER_STALL];
        for (int i = 0; i < hull.length; i++) {
            if (i > AngleGrid.LOWER_STALL) {
                reached = i >= AngleGrid.STALL ? most : Math.min(most, Math.max(reached, lift[i]));
            }
            hull[i] = reached;
        }
        return hull;
    }

    /** This curve and another, landmark with landmark; weight 0 gives this. */
    TabulatedCurve blend(TabulatedCurve other, double weight) {
        return new TabulatedCurve(
                grid.blend(other.grid, weight),
                NodeLayout.blend(lift.value, other.lift.value, weight),
                NodeLayout.blend(drag.value, other.drag.value, weight),
                NodeLayout.blend(moment, other.moment, weight),
                traits.blend(other.traits, weight));
    }

    /** Where the hull crosses zero; on the attached slope beyond it where it does not. */
    private double findZeroLift() {
        if (minLift() >= 0) {
            return negativeStallAngle() - minLift() / traits.attachedSlope;
        }
        if (maxLift() <= 0) {
            return stallAngle() - maxLift() / traits.attachedSlope;
        }
        int i = AngleGrid.LOWER_STALL;
        while (rising.value[i + 1] < 0) {
            i++;
        }
        double low = i;
        double high = i + 1;
        for (int k = 0; k < 40; k++) {
            double middle = 0.5 * (low + high);
            if (grid.cubic(rising.value, rising.slope, middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return AngleGrid.straight(grid.angles(), high);
    }

    AngleGrid grid() {
        return grid;
    }

    Nodes liftNodes() {
        return lift;
    }

    Nodes risingNodes() {
        return rising;
    }

    Nodes dragNodes() {
        return drag;
    }

    double[] momentNodes() {
        return moment;
    }

    @Override
    public double lift(double alpha) {
        return grid.cubic(lift.value, lift.slope, grid.place(alpha));
    }

    @Override
    public double drag(double alpha) {
        return grid.cubic(drag.value, drag.slope, grid.place(alpha));
    }

    @Override
    public double moment(double alpha) {
        return AngleGrid.straight(moment, grid.place(alpha));
    }

    @Override
    public double hinge(double alpha) {
        return traits.hinge.at(alpha);
    }

    @Override
    public double risingLift(double alpha) {
        return grid.cubic(rising.value, rising.slope, grid.place(alpha));
    }

    @Override
    public double risingLiftSlope(double alpha) {
        return Math.max(0, grid.cubicSlope(rising.value, rising.slope, grid.place(alpha)));
    }

    @Override
    public double zeroLiftAngle() {
        return zeroLiftAngle;
    }

    @Override
    public double stallAngle() {
        return grid.angles()[AngleGrid.STALL];
    }

    @Override
    public double negativeStallAngle() {
        return grid.angles()[AngleGrid.LOWER_STALL];
    }

    @Override
    public double maxLift() {
        return rising.value[AngleGrid.STALL];
    }

    @Override
    public double minLift() {
        return rising.value[AngleGrid.LOWER_STALL];
    }

    @Override
    public double attachedSlope() {
        return traits.attachedSlope;
    }

    @Override
    public OptionalDouble recoveryAngle() {
        OptionalDouble below = traits.recovery;
        return below.isPresent() ? OptionalDouble.of(stallAngle() - below.getAsDouble()) : below;
    }

    @Override
    public Basis basis(double alpha) {
        return traits.bases.at(alpha);
    }
}
