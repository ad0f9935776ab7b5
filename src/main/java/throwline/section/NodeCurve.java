package throwline.section;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * One coefficient at the nodes of a grid, with the slopes of a curve that keeps its rises and falls. Most curves are read
 * at few angles, so a node is made when it is first read. Safe for several threads: a node made twice is the same.
 */
final class NodeCurve {

    /** Entries are read and written whole; one that is zero was not made yet, or is made again at no harm. */
    private static final VarHandle ENTRY = MethodHandles.arrayElementVarHandle(double[].class);

    private final AngleGrid grid;
    private final IntToDoubleFunction maker;
    private double @Nullable [] values;
    private double @Nullable [] slopes;

    /**
     * @param grid the angles
     * @param maker makes the value at a node
     */
    NodeCurve(AngleGrid grid, IntToDoubleFunction maker) {
        this.grid = grid;
        this.maker = maker;
    }

    /** Value at a node. */
    double value(int node) {
        double[] made = values;
        if (made == null) {
            made = new double[AngleGrid.COUNT];
            values = made;
        }
        double value = (double) ENTRY.getOpaque(made, node);
        if (value == 0) {
            value = maker.applyAsDouble(node);
            ENTRY.setOpaque(made, node, value);
        }
        return value;
    }

    /** Slope at a node, per rad. */
    double slope(int node) {
        double[] made = slopes;
        if (made == null) {
            made = new double[AngleGrid.COUNT];
            slopes = made;
        }
        double slope = (double) ENTRY.getOpaque(made, node);
        if (slope == 0) {
            slope = makeSlope(node);
            ENTRY.setOpaque(made, node, slope);
        }
        return slope;
    }

    private double makeSlope(int node) {
        if (node == 0 || node == AngleGrid.COUNT - 1) {
            return chord(Math.max(0, node - 1));
        }
        return MonotoneCubic.harmonic(chord(node - 1), chord(node), grid.width(node - 1), grid.width(node));
    }

    private double chord(int node) {
        return (value(node + 1) - value(node)) * grid.perRadian(node);
    }

    /** Value at a place of the grid, by a cubic. */
    double cubic(double place) {
        int i = AngleGrid.interval(place);
        return grid.cubic(place, value(i), value(i + 1), slope(i), slope(i + 1));
    }

    /** Value at a place of the grid, by a straight line. */
    double straight(double place) {
        int i = AngleGrid.interval(place);
        return value(i) + (place - i) * (value(i + 1) - value(i));
    }
}
