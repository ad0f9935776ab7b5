package throwline.section;

import java.util.Arrays;
import java.util.OptionalDouble;

/** A section curve on an {@link AngleGrid}, a monotone cubic on every interval. Immutable. */
final class TabulatedCurve implements SectionCurve {

    private final AngleGrid grid;
    private final Column lift;
    private final Column rising;
    private final Column drag;
    private final Column moment;
    private final Column hinge;
    private final Traits traits;
    private final double zeroLiftAngle;
    /**
     * A curve from its values at all angles of a grid.
     *
     * @param grid the angles
     * @param values lift, drag, moment and hinge moment
     * @param traits what else is known of it
     */
    TabulatedCurve(AngleGrid grid, Values values, Traits traits) {
        this.grid = grid;
        double[] alpha = grid.angles();
        lift = new Column(values.lift, MonotoneCubic.slopes(alpha, values.lift));
        rising = rising(alpha, values.lift);
        drag = new Column(values.drag, MonotoneCubic.slopes(alpha, values.drag));
        moment = new Column(values.moment, MonotoneCubic.slopes(alpha, values.moment));
        hinge = new Column(values.hinge, MonotoneCubic.slopes(alpha, values.hinge));
        this.traits = traits;
        zeroLiftAngle = findZeroLift();
    }

    /**
     * What is known of a curve beside its values.
     *
     * @param attachedSlope per rad
     * @param recovery how far below the stall lift comes back with falling angle, rad; empty where not measured
     * @param bases what every stretch rests on
     */
    record Traits(double attachedSlope, OptionalDouble recovery, BasisMap bases) {

        Traits blend(Traits other, double weight) {
            OptionalDouble both = recovery.isPresent() && other.recovery.isPresent()
                    ? OptionalDouble.of((1 - weight) * recovery.getAsDouble() + weight * other.recovery.getAsDouble())
                    : OptionalDouble.empty();
            return new Traits(
                    attachedSlope + weight * (other.attachedSlope - attachedSlope),
                    both,
                    bases.blend(other.bases, weight));
        }
    }

    /**
     * Values at all angles of a grid.
     */
    static final class Values {

        private final double[] lift;
        private final double[] drag;
        private final double[] moment;
        private final double[] hinge;

        /**
         * Holds its arrays as they are.
         *
         * @param lift lift coefficients
         * @param drag drag coefficients
         * @param moment quarter-chord moment coefficients
         * @param hinge hinge moment coefficients
         */
        Values(double[] lift, double[] drag, double[] moment, double[] hinge) {
            this.lift = lift;
            this.drag = drag;
            this.moment = moment;
            this.hinge = hinge;
        }

        double[] lift() {
            return lift;
        }

        double[] drag() {
            return drag;
        }

        double[] moment() {
            return moment;
        }

        double[] hinge() {
            return hinge;
        }

        Values blend(Values other, double weight) {
            return new Values(
                    NodeLayout.blend(lift, other.lift, weight),
                    NodeLayout.blend(drag, other.drag, weight),
                    NodeLayout.blend(moment, other.moment, weight),
                    NodeLayout.blend(hinge, other.hinge, weight));
        }
    }

    private static final class Column {

        private final double[] value;
        private final double[] slope;

        Column(double[] value, double[] slope) {
            this.value = value;
            this.slope = slope;
        }

        double at(double[] x, int i, double angle) {
            return MonotoneCubic.value(angle - x[i], x[i + 1] - x[i], value[i], value[i + 1], slope[i], slope[i + 1]);
        }

        double slopeAt(double[] x, int i, double angle) {
            return MonotoneCubic.slope(angle - x[i], x[i + 1] - x[i], value[i], value[i + 1], slope[i], slope[i + 1]);
        }
    }

    /** The hull between the stalls: running maximum upwards, level slope at both ends. */
    private static Column rising(double[] alpha, double[] lift) {
        int low = AngleGrid.LOWER_STALL;
        int high = AngleGrid.STALL;
        double[] hull = new double[lift.length];
        double least = lift[low];
        double most = Math.max(lift[high], least);
        hull[low] = least;
        for (int i = low + 1; i <= high; i++) {
            hull[i] = Math.min(most, Math.max(hull[i - 1], lift[i]));
        }
        hull[high] = most;
        double[] slope = MonotoneCubic.slopes(alpha, hull);
        slope[low] = 0;
        slope[high] = 0;
        return new Column(hull, slope);
    }

    /** This curve and another, landmark with landmark; weight 0 gives this. */
    TabulatedCurve blend(TabulatedCurve other, double weight) {
        double[] alpha = NodeLayout.blend(grid.angles(), other.grid.angles(), weight);
        double[] inner = Arrays.copyOfRange(alpha, AngleGrid.OUTER, AngleGrid.OUTER + NodeLayout.COUNT);
        Values mine = new Values(lift.value, drag.value, moment.value, hinge.value);
        Values others = new Values(other.lift.value, other.drag.value, other.moment.value, other.hinge.value);
        return new TabulatedCurve(
                AngleGrid.around(inner), mine.blend(others, weight), traits.blend(other.traits, weight));
    }

    private double findZeroLift() {
        double low = negativeStallAngle();
        double high = stallAngle();
        if (minLift() >= 0) {
            return low - minLift() / traits.attachedSlope;
        }
        if (maxLift() <= 0) {
            return high - maxLift() / traits.attachedSlope;
        }
        for (int i = 0; i < 45; i++) {
            double middle = 0.5 * (low + high);
            if (risingLift(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private static double within(double alpha) {
        return Math.max(-Math.PI / 2, Math.min(Math.PI / 2, alpha));
    }

    private double at(Column column, double alpha) {
        double angle = within(alpha);
        return column.at(grid.angles(), grid.interval(angle), angle);
    }

    @Override
    public double lift(double alpha) {
        return at(lift, alpha);
    }

    @Override
    public double drag(double alpha) {
        return at(drag, alpha);
    }

    @Override
    public double moment(double alpha) {
        return at(moment, alpha);
    }

    @Override
    public double hinge(double alpha) {
        return at(hinge, alpha);
    }

    @Override
    public double risingLift(double alpha) {
        if (alpha >= stallAngle()) {
            return maxLift();
        }
        return alpha <= negativeStallAngle() ? minLift() : at(rising, alpha);
    }

    @Override
    public double risingLiftSlope(double alpha) {
        if (alpha >= stallAngle() || alpha <= negativeStallAngle()) {
            return 0;
        }
        return Math.max(0, rising.slopeAt(grid.angles(), grid.interval(alpha), alpha));
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
