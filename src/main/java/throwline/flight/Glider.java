package throwline.flight;

import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.flight.Descent.Outcome;
import throwline.model.Pack;

/** Steady descents of the balanced model with the throttle shut. */
final class Glider {

    /** Angle of attack is found to this, rad. */
    private static final double ANGLE_TOLERANCE = 1e-6;

    private static final int MOST_EVALUATIONS = 60;
    private static final double WIDEST = Math.toRadians(40);
    private static final int MOST_PASSES = 12;
    private static final double SPEED_TOLERANCE = 1e-4;

    private final Trimmer trimmer;
    private final Pack pack;
    private final double stallAlpha;
    private final SteadyDescent balance;

    /**
     * @param trimmer the model in its set-up
     * @param pack with this battery
     * @param stallAlpha angle of attack at the stall, rad: the end of the branch that is searched
     */
    Glider(Trimmer trimmer, Pack pack, double stallAlpha) {
        this.trimmer = trimmer;
        this.pack = pack;
        this.stallAlpha = stallAlpha;
        balance = trimmer.airframe().balance(pack);
    }

    /** The descent at a speed. */
    Descent at(double speed) {
        Optional<Attitude> flat = withoutLift(speed);
        if (flat.isEmpty()) {
            return new Descent(Outcome.NOT_FOUND, Optional.empty());
        }
        SteadyDescent.Held held = balance.held(
                alpha -> trimmer.at(pack, speed, alpha).resultant(), flat.get().alpha(), stallAlpha, speed);
        if (held.outcome() != Outcome.STEADY) {
            return new Descent(held.outcome(), Optional.empty());
        }
        Attitude attitude = trimmer.at(pack, speed, held.at());
        Outcome outcome = !attitude.converged()
                ? Outcome.NOT_FOUND
                : attitude.elevatorLimit() == Attitude.ElevatorLimit.NONE ? Outcome.STEADY : Outcome.ELEVATOR_SHORT;
        return new Descent(outcome, Optional.of(attitude));
    }

    /** Steady speed straight down, m/s; empty where it was not found. */
    Optional<Double> noseDownSpeed(double firstGuess) {
        double speed = firstGuess;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            Optional<Attitude> flat = withoutLift(speed);
            if (flat.isEmpty()) {
                return Optional.empty();
            }
            double next = balance.speed(0, flat.get().drag());
            if (Math.abs(next - speed) < SPEED_TOLERANCE * speed) {
                return Optional.of(next);
            }
            speed = next;
        }
        return Optional.empty();
    }

    /** The attitude without lift at a speed. */
    private Optional<Attitude> withoutLift(double speed) {
        UnivariateFunction lift = alpha -> trimmer.at(pack, speed, alpha).lift();
        double low = stallAlpha - WIDEST;
        if (lift.value(low) > 0 || lift.value(stallAlpha) < 0) {
            return Optional.empty();
        }
        double alpha =
                new BracketingNthOrderBrentSolver(ANGLE_TOLERANCE, 5).solve(MOST_EVALUATIONS, lift, low, stallAlpha);
        Attitude attitude = trimmer.at(pack, speed, alpha);
        return attitude.converged() ? Optional.of(attitude) : Optional.empty();
    }
}
