package throwline.flight;

import java.util.Optional;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.StallReading;
import throwline.model.Pack;

/**
 * Search for the slowest flight with the motor running: at one speed a walk up in angle of attack to the most lift of the
 * air alone; then the speed at which that, with what the propeller lifts, carries the model (methods manual 20.12). What
 * the propeller lifts goes on rising past the stall and would find none. Power never adds more lift than its thrust
 * (Diehl): where a weak jet puts off a first stall at the root, that is the bound.
 */
final class PoweredStallSearch {

    private static final double STEP = Math.toRadians(1);
    private static final int MOST_STEPS = 40;
    private static final int MOST_PASSES = 8;
    private static final double SPEED_TOLERANCE = 1e-3;

    /** A walk begins so far below the top with the throttle closed. */
    private static final double HEAD_START = Math.toRadians(3);

    /** And so far below the top at a speed near by. */
    private static final double SHORT_START = Math.toRadians(1);

    /** Lift over the square of the speed: the more the slower, because the jet is faster against the air then. */
    private static final double FIRST_SLOPE = 1.2;

    private final Trimmer trimmer;
    private final Pack pack;
    private final Stall closed;

    /**
     * @param trimmer the model with the motor running
     * @param pack with this battery
     * @param closed the stall with the throttle closed
     */
    PoweredStallSearch(Trimmer trimmer, Pack pack, Stall closed) {
        this.trimmer = trimmer;
        this.pack = pack;
        this.closed = closed;
    }

    /** The slowest flight; empty where it was not found. */
    Optional<PoweredStall> find(double throttle) {
        SteadyDescent balance = trimmer.airframe().balance(pack);
        double speed = closed.speed();
        double slope = FIRST_SLOPE;
        double alpha = closed.attitude().alpha();
        Optional<Top> before = Optional.empty();
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            Optional<Top> top = top(speed, alpha - (pass == 0 ? HEAD_START : SHORT_START));
            if (top.isEmpty()) {
                return Optional.empty();
            }
            double most = Math.min(top.get().attitude.lift(), closed.attitude().lift() + thrust(speed));
            if (!(most > 0)) {
                // Hanging on its propeller: no lift of the wing is left to be the most.
                return Optional.empty();
            }
            double excess = Math.log(most / balance.resultantFor(speed));
            if (before.isPresent()) {
                double secant = (excess - before.get().excess)
                        / Math.log(speed / before.get().attitude.speed());
                slope = secant > 0.2 ? secant : slope;
            }
            double next = speed * Math.exp(-excess / slope);
            if (Math.abs(next - speed) < SPEED_TOLERANCE * speed) {
                Top found = top.get();
                return Optional.of(
                        new PoweredStall(next, throttle, found.attitude, found.firstStrip, found.elevatorLimited));
            }
            before = Optional.of(top.get().with(excess));
            alpha = top.get().attitude.alpha();
            speed = Math.max(0.5 * speed, next);
        }
        return Optional.empty();
    }

    /** Thrust over dynamic pressure and area. */
    private double thrust(double speed) {
        Airframe airframe = trimmer.airframe();
        double pull = trimmer.jet(speed).map(jet -> jet.point().thrust()).orElse(0.0);
        return pull
                / (airframe.air().dynamicPressure(speed)
                        * airframe.model().wing().area());
    }

    /** The most lift of the air at a speed, walked to from an angle of attack, or from below where it stalls there. */
    private Optional<Top> top(double speed, double near) {
        double first = STEP * Math.floor(near / STEP);
        Step start = step(speed, first);
        for (int k = 0; k < MOST_STEPS && (start.margin() <= 0 || !start.converged()); k++) {
            first -= STEP;
            start = step(speed, first);
        }
        AngleWalk<Step> walk = AngleWalk.up(
                first, STEP, MOST_STEPS, (alpha, before) -> step(speed, alpha), PoweredStallSearch::isDone);
        if (walk.top() < 0) {
            return Optional.empty();
        }
        boolean limited = !walk.ended();
        Attitude attitude = limited
                ? walk.get(walk.top()).attitude
                : trimmer.at(pack, speed, walk.stall().alpha());
        int onset = (int) Math.min(
                walk.size() - 1.0, Math.ceil(walk.firstFall(Step::margin).orElse(walk.top())));
        int strip = StallReading.of(walk.get(onset).attitude.wing()).strip();
        return attitude.converged() ? Optional.of(new Top(attitude, strip, limited, 0)) : Optional.empty();
    }

    private static boolean isDone(AngleWalk<Step> walk) {
        return walk.firstFall(Step::margin).isPresent()
                && walk.top() < walk.size() - 2
                && walk.last().lift() < walk.get(walk.top()).lift();
    }

    private Step step(double speed, double alpha) {
        Attitude attitude = trimmer.at(pack, speed, alpha);
        double own = trimmer.jet(speed)
                .map(jet ->
                        jet.ownLift(alpha) / trimmer.airframe().model().wing().area())
                .orElse(0.0);
        return new Step(attitude, attitude.lift() - own);
    }

    /** The lift that the air gives at one angle. */
    private record Step(Attitude attitude, double lift) implements AngleWalk.Point {
        @Override
        public double alpha() {
            return attitude.alpha();
        }

        @Override
        public boolean converged() {
            return attitude.converged() && attitude.elevatorLimit() == Attitude.ElevatorLimit.NONE;
        }

        double margin() {
            return StallReading.of(attitude.wing()).margin();
        }
    }

    private record Top(Attitude attitude, int firstStrip, boolean elevatorLimited, double excess) {
        Top with(double other) {
            return new Top(attitude, firstStrip, elevatorLimited, other);
        }
    }
}
