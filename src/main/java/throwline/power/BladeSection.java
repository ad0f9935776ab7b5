package throwline.power;

/**
 * The section of a model propeller's blade: one law of lift and drag for all (methods manual 20.2: fitted to fourteen
 * propellers measured in a wind tunnel). Angles of attack count from zero lift.
 */
final class BladeSection {

    /** Zero-lift line above the flat face, on which the pitch is measured, rad. */
    static final double FACE_TO_ZERO_LIFT = Math.toRadians(4.5);

    private static final double SLOPE = 4.9;
    private static final double SEPARATED_LIFT = 1.15;
    private static final double SEPARATED_DRAG = 1.5;
    private static final double STALL = Math.toRadians(17);
    private static final double STALL_WIDTH = Math.toRadians(2.2);
    private static final double LEAST_DRAG = 0.031;
    private static final double DRAG_REYNOLDS = 60000;
    private static final double DRAG_POWER = -0.4;
    private static final double DRAG_BEND = 0.032;
    private static final double DRAG_BUCKET = 0.45;

    private BladeSection() {}

    /** Share of the flow that has left the section. */
    private static double separated(double alpha) {
        return 1 / (1 + Math.exp(-(Math.abs(alpha) - STALL) / STALL_WIDTH));
    }

    /** Lift coefficient. */
    static double lift(double alpha) {
        double s = separated(alpha);
        return (1 - s) * SLOPE * alpha + s * SEPARATED_LIFT * Math.sin(2 * alpha);
    }

    /** Drag coefficient at a Reynolds number of the chord. */
    static double drag(double alpha, double reynolds) {
        double s = separated(alpha);
        double least = LEAST_DRAG * Math.pow(reynolds / DRAG_REYNOLDS, DRAG_POWER);
        double attached = least + DRAG_BEND * Math.pow(SLOPE * alpha - DRAG_BUCKET, 2);
        return (1 - s) * attached + s * (least + SEPARATED_DRAG * Math.pow(Math.sin(alpha), 2));
    }
}
