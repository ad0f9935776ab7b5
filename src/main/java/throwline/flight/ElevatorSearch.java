package throwline.flight;

import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.flight.TailSurface.TailForces;
import throwline.model.Elevator;
import throwline.numerics.Interpolation;

/**
 * Search for the elevator at which the pitching moment vanishes, or the stop that comes nearest: secant steps from where the
 * attitudes before let expect it. The last stretch goes along the straight line on which the tail's forces answer to the
 * elevator, so that the tail is worked out twice an attitude as a rule, once where the attitude hardly changed. Searches
 * the whole travel where that does not settle.
 *
 * <p>Holds what it learned: one thread at a time.
 */
final class ElevatorSearch {

    /** Elevator angle is found to this, rad: three thousandths of a degree, far below any servo's resolution. */
    private static final double TOLERANCE = 5e-5;

    /**
     * Last stretch, rad, on the line through two points of the same attitude. The secant's error is that stretch times the
     * one before times half the bend over the slope of the moment: within the tolerance as long as the latter is below 1.
     */
    private static final double LAST_STRETCH = 1e-3;

    /** Last stretch on a line remembered from another attitude: within the tolerance where it is a fifth too steep. */
    private static final double REMEMBERED_STRETCH = 2.5e-4;

    /** First guess of the moment coefficient per rad of elevator; the real one is found at the first balance. */
    private static final double USUAL_POWER = -1;

    /** Least change of the tail's angle, rad, from which its answer to that is taken. */
    private static final double ANGLE_STEP = 1e-3;

    private static final int MOST_SECANTS = 8;
    private static final int MOST_EVALUATIONS = 100;

    private final double up;
    private final double down;
    private Optional<TailForces> perRadian = Optional.empty();
    private Optional<TailForces> perAngle = Optional.empty();
    private Optional<Known> last = Optional.empty();

    /** The search within an elevator's travel. */
    ElevatorSearch(Elevator elevator) {
        up = -elevator.travelUp();
        down = elevator.travelDown();
    }

    /** Drops what was learned. */
    void forget() {
        perRadian = Optional.empty();
        perAngle = Optional.empty();
        last = Optional.empty();
    }

    /** The tail at one attitude of the model. */
    interface Tail {

        /** Its forces with the elevator at an angle, rad. */
        TailForces forces(double elevator);

        /** Angle of attack of the tail in its own air, rad. */
        double angle();

        /** Moment coefficient of such forces about the balance point: linear in them. */
        double moment(TailForces forces);
    }

    /**
     * Where the elevator is held.
     *
     * @param elevator rad
     * @param limit whether its travel suffices
     * @param forces of the tail there
     */
    record Held(double elevator, ElevatorLimit limit, TailForces forces) {}

    /** A balanced tail. */
    private record Known(double elevator, double angle, TailForces forces) {}

    /**
     * Balances a moment.
     *
     * @param tail the tail, its moment falling with the elevator
     * @param fixed moment coefficient of all else
     */
    Held hold(Tail tail, double fixed) {
        double x = inside(expected(tail, fixed));
        double stretch = REMEMBERED_STRETCH;
        TailForces forces = tail.forces(x);
        for (int k = 0; k < MOST_SECANTS; k++) {
            double power = perRadian.map(tail::moment).orElse(USUAL_POWER);
            double step = -(fixed + tail.moment(forces)) / power;
            if (perRadian.isPresent() && Math.abs(step) < stretch && x + step == inside(x + step)) {
                return found(tail, x + step, forces.along(perRadian.get(), step));
            }
            double next = inside(x + step);
            if (next == x) {
                break;
            }
            TailForces there = tail.forces(next);
            TailForces secant = there.perRadian(forces, next - x);
            if (!(tail.moment(secant) < 0)) {
                break;
            }
            perRadian = Optional.of(secant);
            stretch = LAST_STRETCH;
            x = next;
            forces = there;
        }
        return searched(tail, fixed);
    }

    /** Where the forces of the last balance, carried on to the tail's angle now, let expect the elevator. */
    private double expected(Tail tail, double fixed) {
        if (last.isEmpty() || perRadian.isEmpty() || perAngle.isEmpty()) {
            return last.map(Known::elevator).orElse(0.0);
        }
        Known before = last.get();
        TailForces carried = before.forces.along(perAngle.get(), tail.angle() - before.angle);
        return before.elevator - (fixed + tail.moment(carried)) / tail.moment(perRadian.get());
    }

    private double inside(double wanted) {
        return Interpolation.clamp(wanted, up, down);
    }

    private Held searched(Tail tail, double fixed) {
        UnivariateFunction moment = at -> fixed + tail.moment(tail.forces(at));
        double atUp = moment.value(up);
        if (atUp * moment.value(down) <= 0) {
            double root = new BracketingNthOrderBrentSolver(TOLERANCE, 5).solve(MOST_EVALUATIONS, moment, up, down);
            return found(tail, root, tail.forces(root));
        }
        return atUp <= 0
                ? new Held(up, ElevatorLimit.UP, tail.forces(up))
                : new Held(down, ElevatorLimit.DOWN, tail.forces(down));
    }

    private Held found(Tail tail, double root, TailForces forces) {
        Known here = new Known(root, tail.angle(), forces);
        if (last.isPresent() && perRadian.isPresent()) {
            Known before = last.get();
            double turned = here.angle - before.angle;
            if (Math.abs(turned) > ANGLE_STEP) {
                TailForces carried = before.forces.along(perRadian.get(), root - before.elevator);
                perAngle = Optional.of(forces.perRadian(carried, turned));
            }
        }
        last = Optional.of(here);
        return new Held(root, ElevatorLimit.NONE, forces);
    }
}
