package throwline.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import throwline.correction.Expectation;
import throwline.correction.FlownRows;
import throwline.correction.Flying;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.study.FieldAnswer.Legs;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult.SpeedPoint;

/** Numbers of one set-up with one pack after the flights of its model. Methods manual 21.5. */
final class LearntRows {

    /** No band is printed narrower than tests repeat (PRACTICE): shares of the value, and rad. */
    private static final double STALL_REPEATS = 0.02;

    private static final double ANGLE_REPEATS = 0.05;
    private static final double ELEVATOR_REPEATS = Math.toRadians(0.5);
    private static final double ROLL_REPEATS = 0.04;

    private final Model model;
    private final SetUpResult result;
    private final Flying flying;
    private final Optional<Flying> reference;
    private final LearntState state;
    private final Predicate<FlightQuantity> flown;

    /**
     * @param model the aeroplane
     * @param result before
     * @param flying the set-up
     * @param reference the set-up that others are compared with; empty for that one itself
     * @param state what was learnt
     * @param flown whether this set-up was flown for a number
     */
    LearntRows(
            Model model,
            SetUpResult result,
            Flying flying,
            Optional<Flying> reference,
            LearntState state,
            Predicate<FlightQuantity> flown) {
        this.model = model;
        this.result = result;
        this.flying = flying;
        this.reference = reference;
        this.state = state;
        this.flown = flown;
    }

    SetUpResult corrected() {
        Headline.Known stallBefore = result.known(FlightQuantity.STALL_SPEED).orElseThrow();
        Headline.Known approachBefore =
                result.known(FlightQuantity.APPROACH_SPEED).orElseThrow();
        Headline.Known stall = state.ratio(
                stallBefore,
                new FlownRows(flying, Stall.APPROACH).stall(),
                0,
                STALL_REPEATS,
                flown.test(FlightQuantity.STALL_SPEED));
        Headline.Known approach = approach(stallBefore, approachBefore, stall);
        FlownRows rows = new FlownRows(flying, approach.value() / stall.value());
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
        numbers.put(FlightQuantity.STALL_SPEED, stall);
        numbers.put(FlightQuantity.APPROACH_SPEED, approach);
        result.known(FlightQuantity.DESCENT_ANGLE).ifPresent(angle -> {
            Headline.Known after =
                    state.ratio(angle, rows.descent(), 0, ANGLE_REPEATS, flown.test(FlightQuantity.DESCENT_ANGLE));
            numbers.putAll(learntDescent(approachBefore, approach, angle, after));
        });
        result.known(FlightQuantity.ELEVATOR)
                .ifPresent(e -> numbers.put(
                        FlightQuantity.ELEVATOR,
                        state.difference(e, rows.elevator(), ELEVATOR_REPEATS, flown.test(FlightQuantity.ELEVATOR))));
        change(rows).ifPresent(change -> numbers.put(FlightQuantity.ELEVATOR_CHANGE, change));
        derived(rows, approach.value() / stall.value())
                .forEach((quantity, row) -> result.known(quantity)
                        .filter(before -> before.value() > 0)
                        .ifPresent(before -> numbers.put(quantity, state.derived(before, row, flown.test(quantity)))));
        HeadlineNumbers corrected =
                new HeadlineNumbers(result.headlines().with(numbers).byQuantity(), rolls(rows));
        return result.with(corrected, sweep(), servos(corrected.number(FlightQuantity.ELEVATOR_CHANGE)));
    }

    /** The mix to start with goes with the change. */
    private ServoAnswer servos(Headline change) {
        ServoAnswer before = result.servos();
        Optional<ServoAnswer.Position> mix = reference.isPresent() && change instanceof Headline.Known known
                ? known.startingMix().map(new Positions(model)::mix)
                : before.mix();
        return new ServoAnswer(before.limitedBy(), before.loads(), before.positions(), before.yields(), mix);
    }

    /**
     * The approach speed follows a stall that is faster than predicted; one that is slower lowers it no further than to 1.3
     * times the upper end of the stall's band. A narrower band is no reserve.
     */
    private Headline.Known approach(Headline.Known stallBefore, Headline.Known before, Headline.Known stall) {
        double follows = Stall.APPROACH * stall.value();
        double least = Math.min(before.value(), Stall.APPROACH * stall.high());
        double value = stall.value() < stallBefore.value() ? Math.max(follows, least) : follows;
        Headline.Known plain = stall.times(Stall.APPROACH);
        return new Headline.Known(
                value,
                Math.min(value, plain.low()),
                Math.max(value, plain.high()),
                plain.basis(),
                before.shared(),
                plain.learnt());
    }

