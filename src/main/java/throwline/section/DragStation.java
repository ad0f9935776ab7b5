package throwline.section;

import throwline.numerics.Interpolation;

/**
 * Drag of an airfoil at one Reynolds number, two ways: over lift for the attached flow, and on the nodes of
 * {@link NodeLayout} for the flow near and past the stalls, where lift does not tell drag.
 */
final class DragStation {

    private final double reynolds;
    private final double[] byLift;
    private final double[] byNode;

    /**
     * Holds its arrays as they are.
     *
     * @param reynolds Reynolds number
     * @param byLift natural logarithm of drag at the lift coefficients of {@link #liftAt}
     * @param byNode natural logarithm of drag at the nodes
     */
    DragStation(double reynolds, double[] byLift, double[] byNode) {
        this.reynolds = reynolds;
        this.byLift = byLift;
        this.byNode = byNode;
    }

    double reynolds() {
        return reynolds;
    }

    double[] byLift() {
        return byLift;
    }

    double[] byNode() {
        return byNode;
    }

    /** Number of lift coefficients in the table. */
    static final int STEPS = 181;

    private static final double LOWEST = -1.8;
    private static final double STEP = 0.025;

    /** Lift coefficient of a place in the table. */
    static double liftAt(int i) {
        return LOWEST + i * STEP;
    }

    /** Natural logarithm of drag at a lift coefficient, straight between places of a table. */
    static double logDrag(double[] byLift, double lift) {
        double place = Interpolation.clamp((lift - LOWEST) / STEP, 0, STEPS - 1.001);
        int i = (int) place;
        return byLift[i] + (place - i) * (byLift[i + 1] - byLift[i]);
    }

    DragStation blend(DragStation other, double weight, double newReynolds) {
        return new DragStation(
                newReynolds,
                NodeLayout.blend(byLift, other.byLift, weight),
                NodeLayout.blend(byNode, other.byNode, weight));
    }
}
