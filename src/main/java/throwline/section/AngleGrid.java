package throwline.section;

/**
 * The nodes of {@link NodeLayout} with evenly spaced ones outside them to a right angle on both sides. Between landmarks
 * nodes are evenly spaced, so that neither an angle's place nor a node's angle needs a search or a table. Immutable.
 */
final class AngleGrid {

    /** Intervals from each end of the layout to a right angle. */
    static final int OUTER = 24;

    /** Node of the whole grid at the lower stall. */
    static final int LOWER_STALL = OUTER + NodeLayout.LOWER_STALL;

    /** Node of the whole grid at the stall. */
    static final int STALL = OUTER + NodeLayout.STALL;

    /** Number of nodes. */
    static final int COUNT = NodeLayout.COUNT + 2 * OUTER;

    private static final int ZERO_LIFT = OUTER + NodeLayout.ZERO_LIFT;
    private static final int INNER_END = OUTER + NodeLayout.COUNT - 1;
    private static final double RIGHT = Math.PI / 2;

    /** Nodes at the landmarks. */
    private static final int[] FIRST = {0, OUTER, LOWER_STALL, ZERO_LIFT, STALL, INNER_END, COUNT - 1};

    /** The part that begins at or below each node. */
    private static final int[] PART = parts();

    private final double[] landmark;
    private final double[] width = new double[FIRST.length - 1];
    private final double[] perRadian = new double[FIRST.length - 1];

    private AngleGrid(double[] landmark) {
        this.landmark = landmark;
        for (int i = 0; i < width.length; i++) {
            double part = landmark[i + 1] - landmark[i];
            width[i] = part / (FIRST[i + 1] - FIRST[i]);
            perRadian[i] = (FIRST[i + 1] - FIRST[i]) / part;
        }
    }

    private static int[] parts() {
        int[] parts = new int[COUNT];
        for (int part = 0; part < FIRST.length - 1; part++) {
            for (int i = FIRST[part]; i < COUNT; i++) {
                parts[i] = part;
            }
        }
        return parts;
    }

    /**
     * The grid around nodes laid out by {@link NodeLayout}.
     *
     * @param nodes their angles, rad
     * @param shift added to all of them, rad
     */
    static AngleGrid around(double[] nodes, double shift) {
        double[] landmark = new double[FIRST.length];
        landmark[0] = -RIGHT;
        landmark[FIRST.length - 1] = RIGHT;
        for (int part = 1; part < FIRST.length - 1; part++) {
            landmark[part] = nodes[FIRST[part] - OUTER] + shift;
        }
        return new AngleGrid(landmark);
    }

    /** This grid and another, node by node; weight 0 gives this. */
    AngleGrid blend(AngleGrid other, double weight) {
        return new AngleGrid(NodeLayout.blend(landmark, other.landmark, weight));
    }

    /** Angle of a node, rad. */
    double angle(int node) {
        int part = PART[node];
        return landmark[part] + (node - FIRST[part]) * width[part];
    }

    double lowerStallAngle() {
        return landmark[PART[LOWER_STALL]];
    }

    double stallAngle() {
        return landmark[PART[STALL]];
    }

    /** Width of the interval above a node, rad. */
    double width(int node) {
        return width[PART[node]];
    }

    /** Intervals per rad above a node. */
    double perRadian(int node) {
        return perRadian[PART[node]];
    }

    /** Node number and share of the interval above it of an angle; clamped to a right angle on both sides. */
    double place(double angle) {
        int part;
        if (angle < landmark[3]) {
            part = angle < landmark[2] ? (angle < landmark[1] ? 0 : 1) : 2;
        } else {
            part = angle < landmark[4] ? 3 : (angle < landmark[5] ? 4 : 5);
        }
        double place = FIRST[part] + (angle - landmark[part]) * perRadian[part];
        return place < 0 ? 0 : place > COUNT - 1 ? COUNT - 1 : place;
    }

    /** The interval of a place: number of the node below. */
    static int interval(double place) {
        return Math.min((int) place, COUNT - 2);
    }

    /** Angle of a place, rad. */
    double angleAt(double place) {
        int i = interval(place);
        return angle(i) + (place - i) * width(i);
    }

    /** A cubic on the interval of a place from value and slope at the node below and the node above. */
    double cubic(double place, double below, double above, double slopeBelow, double slopeAbove) {
        int i = interval(place);
        double t = place - i;
        double step = width(i);
        double rise = above - below;
        double left = slopeBelow * step;
        double right = slopeAbove * step;
        return below + t * (left + t * (3 * rise - 2 * left - right + t * (left + right - 2 * rise)));
    }

    /** The same cubic, to be read again: outside a right angle on either side it goes on level. */
    void piece(int node, double below, double above, double slopeBelow, double slopeAbove, HullPiece piece) {
        piece.between(angle(node), width(node), below, above, slopeBelow, slopeAbove);
    }

    /** Slope of that cubic, per rad. */
    double cubicSlope(double place, double below, double above, double slopeBelow, double slopeAbove) {
        int i = interval(place);
        double t = place - i;
        double step = width(i);
        double rise = above - below;
        double left = slopeBelow * step;
        double right = slopeAbove * step;
        return (left + t * (2 * (3 * rise - 2 * left - right) + 3 * t * (left + right - 2 * rise))) / step;
    }
}
