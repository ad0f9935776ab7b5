package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;
import throwline.flight.Descent.Outcome;
import throwline.model.Pack;
import throwline.numerics.Interpolation;

/** Steady descents of the balanced model with the throttle shut. */
final class DescentSolver {

    /** Angle of attack is found to this, rad. */
    private static final double ANGLE_TOLERANCE = 1e-5;

    /** Within a sweep, where the first guess is so near that the root is not found far better than to its tolerance. */
    private static final double SWEEP_TOLERANCE = 1e-6;

    /** A root at the jump through zero lift is none: the force found must be the one wanted to this share. */
    private static final double RESULTANT_TOLERANCE = 1e-3;

    /** First guess of lift coefficient per rad for the whole model. */
    private static final double USUAL_SLOPE = 5;

    private static final double WIDEST = Math.toRadians(40);
    private static final int MOST_PASSES = 24;

    /** Least change of the angle of attack, rad, that tells a slope although the speed changed as well. */
    private static final double SECANT_STEP = 1e-3;

    private static final double SPEED_TOLERANCE = 1e-4;

    /** Search for the speed at which the elevator runs out: from this over the stall speed, each rung faster by that ratio. */
    private static final double SLOWEST = 1.02;

    private static final double RUNG = 1.1;
    private static final int MOST_RUNGS = 30;

    /** The speed at which the elevator runs out is found to this share. */
    private static final double END_TOLERANCE = 1e-3;

    private static final int MOST_HALVINGS = 100;

    private final Trimmer trimmer;
    private final Pack pack;
    private final Attitude atStall;
    private final double stallAlpha;
    private final SteadyDescent balance;
    private Optional<Attitude> last = Optional.empty();
    private double lastSlope = USUAL_SLOPE;
    private Attitude from;
    private double slope = USUAL_SLOPE;

    /**
     * @param trimmer the model in its set-up
     * @param pack with this battery
     * @param atStall the stall: the end of the branch that is searched, and where searches start from
     */
    DescentSolver(Trimmer trimmer, Pack pack, Attitude atStall) {
        this.trimmer = trimmer;
        this.pack = pack;
        this.atStall = atStall;
        stallAlpha = atStall.alpha();
        from = atStall;
        balance = trimmer.airframe().balance(pack);
    }

    /** The descent at a speed. */
    Descent at(double speed) {
        return at(speed, atStall, USUAL_SLOPE, ANGLE_TOLERANCE);
    }

    /** The descents at several speeds, not far apart in order: each is looked for from the one before. */
    List<Descent> at(List<Double> speeds) {
        startFrom(atStall);
        return speeds.stream().map(this::next).toList();
    }

    /** Lets the next descent be looked for from an attitude. */
    void startFrom(Attitude attitude) {
        from = attitude;
        slope = USUAL_SLOPE;
    }

    /** The descent at a speed, looked for from the one before. */
    Descent next(double speed) {
        Descent descent = at(speed, from, slope, SWEEP_TOLERANCE);
        from = descent.steady().orElse(atStall);
        slope = descent.steady().isPresent() ? lastSlope : USUAL_SLOPE;
        return descent;
    }

    private Descent at(double speed, Attitude start, double startSlope, double tolerance) {
        double wanted = balance.resultantFor(speed);
        // The lift that is left to carry what the drag does not: it rises through zero lift, so that one root is left.
        UnivariateFunction excess = alpha -> excess(attitude(speed, alpha), wanted);
        double near = start.alpha() - excess(start, wanted) / startSlope;
        WarmStartSecant root = new WarmStartSecant(tolerance, near, startSlope);
        OptionalDouble alpha = root.solve(excess, stallAlpha - WIDEST, stallAlpha);
        lastSlope = root.slope();
        if (alpha.isEmpty()) {
            Outcome outcome = excess.value(stallAlpha) < 0 ? Outcome.TOO_SLOW : Outcome.NOT_FOUND;
            return new Descent(outcome, Optional.empty());
        }
        Attitude attitude = attitude(speed, alpha.getAsDouble());
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

    /**
     * Steady speed straight down, m/s; empty where it was not found. Angle of attack and speed are drawn near together: each
     * attitude gives the angle without lift, on the slope known from the last, and the speed that its drag holds.
     *
     * @param firstGuess m/s
     */
    Optional<Double> noseDownSpeed(double firstGuess) {
        Attitude here = attitude(firstGuess, stallAlpha - atStall.lift() / USUAL_SLOPE);
        double slope = USUAL_SLOPE;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double shift = here.lift() / slope;
            double speed = balance.speed(0, here.drag());
            if (Math.abs(shift) < ANGLE_TOLERANCE && Math.abs(speed - here.speed()) < SPEED_TOLERANCE * speed) {
                boolean flies = here.converged() && here.elevatorLimit() == Attitude.ElevatorLimit.NONE;
                return flies ? Optional.of(speed) : Optional.empty();
            }
            double alpha = Interpolation.clamp(here.alpha() - shift, stallAlpha - WIDEST, stallAlpha);
            Attitude next = attitude(speed, alpha);
            double secant = (next.lift() - here.lift()) / (next.alpha() - here.alpha());
            if (Math.abs(alpha - here.alpha()) > SECANT_STEP && secant > 0) {
                slope = secant;
            }
            here = next;
        }
        return Optional.empty();
    }

    /**
     * The fastest and so the steepest descent that the elevator holds; empty where its travel ends none between the stall and
     * the dive.
     *
     * @param stallSpeed m/s
     */
    Optional<Attitude> elevatorEnd(double stallSpeed) {
        double held = SLOWEST * stallSpeed;
        if (at(held).outcome() != Outcome.STEADY) {
            return Optional.empty();
        }
        for (int k = 0; k < MOST_RUNGS; k++) {
            double next = held * RUNG;
            Outcome outcome = at(next).outcome();
            if (outcome == Outcome.ELEVATOR_SHORT) {
                double end = new BisectionSolver(END_TOLERANCE * held)
                        .solve(MOST_HALVINGS, v -> at(v).outcome() == Outcome.STEADY ? 1 : -1, held, next);
                // The root lies within the tolerance on either side of the end; this side of it the descent is held.
                return at(end - END_TOLERANCE * held).steady();
            }
            if (outcome != Outcome.STEADY) {
                return Optional.empty();
            }
            held = next;
        }
        return Optional.empty();
    }

    private Attitude attitude(double speed, double alpha) {
        if (last.isEmpty() || last.get().speed() != speed || last.get().alpha() != alpha) {
            last = Optional.of(trimmer.at(pack, speed, alpha));
        }
        return last.get();
    }
}
