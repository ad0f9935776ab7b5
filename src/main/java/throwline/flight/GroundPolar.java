package throwline.flight;

import throwline.flight.Attitude.ElevatorLimit;
import throwline.model.Pack;

/**
 * The balanced model at every rung of the ladder over angle of attack, at one speed: lift, drag and elevator near the
 * ground. Drag is interpolated linearly in the square of lift, which is exact for induced drag.
 */
final class GroundPolar implements LowPolar {

    /** Angles are no further apart than this, rad. */
    private static final double WIDEST = Math.toRadians(2);

    /** The angles reach beyond the stall by so much, rad; the approach is the second of them. */
    private static final double BEYOND = Math.toRadians(1.5);

    private final GroundLadder ladder;
    private final int angles;
    private final double[][] lift;
    private final double[][] drag;
    private final double[][] elevator;
    private final double[] limit;
    private final boolean[] limitedByElevator;
    private final Attitude rolling;
    private final boolean converged;

    /**
     * Solves the model at all rungs.
     *
     * @param trimmer the model in free air
     * @param ladder its heights
     * @param pack with this battery
     * @param approach the steady approach: its speed gives the Reynolds number
     * @param stall the stall in free air
     */
    GroundPolar(Trimmer trimmer, GroundLadder ladder, Pack pack, Attitude approach, Stall stall) {
        this.ladder = ladder;
        int rungs = ladder.size();
        double range = stall.attitude().alpha() + BEYOND - approach.alpha();
        angles = 2 + (int) Math.ceil(range / WIDEST);
        double step = range / (angles - 2);
        double first = approach.alpha() - step;
        lift = new double[rungs][angles];
        drag = new double[rungs][angles];
        elevator = new double[rungs][angles];
        limit = new double[rungs];
        limitedByElevator = new boolean[rungs];
        boolean solved = true;
        Trimmer onTheGround = trimmer.near(ladder.matrix(0));
        for (int j = 0; j < rungs; j++) {
            Trimmer there = j == 0 ? onTheGround : j == rungs - 1 ? trimmer : trimmer.near(ladder.matrix(j));
            int stopped = angles;
            for (int k = 0; k < angles; k++) {
                Attitude a = there.at(pack, approach.speed(), first + k * step);
                solved &= a.converged();
                lift[j][k] = a.lift();
                drag[j][k] = a.drag();
                elevator[j][k] = a.elevator();
                stopped = a.elevatorLimit() == ElevatorLimit.UP ? Math.min(stopped, k) : stopped;
            }
            limit(j, stopped, -trimmer.airframe().model().tail().elevator().travelUp());
        }
        scaleTo(stall.attitude().lift());
        rolling = onTheGround.at(pack, approach.speed(), 0);
        converged = solved && rolling.converged();
    }

    /** Most lift at a rung: the top of the curve, or where the elevator reaches its stop before that. */
    private void limit(int rung, int stopped, double stop) {
        double[] c = lift[rung];
        int top = 0;
        for (int k = 1; k < angles; k++) {
            top = c[k] > c[top] ? k : top;
        }
        double most = c[top];
        if (top > 0 && top < angles - 1) {
            double bend = c[top - 1] - 2 * c[top] + c[top + 1];
            double rise = (c[top + 1] - c[top - 1]) / 2;
            most = bend < 0 ? c[top] - rise * rise / (2 * bend) : most;
        }
        limit[rung] = most;
        if (stopped <= top) {
            limitedByElevator[rung] = true;
            limit[rung] = atStop(rung, stopped, stop);
        }
    }

    /** Lift at which the elevator, still free below the angle {@code stopped}, reaches its stop. */
    private double atStop(int rung, int stopped, double stop) {
        double[] c = lift[rung];
        double[] e = elevator[rung];
        int k = Math.max(2, stopped);
        double perLift = (e[k - 1] - e[k - 2]) / (c[k - 1] - c[k - 2]);
        double at = perLift < 0 ? c[k - 1] + (stop - e[k - 1]) / perLift : c[stopped];
        return Math.max(c[0], Math.min(c[stopped], at));
    }

    /** The stall was found at its own, lower speed: all limits are scaled so that the one in free air is that one. */
    private void scaleTo(double freeLimit) {
        double scale = freeLimit / limit[limit.length - 1];
        for (int j = 0; j < limit.length; j++) {
            limit[j] *= scale;
        }
    }

    /** False where some part is not a solution. */
    boolean converged() {
        return converged;
    }

    /** The balanced model rolling on its wheels, body level. */
    Attitude rolling() {
        return rolling;
    }

    /** True where the elevator's travel ends before the wing lets go with the wheels at the ground. */
    boolean limitedByElevator() {
        return limitedByElevator[0];
    }

    @Override
    public double limit(double height) {
        return blend(limit, ladder.weights(height));
    }

    @Override
    public double drag(double wanted, double height) {
        Place place = place(wanted, height);
        double from = place.lift(0);
        double to = place.lift(1);
        double share = (wanted * wanted - from * from) / (to * to - from * from);
        return between(drag, place, Math.abs(to + from) < 1e-3 ? place.share(wanted) : share);
    }

    /** Where the elevator stands at a lift coefficient and height, rad. */
    double elevator(double wanted, double height) {
        Place place = place(wanted, height);
        return between(elevator, place, place.share(wanted));
    }

    private Place place(double wanted, double height) {
        double[] weights = ladder.weights(height);
        int k = 0;
        double from = at(lift, 0, weights);
        double to = at(lift, 1, weights);
        while (k < angles - 2 && to < wanted && at(lift, k + 2, weights) > to) {
            k++;
            from = to;
            to = at(lift, k + 1, weights);
        }
        return new Place(weights, k, from, to);
    }

    private static double between(double[][] table, Place place, double share) {
        double from = at(table, place.index, place.weights);
        double to = at(table, place.index + 1, place.weights);
        // A limit between two angles may lie above both, the top of the curve; the drag of the higher one holds there.
        return from + Math.max(-1, Math.min(1, share)) * (to - from);
    }

    private static double at(double[][] table, int angle, double[] weights) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * table[j][angle];
        }
        return sum;
    }

    private static double blend(double[] values, double[] weights) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * values[j];
        }
        return sum;
    }

    /** An interval of angles that holds a lift coefficient. */
    private record Place(double[] weights, int index, double from, double to) {
        double lift(int end) {
            return end == 0 ? from : to;
        }

        double share(double wanted) {
            return (wanted - from) / (to - from);
        }
    }
}
