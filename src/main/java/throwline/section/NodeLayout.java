package throwline.section;

/**
 * Layout of a section curve's nodes: evenly between its own landmarks, so that two curves are blended stalled part with
 * stalled part and attached with attached. From low to high angle: past the lower stall, lower stall to zero lift, zero
 * lift to stall, past the stall.
 */
final class NodeLayout {

    /** Width of the stretch past each stall, rad. */
    static final double PAST_STALL = Math.toRadians(16);

    /** Node at the lower stall. */
    static final int LOWER_STALL = 16;

    /** Node at zero lift. */
    static final int ZERO_LIFT = LOWER_STALL + 24;

    /** Node at the stall. */
    static final int STALL = ZERO_LIFT + 48;

    /** Number of nodes. */
    static final int COUNT = STALL + 32 + 1;

    private NodeLayout() {}

    /** Angles of all nodes, from three landmarks in rising order, rad. */
    static double[] angles(double lowerStall, double zeroLift, double stall) {
        double[] alpha = new double[COUNT];
        fill(alpha, 0, LOWER_STALL, lowerStall - PAST_STALL, lowerStall);
        fill(alpha, LOWER_STALL, ZERO_LIFT, lowerStall, zeroLift);
        fill(alpha, ZERO_LIFT, STALL, zeroLift, stall);
        fill(alpha, STALL, COUNT - 1, stall, stall + PAST_STALL);
        return alpha;
    }

    private static void fill(double[] alpha, int from, int to, double start, double end) {
        for (int i = from; i <= to; i++) {
            alpha[i] = start + (end - start) * (i - from) / (to - from);
        }
    }

    /** Blend of two arrays node by node: weight 0 gives the first. */
    static double[] blend(double[] first, double[] second, double weight) {
        double[] blended = new double[first.length];
        for (int i = 0; i < blended.length; i++) {
            blended[i] = first[i] + weight * (second[i] - first[i]);
        }
        return blended;
    }
}
