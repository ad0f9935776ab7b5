package throwline.section;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import org.jspecify.annotations.Nullable;

/**
 * The coefficients of a section at the nodes of a grid, with the slopes of curves that keep their rises and falls. Most
 * curves are read at few angles, so a node is made when it is first read. Safe for several threads: a node made twice is
 * the same.
 */
final class CurveNodes {

    /** Entries are read and written whole; one that is zero was not made yet, or is made again at no harm. */
    private static final VarHandle ENTRY = MethodHandles.arrayElementVarHandle(double[].class);

    /** Entries of a node: value and slope of each coefficient, because what is read together is to lie together. */
    private static final int EACH = 6;

    private final AngleGrid grid;
    private final Source source;
    private double @Nullable [] entries;

    /**
     * @param grid the angles
     * @param source makes the coefficients
     */
    CurveNodes(AngleGrid grid, Source source) {
        this.grid = grid;
        this.source = source;
    }

    /** Coefficient that is read. */
    enum Coefficient {
        LIFT(0),
        DRAG(2),
        /** About the quarter chord. */
        MOMENT(4);

        private final int entry;

        Coefficient(int entry) {
            this.entry = entry;
        }
    }

    /** Maker of the coefficients at the nodes of a grid; the same each time. */
    @FunctionalInterface
    interface Source {
        double at(Coefficient coefficient, int node);
    }

    /** Value at a node. */
    double value(Coefficient coefficient, int node) {
        double[] made = entries();
        int entry = node * EACH + coefficient.entry;
        double value = (double) ENTRY.getOpaque(made, entry);
        if (value == 0) {
            value = source.at(coefficient, node);
            ENTRY.setOpaque(made, entry, value);
        }
        return value;
    }

    /** Slope at a node, per rad. */
    double slope(Coefficient coefficient, int node) {
        double[] made = entries();
        int entry = node * EACH + coefficient.entry + 1;
        double slope = (double) ENTRY.getOpaque(made, entry);
        if (slope == 0) {
            slope = makeSlope(coefficient, node);
            ENTRY.setOpaque(made, entry, slope);
        }
        return slope;
    }

    private double[] entries() {
        double[] made = entries;
        if (made == null) {
            made = new double[AngleGrid.COUNT * EACH];
            entries = made;
        }
        return made;
    }

    private double makeSlope(Coefficient coefficient, int node) {
        if (node == 0 || node == AngleGrid.COUNT - 1) {
            return chord(coefficient, Math.max(0, node - 1));
        }
        return MonotoneCubic.harmonic(
                chord(coefficient, node - 1), chord(coefficient, node), grid.width(node - 1), grid.width(node));
    }

    private double chord(Coefficient coefficient, int node) {
        return (value(coefficient, node + 1) - value(coefficient, node)) * grid.perRadian(node);
    }

    /** Value at a place of the grid, by a cubic. */
    double cubic(Coefficient coefficient, double place) {
        int i = AngleGrid.interval(place);
        return grid.cubic(
                place,
                value(coefficient, i),
                value(coefficient, i + 1),
                slope(coefficient, i),
                slope(coefficient, i + 1));
    }

    /** Value at a place of the grid, by a straight line. */
    double straight(Coefficient coefficient, double place) {
        int i = AngleGrid.interval(place);
        double below = value(coefficient, i);
        return below + (place - i) * (value(coefficient, i + 1) - below);
    }
}
