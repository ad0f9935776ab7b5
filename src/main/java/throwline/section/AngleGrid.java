package throwline.section;

/**
 * The nodes of {@link NodeLayout} with evenly spaced ones outside them to a right angle on both sides; finds the place of
 * an angle without a search. Immutable.
 */
final class AngleGrid {

    /** Intervals from each end of the layout to a right angle. */
    static final int OUTER = 24;

    /** Node of the whole grid at the lower stall. */
    static final int LOWER_STALL = OUTER + NodeLayout.LOWER_STALL;

    /** Node of the whole grid at the stall. */
    static final int STALL = OUTER + NodeLayout.STALL;

    private static final int ZERO_LIFT = OUTER + NodeLayout.ZERO_LIFT;
    private static final int INNER_END = OUTER + NodeLayout.COUNT - 1;
    private static final int COUNT = NodeLayout.COUNT + 2 * OUTER;

    private static final int[] FIRST = {0, OUTER, LOWER_STALL, ZERO_LIFT, STALL, INNER_END, COUNT - 1};

    private final double[] alpha;
    private final double[] perRadian = new double[FIRST.length - 1];

    private AngleGrid(double[] alpha) {
        this.alpha = alpha;
        for (int i = 0; i < perRadian.length; i++) {
            perRadian[i] = (FIRST[i + 1] - FIRST[i]) / (alpha[FIRST[i + 1]] - alpha[FIRST[i]]);
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

    /** This grid and another, node by node; weight 0 gives this. */
    AngleGrid blend(AngleGrid other, double weight) {
        return new AngleGrid(NodeLayout.blend(alpha, other.alpha, weight));
    }

    double[] angles() {
        return alpha;
    }

    /** Node number and share of the interval above it of an angle; clamped to a right angle on both sides. */
    double place(double angle) {
        int part;
        if (angle < alpha[ZERO_LIFT]) {
            part = angle < alpha[LOWER_STALL] ? (angle < alpha[OUTER] ? 0 : 1) : 2;
        } else {
            part = angle < alpha[STALL] ? 3 : (angle < alpha[INNER_END] ? 4 : 5);
        }
        double place = FIRST[part] + (angle - alpha[FIRST[part]]) * perRadian[part];
        return place < 0 ? 0 : place > COUNT - 1 ? COUNT - 1 : place;
    }

    /** The interval of a place: number of the node below. */
    static int interval(double place) {
        return Math.min((int) place, COUNT - 2);
    }

    /** A cubic on the interval of a place from values and slopes at the nodes. */
    double cubic(double[] value, double[] slope, double place) {
        int i = interval(place);
        return cubic(place, value[i], value[i + 1], slope[i], slope[i + 1]);
    }

    /** The same from value and slope at the node below and the node above. */
    double cubic(double place, double below, double above, double slopeBelow, double slopeAbove) {
        int i = interval(place);
        double t = place - i;
        double width = alpha[i + 1] - alpha[i];
        double rise = above - below;
        double left = slopeBelow * width;
        double right = slopeAbove * width;
        return below + t * (left + t * (3 * rise - 2 * left - right + t * (left + right - 2 * rise)));
    }

    /** Slope of that cubic, per rad. */
    double cubicSlope(double[] value, double[] slope, double place) {
        int i = interval(place);
        return cubicSlope(place, value[i], value[i + 1], slope[i], slope[i + 1]);
    }

    /** The same from value and slope at the node below and the node above. */
    double cubicSlope(double place, double below, double above, double slopeBelow, double slopeAbove) {
        int i = interval(place);
        double t = place - i;
        double width = alpha[i + 1] - alpha[i];
        double rise = above - below;
        double left = slopeBelow * width;
        double right = slopeAbove * width;
        return (left + t * (2 * (3 * rise - 2 * left - right) + 3 * t * (left + right - 2 * rise))) / width;
    }

    /** A straight line on the interval of a place. */
    static double straight(double[] value, double place) {
        int i = interval(place);
        return value[i] + (place - i) * (value[i + 1] - value[i]);
    }
}
