package throwline.section;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * One coefficient at the nodes of a grid, with the slopes of a curve that keeps its rises and falls. Most curves are read
 * at few angles, so a node is made when it is first read. Safe for several threads: a node made twice is the same.
 */
final class NodeCurve {

    private static final VarHandle ENTRY = MethodHandles.arrayElementVarHandle(double[].class);

    private final AngleGrid grid;
    private final IntToDoubleFunction maker;
    private final double[] values = new double[AngleGrid.COUNT];
    private final double[] slopes = new double[AngleGrid.COUNT];

    /**
     * @param grid the angles
     * @param maker makes the value at a node
     */
    NodeCurve(AngleGrid grid, IntToDoubleFunction maker) {
        this.grid = grid;
        this.maker = maker;
        Arrays.fill(values, Double.NaN);
        Arrays.fill(slopes, Double.NaN);
    }

    /** Value at a node. */
    double value(int node) {
        double value = (double) ENTRY.getOpaque(values, node);
        if (Double.isNaN(value)) {
            value = maker.applyAsDouble(node);
            ENTRY.setOpaque(values, node, value);
        }
        return value;
    }

    /** Slope at a node, per rad. */
    double slope(int node) {
        double slope = (double) ENTRY.getOpaque(slopes, node);
        if (Double.isNaN(slope)) {
            slope = node == 0
                    ? chord(0)
                    : node == AngleGrid.COUNT - 1
                            ? chord(node - 1)
                            : MonotoneCubic.harmonic(
                                    chord(node - 1), chord(node), grid.width(node - 1), grid.width(node));
            ENTRY.setOpaque(slopes, node, slope);
        }
        return slope;
    }

    private double chord(int node) {
        return (value(node + 1) - value(node)) / grid.width(node);
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
