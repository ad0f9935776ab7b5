package throwline.section;

import java.util.function.IntToDoubleFunction;

/**
 * The non-decreasing hull of a lift curve on the nodes of a grid: between the stalls the running maximum upwards, level
 * outside. Immutable.
 */
final class HullCurve {

    /** Newton's steps that leave fifteen figures of the angle of zero lift, with room. */
    private static final int MOST_STEPS = 60;

    private final AngleGrid grid;

    /** Value and slope by turns, node by node: what is read together lies together. */
    private final double[] entries = new double[2 * AngleGrid.COUNT];

    /**
     * @param grid the angles
     * @param lift the lift coefficient at a node
     */
    HullCurve(AngleGrid grid, IntToDoubleFunction lift) {
        this.grid = grid;
        int from = AngleGrid.LOWER_STALL;
        int to = AngleGrid.STALL;
        double least = lift.applyAsDouble(from);
        double most = Math.max(lift.applyAsDouble(to), least);
        double reached = least;
        for (int i = 0; i < AngleGrid.COUNT; i++) {
            if (i > from) {
                reached = i >= to ? most : Math.min(most, Math.max(reached, lift.applyAsDouble(i)));
            }
            entries[2 * i] = reached;
        }
        double before = (value(from + 1) - least) * grid.perRadian(from);
        for (int i = from + 1; i < to; i++) {
            double after = (value(i + 1) - value(i)) * grid.perRadian(i);
            entries[2 * i + 1] = MonotoneCubic.harmonic(before, after, grid.width(i - 1), grid.width(i));
            before = after;
        }
    }

    double value(int node) {
        return entries[2 * node];
    }

    /** Per rad. */
    double slope(int node) {
        return entries[2 * node + 1];
    }

    /** Largest value. */
    double most() {
        return value(AngleGrid.STALL);
    }

    /** Smallest value. */
    double least() {
        return value(AngleGrid.LOWER_STALL);
    }

    /** Value at a place of the grid. */
    double cubic(double place) {
        int i = AngleGrid.interval(place);
        return grid.cubic(place, value(i), value(i + 1), slope(i), slope(i + 1));
    }

    /** Stretch around a place of the grid. */
    void piece(double place, HullPiece piece) {
        int i = AngleGrid.interval(place);
        grid.piece(i, value(i), value(i + 1), slope(i), slope(i + 1), piece);
    }

    /** Slope at a place of the grid, per rad, never negative. */
    double cubicSlope(double place) {
        int i = AngleGrid.interval(place);
        return Math.max(0, grid.cubicSlope(place, value(i), value(i + 1), slope(i), slope(i + 1)));
    }

    /** Angle at which it crosses zero, which it does between the stalls, rad. */
    double zeroAngle() {
        int i = AngleGrid.LOWER_STALL;
        while (value(i + 1) < 0) {
            i++;
        }
        double low = i;
        double high = i + 1;
        double place = i + value(i) / (value(i) - value(i + 1));
        for (int k = 0; k < MOST_STEPS && high - low > Math.ulp(high); k++) {
            double here = cubic(place);
            if (here == 0) {
                break;
            }
            low = here < 0 ? place : low;
            high = here < 0 ? high : place;
            double next = place - here / (cubicSlope(place) * grid.width(i));
            if (Math.abs(next - place) <= Math.ulp(place)) {
                break;
            }
            place = next > low && next < high ? next : 0.5 * (low + high);
        }
        return grid.angleAt(place);
    }
}
