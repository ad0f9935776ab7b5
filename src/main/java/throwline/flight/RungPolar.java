package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.model.Pack;

/**
 * The balanced model at one height over lift, from below the approach up to its most lift: drag, linear in the square of
 * lift between the angles solved, which is exact for induced drag, and elevator, linear in lift. Both go on along their last
 * straight line beyond.
 */
final class RungPolar {

    private static final double STEP = Math.toRadians(2);
    private static final int MOST_STEPS = 20;

    private final List<Attitude> rising = new ArrayList<>();
    private double limit;
    private boolean limitedByElevator;
    private boolean converged = true;

    /**
     * Walks up from a step below the approach until the lift falls or the elevator is at its stop.
     *
     * @param trimmer the model at the height
     * @param pack with this battery
     * @param speed m/s
     * @param alpha angle of attack at the approach in free air, rad
     */
    RungPolar(Trimmer trimmer, Pack pack, double speed, double alpha) {
        double stop = -trimmer.airframe().model().tail().elevator().travelUp();
        for (int k = -1; k < MOST_STEPS; k++) {
            Attitude here = trimmer.at(pack, speed, alpha + k * STEP);
            converged &= here.converged();
            if (rising.size() > 1 && here.elevatorLimit() == ElevatorLimit.UP) {
                limitedByElevator = true;
                limit = Math.min(here.lift(), atStop(stop));
                return;
            }
            if (rising.size() > 1 && here.lift() < last(0).lift()) {
                limit = top(here);
                return;
            }
            rising.add(here);
        }
        converged = false;
        limit = last(0).lift();
    }

    private Attitude last(int before) {
        return rising.get(rising.size() - 1 - before);
    }

    /** Lift at which the elevator reaches its stop, by its slope over the last two angles. */
    private double atStop(double stop) {
        double perLift = (last(0).elevator() - last(1).elevator()) / (last(0).lift() - last(1).lift());
        return perLift < 0 ? last(0).lift() + (stop - last(0).elevator()) / perLift : last(0).lift();
    }

    /** Top of the parabola through the last two angles and the next. */
    private double top(Attitude next) {
        double bend = last(1).lift() - 2 * last(0).lift() + next.lift();
        double rise = (next.lift() - last(1).lift()) / 2;
        return bend < 0 ? last(0).lift() - rise * rise / (2 * bend) : last(0).lift();
    }

    /** False where some part is not a solution. */
    boolean converged() {
        return converged;
    }

    /** Most lift that wing and elevator give. */
    double limit() {
        return limit;
    }

    /** True where the elevator's travel ends before the wing lets go. */
    boolean limitedByElevator() {
        return limitedByElevator;
    }

    double drag(double lift) {
        int k = interval(lift);
        Attitude a = rising.get(k);
        Attitude b = rising.get(k + 1);
        double squares = b.lift() * b.lift() - a.lift() * a.lift();
        double share = a.lift() > 0 && squares > 0
                ? (lift * lift - a.lift() * a.lift()) / squares
                : (lift - a.lift()) / (b.lift() - a.lift());
        return a.drag() + share * (b.drag() - a.drag());
    }

    double elevator(double lift) {
        int k = interval(lift);
        Attitude a = rising.get(k);
        Attitude b = rising.get(k + 1);
        return a.elevator() + (lift - a.lift()) / (b.lift() - a.lift()) * (b.elevator() - a.elevator());
    }

    private int interval(double lift) {
        int k = 0;
        while (k < rising.size() - 2 && rising.get(k + 1).lift() < lift) {
            k++;
        }
        return k;
    }
}
