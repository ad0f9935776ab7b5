package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.flight.PullUp.Limit;
import throwline.model.Pack;

/**
 * Walks up in angle of attack at one speed with the model balanced while it pitches with its path, until the wing gives
 * its most lift: what the elevator and the tail have to do at every load.
 */
final class PullUpSearch {

    private static final double STEP = Math.toRadians(1.5);
    private static final int MOST_STEPS = 40;

    private final Trimmer trimmer;
    private final Pack pack;
    private final double speed;
    private final double perLoad;
    private final Path path;
    private final List<Attitude> attitudes = new ArrayList<>();
    private int top;
    private double peak = Double.NaN;
    private double peakAlpha = Double.NaN;

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
        walk(from);
    }

    private void walk(double from) {
        double pitch = pitchFor(trimmer.at(pack, speed, from));
        double before = pitch;
        for (int k = 0; k < MOST_STEPS; k++) {
            // The rate that the load will have here, carried on from the steps before; the load hardly depends on it.
            Attitude here = trimmer.at(pack, speed, from + k * STEP, pitch + (pitch - before));
            before = pitch;
            pitch = pitchFor(here);
            if (!here.converged()) {
                return;
            }
            attitudes.add(here);
            if (here.lift() > attitudes.get(top).lift()) {
                top = attitudes.size() - 1;
            }
            if (attitudes.size() - 1 > top + 1) {
                peak();
                return;
            }
        }
    }

    /** Pitch rate over speed of a path that bends with the load, rad/m. */
    private double pitchFor(Attitude attitude) {
        return Gravity.STANDARD * path.bend(attitude.lift() / perLoad) / (speed * speed);
    }

    private void peak() {
        Attitude middle = attitudes.get(top);
        peak = middle.lift();
        peakAlpha = middle.alpha();
        if (top > 0) {
            double left = attitudes.get(top - 1).lift();
            double right = attitudes.get(top + 1).lift();
            double bend = left - 2 * middle.lift() + right;
            double shift = bend < 0 ? (left - right) / (2 * bend) : 0;
            peak = middle.lift() - (left - right) * shift / 4;
            peakAlpha = middle.alpha() + shift * STEP;
        }
    }

    /** True where the wing's most lift was found. */
    boolean found() {
        return !Double.isNaN(peak);
    }

    /**
     * The limits.
     *
     * @param trim where the elevator stands without stick, rad
     * @param available where the stick at full brings it, rad, not beyond its travel
     */
    PullUp limits(double trim, double available) {
        Optional<Double> stick = firstBelow(Quantity.ELEVATOR, available);
        Optional<Double> tail = firstBelow(Quantity.TAIL_MARGIN, 0);
        double wingLoad = peak / perLoad;
        double byStick = stick.map(at -> value(at, Quantity.LIFT) / perLoad).orElse(Double.POSITIVE_INFINITY);
        double byTail = tail.map(at -> value(at, Quantity.LIFT) / perLoad).orElse(Double.POSITIVE_INFINITY);
        double load = Math.min(wingLoad, Math.min(byStick, byTail));
        Limit limit = load == wingLoad ? Limit.WING : load == byStick ? Limit.ELEVATOR : Limit.TAIL;
        double at = limit == Limit.WING ? top : (limit == Limit.ELEVATOR ? stick : tail).orElseThrow();
        boolean free = attitudes.get(top).elevatorLimit() == ElevatorLimit.NONE;
        Optional<Double> share = free && available < trim
                ? Optional.of((attitudes.get(top).elevator() - trim) / (available - trim))
                : Optional.empty();
        return new PullUp(
                speed,
                wingLoad,
                stick.isPresent() ? Optional.of(byStick) : Optional.empty(),
                tail.isPresent() ? Optional.of(byTail) : Optional.empty(),
                limit,
                load,
                load,
                load * perLoad,
                value(at, Quantity.DRAG),
                limit == Limit.WING ? 0 : Math.max(0, peakAlpha - value(at, Quantity.ALPHA)),
                share);
    }

    private enum Quantity {
        ALPHA,
        LIFT,
        DRAG,
        ELEVATOR,
        TAIL_MARGIN
    }

    private static double of(Attitude attitude, Quantity quantity) {
        return switch (quantity) {
            case ALPHA -> attitude.alpha();
            case LIFT -> attitude.lift();
            case DRAG -> attitude.drag();
            case ELEVATOR -> attitude.elevator();
            case TAIL_MARGIN -> attitude.tailMargin();
        };
    }

    /** Place in the walk, a fraction between two steps, where the load passes a value on the way up. */
    private Optional<Double> crossing(double load) {
        for (int i = 1; i <= top; i++) {
            double a = attitudes.get(i - 1).lift() / perLoad;
            double b = attitudes.get(i).lift() / perLoad;
            if (a <= load && load <= b) {
                return Optional.of(i - 1 + (load - a) / (b - a));
            }
        }
        return Optional.empty();
    }

    /** Place from straight flight up to the most lift where a quantity first falls below a value. */
    private Optional<Double> firstBelow(Quantity quantity, double limit) {
        int start = crossing(1).map(at -> (int) Math.floor(at)).orElse(0);
        for (int i = start + 1; i <= top; i++) {
            double a = of(attitudes.get(i - 1), quantity);
            double b = of(attitudes.get(i), quantity);
            if (b <= limit) {
                double share = a > b ? Math.max(0, Math.min(1, (a - limit) / (a - b))) : 0;
                return Optional.of(i - 1 + share);
            }
        }
        return Optional.empty();
    }

    private double value(double place, Quantity quantity) {
        int i = (int) Math.min(attitudes.size() - 2.0, Math.floor(place));
        double a = of(attitudes.get(i), quantity);
        return a + (place - i) * (of(attitudes.get(i + 1), quantity) - a);
    }
}
