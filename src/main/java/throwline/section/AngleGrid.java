package throwline.section;

/**
 * The nodes of {@link NodeLayout} with evenly spaced ones outside them to a right angle on both sides; finds the interval
 * of an angle without a search. Immutable.
 */
final class AngleGrid {

    /** Intervals from each end of the layout to a right angle. */
    static final int OUTER = 24;

    /** Node of the whole grid at the lower stall. */
    static final int LOWER_STALL = OUTER + NodeLayout.LOWER_STALL;

    /** Node of the whole grid at the stall. */
    static final int STALL = OUTER + NodeLayout.STALL;

    private static final int COUNT = NodeLayout.COUNT + 2 * OUTER;

    private static final int[] FIRST = {
        0, OUTER, LOWER_STALL, OUTER + NodeLayout.ZERO_LIFT, STALL, OUTER + NodeLayout.COUNT - 1, COUNT - 1
    };

    private final double[] alpha;
    private final double[] perStep = new double[FIRST.length - 1];

    private AngleGrid(double[] alpha) {
        this.alpha = alpha;
        for (int i = 0; i < perStep.length; i++) {
            perStep[i] = (FIRST[i + 1] - FIRST[i]) / (alpha[FIRST[i + 1]] - alpha[FIRST[i]]);
        }
    }

    /** The grid around nodes laid out by {@link NodeLayout}, rad. */
    static AngleGrid around(double[] nodes) {
        double[] alpha = new double[COUNT];
        System.arraycopy(nodes, 0, alpha, OUTER, nodes.length);
        double right = Math.PI / 2;
        double top = nodes[nodes.length - 1];
        for (int i = 0; i < OUTER; i++) {
            alpha[i] = -right + (nodes[0] + right) * i / OUTER;
            alpha[COUNT - 1 - i] = right - (right - top) * i / OUTER;
        }
        return new AngleGrid(alpha);
    }

    double[] angles() {
        return alpha;
    }

    /** Index of the interval that holds an angle within the grid. */
    int interval(double angle) {
        int part = 0;
        while (part < perStep.length - 1 && angle >= alpha[FIRST[part + 1]]) {
            part++;
        }
        int i = FIRST[part] + (int) ((angle - alpha[FIRST[part]]) * perStep[part]);
        return Math.min(i, FIRST[part + 1] - 1);
    }
}
