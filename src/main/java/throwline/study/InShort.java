package throwline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.study.Danger.Use;
import throwline.study.HeadlineNumbers.RollRate;

/**
 * Summary that a flyer must take away from a comparison with one pack, decided once for every screen, page, sheet and
 * card. No set-up is named for what one of its dangers rules it out for.
 *
 * @param dangers the dangers that hold, the worst first, each with the set-ups that it holds for
 * @param slowest who lands slowest
 * @param leastWarned who may land where a danger holds for each; empty where one is free of them
 * @param steeper set-ups that clearly come down steeper than the reference, the steepest first
 * @param noSteeper set-ups of which that is too close to call
 * @param elevators the elevator to program, a set-up that moves something each
 * @param rollLost set-ups that clearly leave less of the first roll stick than the reference has
 * @param sticks what other roll sticks bring over the first in the reference set-up
 */
public record InShort(
        Map<Danger, List<String>> dangers,
        Optional<Slowest> slowest,
        Optional<LeastWarned> leastWarned,
        List<Against> steeper,
        List<Against> noSteeper,
        List<Elevator> elevators,
        List<Against> rollLost,
        List<StickGain> sticks) {

    /**
     * Who lands slowest.
     *
     * @param setUps names of those that cannot be told apart, the slowest first
     * @param speed a speed to come in at that serves each of them, m/s
     * @param all true where no two set-ups can be told apart
     * @param passedOver true where a set-up that a danger rules out lands slower
     */
    public record Slowest(List<String> setUps, double speed, boolean all, boolean passedOver) {
        public Slowest {
            setUps = List.copyOf(setUps);
        }
    }

    /**
     * The set-up whose worst danger ranks least, and among several the slowest.
     *
     * @param setUp its name
     * @param speed of its approach, m/s
     * @param worst the worst danger that rules it out for landing
     */
    public record LeastWarned(String setUp, double speed, Danger worst) {}

    /**
     * A number of a set-up against that of the reference.
     *
     * @param setUp name of the set-up
     * @param own its number
     * @param reference the reference's
     */
    public record Against(String setUp, Headline.Known own, Headline.Known reference) {}

    /**
     * The elevator that is programmed with a set-up.
     *
     * @param setUp name of the set-up
     * @param change expected against the reference at the same speed, rad, trailing edge down positive
     */
    public record Elevator(String setUp, Headline.Known change) {}

    /**
     * What a roll stick brings over the first one.
     *
     * @param stick its name
     * @param first name of the first one
     * @param rate its roll rate, rad/s
     * @param firstRate that of the first, rad/s
     */
    public record StickGain(String stick, String first, Headline.Known rate, Headline.Known firstRate) {}

    /**
     * Dangers that hold for the same set-ups.
     *
     * @param dangers the worst first
     * @param setUps names of the set-ups
     */
    public record Warning(List<Danger> dangers, List<String> setUps) {
        public Warning {
            dangers = List.copyOf(dangers);
            setUps = List.copyOf(setUps);
        }
    }

    /** The dangers of the same set-ups together, the worst first; {@link Danger#NEVER_MEASURED} is said once, for all. */
    public List<Warning> warnings() {
        Map<List<String>, List<Danger>> together = new LinkedHashMap<>();
        dangers.forEach((danger, names) -> {
            if (danger != Danger.NEVER_MEASURED) {
                together.computeIfAbsent(names, n -> new ArrayList<>()).add(danger);
            }
        });
        return together.entrySet().stream()
                .map(each -> new Warning(each.getValue(), each.getKey()))
                .toList();
    }

    /**
     * Who may land where a danger rules each of these out for it; empty where one is not ruled out, and where all are for
     * everything.
     */
    public static Optional<LeastWarned> leastWarned(Model model, List<SetUpResult> setUps) {
        List<LeastWarned> all = new ArrayList<>();
        for (SetUpResult setUp : setUps) {
            List<Danger> dangers = Danger.of(setUp, model.field());
            Optional<Danger> worst = dangers.stream()
                    .filter(danger -> danger.rulesOut(Use.LANDING))
                    .findFirst();
            if (worst.isEmpty()) {
                return Optional.empty();
            }
            if (!Danger.anyRulesOut(dangers, Use.FLYING) && setUp.approachSpeed() instanceof Headline.Known speed) {
                all.add(new LeastWarned(setUp.setUp().name(), speed.value(), worst.get()));
            }
        }
        return all.stream()
                .min(Comparator.comparing(LeastWarned::worst).reversed().thenComparingDouble(LeastWarned::speed));
    }

    /** What to take away from all set-ups of a model with one pack. */
    public static InShort of(Model model, List<SetUpResult> setUps) {
        return new Maker(model, setUps).make();
    }

    private static final class Maker {

        private final Model model;
        private final List<SetUpResult> setUps;
        private final Map<String, List<Danger>> dangers = new LinkedHashMap<>();
        private final Optional<SetUpResult> reference;

        Maker(Model model, List<SetUpResult> setUps) {
            this.model = model;
            this.setUps = setUps;
            setUps.forEach(setUp -> dangers.put(setUp.setUp().name(), Danger.of(setUp, model.field())));
            reference = setUps.stream()
                    .filter(setUp -> model.isReference(setUp.setUp()))
                    .findFirst();
        }

        InShort make() {
            return new InShort(
                    byDanger(),
                    slowest(),
                    leastWarned(model, setUps),
                    steep(true),
                    steep(false),
                    moved().flatMap(s -> elevator(s).stream()).toList(),
                    rollLost(),
                    sticks());
        }

        private Stream<SetUpResult> moved() {
            return setUps.stream().filter(setUp -> !model.isReference(setUp.setUp()));
        }

        private Map<Danger, List<String>> byDanger() {
            Map<Danger, List<String>> found = new EnumMap<>(Danger.class);
            dangers.forEach((name, all) -> all.forEach(danger ->
                    found.computeIfAbsent(danger, d -> new ArrayList<>()).add(name)));
            return Collections.unmodifiableMap(found);
        }

        private boolean mayBeNamed(SetUpResult setUp, Use use) {
            return !Danger.anyRulesOut(dangers.getOrDefault(setUp.setUp().name(), List.of()), use);
        }

        /** The slowest that may be named and whoever cannot be told apart from it, slowest first. */
        private Optional<Slowest> slowest() {
            record Speed(String name, Headline.Known speed) {}
            List<Speed> speeds = setUps.stream()
                    .filter(setUp -> mayBeNamed(setUp, Use.LANDING))
                    .flatMap(setUp -> setUp.approachSpeed().known().stream()
                            .map(speed -> new Speed(setUp.setUp().name(), speed)))
                    .sorted(Comparator.comparingDouble(s -> s.speed().value()))
                    .toList();
            if (speeds.isEmpty()) {
                return Optional.empty();
            }
            Headline.Known first = speeds.get(0).speed();
            List<Speed> like =
                    speeds.stream().filter(s -> s.speed().tooCloseTo(first)).toList();
            double serves =
                    like.stream().mapToDouble(s -> s.speed().value()).max().orElseThrow();
            boolean all = like.size() == setUps.size();
            boolean passedOver = setUps.stream()
                    .filter(setUp -> !mayBeNamed(setUp, Use.LANDING))
                    .anyMatch(setUp -> setUp.approachSpeed()
                            .known()
                            .filter(speed -> speed.value() < first.value())
                            .isPresent());
            return Optional.of(new Slowest(like.stream().map(Speed::name).toList(), serves, all, passedOver));
        }

        private List<Against> steep(boolean clearly) {
            return against(
                            SetUpResult::descentAngle,
                            setUp -> mayBeNamed(setUp, Use.DESCENT),
                            (own, other) -> clearly
                                    ? !own.tooCloseTo(other) && own.value() > other.value() && other.value() > 0
                                    : own.tooCloseTo(other))
                    .stream()
                    .sorted(Comparator.comparingDouble((Against a) -> a.own().value())
                            .reversed())
                    .toList();
        }

        private Optional<Elevator> elevator(SetUpResult setUp) {
            return setUp.number(FlightQuantity.ELEVATOR_CHANGE)
                    .known()
                    .map(change -> new Elevator(setUp.setUp().name(), change));
        }

        private List<Against> rollLost() {
            return against(
                    this::firstRate,
                    setUp -> true,
                    (own, other) -> !own.tooCloseTo(other) && own.value() < other.value());
        }

        /** The rate of the first roll stick of the model. */
        private Headline firstRate(SetUpResult setUp) {
            Optional<String> stick = reference.flatMap(
                    r -> r.rollRates().stream().map(RollRate::stick).findFirst());
            return setUp.rollRates().stream()
                    .filter(roll -> stick.filter(roll.stick()::equals).isPresent())
                    .map(RollRate::rate)
                    .findFirst()
                    .orElse(new Headline.Unknown("why.no-roll"));
        }

        private List<Against> against(
                Function<SetUpResult, Headline> number,
                Predicate<SetUpResult> named,
                BiPredicate<Headline.Known, Headline.Known> holds) {
            Optional<Headline.Known> other =
                    reference.flatMap(r -> number.apply(r).known());
            return other.isEmpty()
                    ? List.of()
                    : moved().filter(named)
                            .flatMap(setUp -> number.apply(setUp).known().stream()
                                    .filter(own -> holds.test(own, other.get()))
                                    .map(own -> new Against(setUp.setUp().name(), own, other.get())))
                            .toList();
        }

        private List<StickGain> sticks() {
            List<RollRate> rolls = reference.map(SetUpResult::rollRates).orElse(List.of());
            if (rolls.isEmpty() || rolls.get(0).rate().known().isEmpty()) {
                return List.of();
            }
            Headline.Known first = rolls.get(0).rate().known().get();
            return rolls.stream()
                    .skip(1)
                    .flatMap(roll -> roll.rate().known().stream()
                            .map(rate ->
                                    new StickGain(roll.stick(), rolls.get(0).stick(), rate, first)))
                    .toList();
        }
    }
}