    private Map<FlightQuantity, Headline> learntDescent(
            Headline.Known speedBefore, Headline.Known speed, Headline.Known before, Headline.Known angle) {
        Map<FlightQuantity, Headline> earlier = SetUpAnswer.ofDescent(speedBefore.value(), before);
        Map<FlightQuantity, Headline> after = new EnumMap<>(SetUpAnswer.ofDescent(speed.value(), angle));
        double v = speed.value();
        after.replaceAll((quantity, headline) -> {
            double slope =
                    switch (quantity) {
                        case SINK_RATE -> v * Math.cos(angle.value());
                        case APPROACH_GLIDE_RATIO -> -1 / Math.pow(Math.sin(angle.value()), 2);
                        default -> 1;
                    };
            return headline instanceof Headline.Known number && earlier.get(quantity) instanceof Headline.Known old
                    ? LearntState.withBefore(number, old, angle, slope)
                    : headline;
        });
        return after;
    }

    /** The change is the difference of two elevators at the approach speed of this set-up. */
    private Optional<Headline> change(FlownRows rows) {
        Optional<Headline.Known> before = result.known(FlightQuantity.ELEVATOR_CHANGE);
        if (before.isEmpty()
                || reference.isEmpty()
                || before.get().low() == before.get().high()) {
            return Optional.empty();
        }
        Expectation difference = x -> rows.elevator().at(x) - reference.get().elevator(x, rows.speed(x), 0);
        return Optional.of(state.difference(
                before.get(), difference, ELEVATOR_REPEATS, flown.test(FlightQuantity.ELEVATOR_CHANGE)));
    }

    private List<RollRate> rolls(FlownRows rows) {
        List<RollRate> rolls = new ArrayList<>();
        for (RollRate roll : result.rollRates()) {
            Headline rate = roll.rate() instanceof Headline.Known known && known.value() > 0
                    ? state.ratio(known, rows.roll(roll.stick()), 0, ROLL_REPEATS, flown.test(FlightQuantity.ROLL_RATE))
                    : roll.rate();
            rolls.add(new RollRate(roll.stick(), rate, roll.atItsStop()));
        }
        return rolls;
    }

    /** Logarithms of numbers that follow from speed, path and drag; the powers are those of the laws behind them. */
    private Map<FlightQuantity, Expectation> derived(FlownRows rows, double approach) {
        Map<FlightQuantity, Expectation> derived = new EnumMap<>(FlightQuantity.class);
        Expectation angle = rows.descent();
        Expectation speed = x -> Math.log(rows.speed(x));
        derived.put(FlightQuantity.FLARE_HEIGHT, x -> 2 * angle.at(x) + 2 * speed.at(x));
        derived.put(FlightQuantity.FLOAT, x -> 2 * speed.at(x) - angle.at(x));
        derived.put(
                FlightQuantity.GUST_LIMIT, x -> rows.gust(x) + Math.log(approach * (1 - 1 / (approach * approach))));
        derived.put(FlightQuantity.BEST_GLIDE_RATIO, rows.bestGlide());
        result.known(FlightQuantity.NOSE_DOWN_SPEED)
                .ifPresent(v -> derived.put(FlightQuantity.NOSE_DOWN_SPEED, rows.noseDown(v.value())));
        result.field()
                .stillAir()
                .ifPresent(legs -> derived.put(FlightQuantity.LANDING_DISTANCE, landing(legs, angle, speed)));
        result.field()
                .inWind()
                .or(() -> result.field().stillAir())
                .ifPresent(legs -> derived.put(FlightQuantity.LANDING_DISTANCE_IN_WIND, landing(legs, angle, speed)));
        return derived;
    }

    /** Approach over the obstacle goes with 1/angle, round-out with speed squared times angle, float and roll with speed squared. */
    private Expectation landing(Legs legs, Expectation angle, Expectation speed) {
        double[] middle = state.means();
        double angleBefore = angle.at(middle);
        double speedBefore = speed.at(middle);
        return x -> {
            double steeper = angle.at(x) - angleBefore;
            double faster = 2 * (speed.at(x) - speedBefore);
            double length = Math.max(0, legs.approach()) * Math.exp(-steeper)
                    + legs.roundOut() * Math.exp(faster + steeper)
                    + legs.floated() * Math.exp(faster - steeper)
                    + legs.roll() * Math.exp(faster);
            return Math.log(Math.max(length, 1e-3));
        };
    }

    /** The descent over speed with drag and trim put right. */
    private List<SpeedPoint> sweep() {
        double[] x = state.mean();
        return result.sweep().stream()
                .map(point -> {
                    double angle = flying.descentAngle(x, point.speed(), 0);
                    double lift = point.lift() * Math.cos(angle) / Math.cos(point.descentAngle());
                    return new SpeedPoint(
                            point.speed(),
                            angle,
                            point.speed() * Math.sin(angle),
                            lift,
                            lift * Math.tan(angle),
                            flying.elevator(x, point.speed(), 0));
                })
                .toList();
    }
}
