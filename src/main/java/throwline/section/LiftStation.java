package throwline.section;

import throwline.numerics.Interpolation;

/**
 * The lift curve of an airfoil at one Reynolds number on the nodes of {@link NodeLayout}.
 */
final class LiftStation {

    private final double reynolds;
    private final double[] alpha;
    private final double[] lift;
    private final double[] moment;
    private final double slope;
    private final MeasuredReach reach;

    /**
     * Holds its arrays as they are.
     *
     * @param reynolds Reynolds number
     * @param alpha angles, rad
     * @param lift lift coefficients
     * @param moment quarter-chord moment coefficients
     * @param slope least-squares slope over the middle of the attached range, per rad
     * @param reach what was measured of it
     */
    LiftStation(double reynolds, double[] alpha, double[] lift, double[] moment, double slope, MeasuredReach reach) {
        this.reynolds = reynolds;
        this.alpha = alpha;
        this.lift = lift;
        this.moment = moment;
        this.slope = slope;
        this.reach = reach;
    }

    double reynolds() {
        return reynolds;
    }

    double[] alpha() {
        return alpha;
    }

    double[] lift() {
        return lift;
    }

    double[] moment() {
        return moment;
    }

    double slope() {
        return slope;
    }

    MeasuredReach reach() {
        return reach;
    }

    double stallAngle() {
        return alpha[NodeLayout.STALL];
    }

    double maxLift() {
        return lift[NodeLayout.STALL];
    }

    double lowerStallAngle() {
        return alpha[NodeLayout.LOWER_STALL];
    }

    double minLift() {
        return lift[NodeLayout.LOWER_STALL];
    }

    double zeroLiftAngle() {
        return alpha[NodeLayout.ZERO_LIFT];
    }

    /** This curve and another, node by node; weight 0 gives this. */
    LiftStation blend(LiftStation other, double weight, double newReynolds) {
        return new LiftStation(
                newReynolds,
                NodeLayout.blend(alpha, other.alpha, weight),
                NodeLayout.blend(lift, other.lift, weight),
                NodeLayout.blend(moment, other.moment, weight),
                slope + weight * (other.slope - slope),
                reach.blend(other.reach, weight));
    }

    /** Angle on the rising part at which this lift coefficient is reached, rad; clamped to the two stalls. */
    double angleOf(double wanted) {
        int i = NodeLayout.LOWER_STALL;
        while (i < NodeLayout.STALL && lift[i + 1] < wanted) {
            i++;
        }
        if (i == NodeLayout.STALL) {
            return stallAngle();
        }
        double rise = lift[i + 1] - lift[i];
        double share = rise <= 0 ? 1 : Math.max(0, (wanted - lift[i]) / rise);
        return alpha[i] + share * (alpha[i + 1] - alpha[i]);
    }

    /** Lift coefficient at an angle, straight between nodes. */
    double liftAt(double angle) {
        return Interpolation.at(alpha, lift, angle);
    }

    /** Least-squares slope of lift over the nodes from a tenth below zero lift's stretch to 60 % of maximum lift. */
    static double attachedSlope(double[] alpha, double[] lift) {
        double top = 0.6 * lift[NodeLayout.STALL];
        double bottom = 0.4 * lift[NodeLayout.LOWER_STALL];
        double n = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (int i = NodeLayout.LOWER_STALL; i < NodeLayout.STALL && lift[i] <= top; i++) {
            if (lift[i] >= bottom) {
                n++;
                sx += alpha[i];
                sy += lift[i];
                sxx += alpha[i] * alpha[i];
                sxy += alpha[i] * lift[i];
            }
        }
        return (n * sxy - sx * sy) / (n * sxx - sx * sx);
    }
}
