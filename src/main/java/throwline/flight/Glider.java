package throwline.flight;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import throwline.flight.Descent.Outcome;
import throwline.model.Pack;

/** Steady descents of the balanced model with the throttle shut. */
final class Glider {

    /** Angle of attack is found to this, rad. */
    private static final double ANGLE_TOLERANCE = 1e-5;

    /** A root at the jump through zero lift is none: the force found must be the one wanted to this share. */
    private static final double RESULTANT_TOLERANCE = 1e-3;

    /** First guess of lift coefficient per rad for the whole model. */
    private static final double USUAL_SLOPE = 5;

    private static final double WIDEST = Math.toRadians(40);
    private static final int MOST_PASSES = 12;
    private static final double SPEED_TOLERANCE = 1e-4;

    private final Trimmer trimmer;
    private final Pack pack;
    private final double stallAlpha;
    private final SteadyDescent balance;
    private final WarmRoot speedRoot;
    private final WarmRoot flatRoot;
    private Optional<Attitude> last = Optional.empty();
    private Optional<Attitude> descent = Optional.empty();

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
        speedRoot = new WarmRoot(ANGLE_TOLERANCE, stallAlpha - Math.toRadians(5), USUAL_SLOPE);
        flatRoot = new WarmRoot(ANGLE_TOLERANCE, stallAlpha - Math.toRadians(15), USUAL_SLOPE);
    }

    /** True where it was made for this pack and stall. */
    boolean serves(Pack otherPack, double otherStallAlpha) {
        return pack.equals(otherPack) && stallAlpha == otherStallAlpha;
    }

    /** The descent at a speed. */
    Descent at(double speed) {
        double wanted = balance.resultantFor(speed);
        // The lift that is left to carry what the drag does not: it rises through zero lift, so that one root is left.
        UnivariateFunction excess = alpha -> excess(attitude(speed, alpha), wanted);
        descent.ifPresent(before -> speedRoot.expect(excess(before, wanted)));
        OptionalDouble alpha = speedRoot.solve(excess, stallAlpha - WIDEST, stallAlpha);
        if (alpha.isEmpty()) {
            Outcome outcome = excess.value(stallAlpha) < 0 ? Outcome.TOO_SLOW : Outcome.NOT_FOUND;
            return new Descent(outcome, Optional.empty());
        }
        Attitude attitude = attitude(speed, alpha.getAsDouble());
        descent = Optional.of(attitude);
        if (Math.abs(attitude.resultant() - wanted) > RESULTANT_TOLERANCE * wanted) {
            return new Descent(Outcome.TOO_FAST, Optional.empty());
        }
        Outcome outcome = !attitude.converged()
                ? Outcome.NOT_FOUND
                : attitude.elevatorLimit() == Attitude.ElevatorLimit.NONE ? Outcome.STEADY : Outcome.ELEVATOR_SHORT;
        return new Descent(outcome, Optional.of(attitude));
    }

    private static double excess(Attitude a, double wanted) {
        return a.lift() - Math.sqrt(Math.max(0, wanted * wanted - a.drag() * a.drag()));
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
        OptionalDouble alpha = flatRoot.solve(a -> attitude(speed, a).lift(), stallAlpha - WIDEST, stallAlpha);
        return alpha.stream()
                .mapToObj(a -> attitude(speed, a))
                .filter(a -> a.converged() && a.elevatorLimit() == Attitude.ElevatorLimit.NONE)
                .findFirst();
    }

    private Attitude attitude(double speed, double alpha) {
        if (last.isEmpty() || last.get().speed() != speed || last.get().alpha() != alpha) {
            last = Optional.of(trimmer.at(pack, speed, alpha));
        }
        return last.get();
    }
}
