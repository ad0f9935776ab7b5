package throwline.flight;

import java.util.Optional;
import java.util.OptionalDouble;
import throwline.air.Gravity;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.flight.PullUp.Limit;
import throwline.liftingline.AngleWalk;
import throwline.model.Pack;

/**
 * Search for the tightest pull at one speed: a walk up in angle of attack with the model balanced while it pitches with its
 * path, until the wing gives its most lift, and what the elevator and the tail have to do at every load.
 */
final class PullUpSearch {

    private static final double STEP = Math.toRadians(1.5);
    private static final int MOST_POINTS = 40;

    private final Trimmer trimmer;
    private final Pack pack;
    private final double speed;
    private final double perLoad;
    private final Path path;
    private final double straight;
    private final AngleWalk<Pulled> walk;

    /** How a path bends under a load; the model pitches as fast. */
    enum Path {
        /** Up from the bottom of a loop: with what the load leaves over the weight. */
        LOOP,
        /** Round, level and banked so that the load carries the weight: the share of the turn that is a pitch. */
        LEVEL_TURN;

        /** Pitch rate times speed over gravity. */
        double bend(double load) {
            if (this == LOOP) {
                return load - 1;
            }
            // Below straight flight there is no level turn; the walk begins there and goes on along the same line.
            return load > 1 ? load - 1 / load : 2 * (load - 1);
        }
    }

    /**
     * @param path how the path bends
     * @param trimmer the model with its surfaces where the stick at full puts them
     * @param pack with this battery
     * @param speed m/s
     * @param from angle of attack to begin at, rad, below that of straight flight
     */
    PullUpSearch(Path path, Trimmer trimmer, Pack pack, double speed, double from) {
        this.path = path;
        this.trimmer = trimmer;
        this.pack = pack;
        this.speed = speed;
        SteadyDescent balance = trimmer.airframe().balance(pack);
        perLoad = balance.resultantFor(speed);
        straight = pitchFor(trimmer.at(pack, speed, from));
        walk = AngleWalk.up(from, STEP, MOST_POINTS, this::pitching, w -> w.size() - 1 > w.top() + 1);
    }

    /** The rate that the load will have here, carried on from the points before; the load hardly depends on it. */
    private Pulled pitching(double alpha, AngleWalk<Pulled> before) {
        int known = before.size();
        double last = known > 0 ? pitchFor(before.last().attitude) : straight;
        double earlier = known > 1 ? pitchFor(before.get(known - 2).attitude) : straight;
        Attitude attitude = trimmer.at(pack, speed, alpha, last + (last - earlier));
        double own = trimmer.jet(speed)
                .map(jet ->
                        jet.ownLift(alpha) / trimmer.airframe().model().wing().area())
                .orElse(0.0);
        return new Pulled(attitude, own);
    }

    /**
     * One point of the walk. What the propeller lifts goes on rising past the stall: the top is that of the air's lift.
     *
     * @param own lift coefficient of the propeller
     */
    private record Pulled(Attitude attitude, double own) implements AngleWalk.Point {
        @Override
        public double alpha() {
            return attitude.alpha();
        }

        @Override
        public double lift() {
            return attitude.lift() - own;
        }

        @Override
        public boolean converged() {
            return attitude.converged();
        }

        double whole() {
            return attitude.lift();
        }

        double elevator() {
            return attitude.elevator();
        }
    }

    /**
     * A pull's end.
     *
     * @param alpha angle of attack there, rad
     */
    record Reached(PullUp pull, double alpha) {}

    /** Pitch rate over speed of a path that bends with the load, rad/m. */
    private double pitchFor(Attitude attitude) {
        return Gravity.STANDARD * path.bend(attitude.lift() / perLoad) / (speed * speed);
    }

    /** True where the wing's most lift was found. */
    boolean found() {
        return walk.ended();
    }

    /**
     * The limits.
     *
     * @param trim where the elevator stands without stick, rad
     * @param available where the stick at full brings it, rad, not beyond its travel
     */
    Reached limits(double trim, double available) {
        int top = walk.top();
        int start = (int) walk.firstFall(a -> 1 - a.whole() / perLoad, 0, top).orElse(0);
        OptionalDouble stick = walk.firstFall(a -> a.elevator() - available, start, top);
        OptionalDouble tail = walk.firstFall(a -> a.attitude.tailMargin(), start, top);
        AngleWalk.Peak peak = walk.peak();
        double wingLoad = (peak.lift() + walk.get(top).own) / perLoad;
        OptionalDouble byStick = loadAt(stick);
        OptionalDouble byTail = loadAt(tail);
        double load = Math.min(
                wingLoad, Math.min(byStick.orElse(Double.POSITIVE_INFINITY), byTail.orElse(Double.POSITIVE_INFINITY)));
        Limit limit =
                load == wingLoad ? Limit.WING : byStick.stream().anyMatch(l -> l == load) ? Limit.ELEVATOR : Limit.TAIL;
        double at = limit == Limit.WING ? top : (limit == Limit.ELEVATOR ? stick : tail).orElseThrow();
        Attitude highest = walk.get(top).attitude;
        boolean free = highest.elevatorLimit() == ElevatorLimit.NONE;
        Optional<Double> share = free && available < trim
                ? Optional.of((highest.elevator() - trim) / (available - trim))
                : Optional.empty();
        double alpha = limit == Limit.WING ? peak.alpha() : walk.value(at, Pulled::alpha);
        PullUp pull = new PullUp(
                speed,
                wingLoad,
                byStick.stream().boxed().findFirst(),
                byTail.stream().boxed().findFirst(),
                limit,
                load,
                load,
                load * perLoad,
                walk.value(at, a -> a.attitude.drag()),
                Math.max(0, peak.alpha() - alpha),
                share);
        return new Reached(pull, alpha);
    }

    private OptionalDouble loadAt(OptionalDouble place) {
        return place.isPresent() ? OptionalDouble.of(walk.value(place.getAsDouble(), Pulled::whole) / perLoad) : place;
    }
}
