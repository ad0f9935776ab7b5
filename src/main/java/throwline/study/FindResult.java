package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.flight.StartingMix;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundTakeOff;
import throwline.sizing.FoundThrow;
import throwline.sizing.LoopHelp;
import throwline.sizing.MixCurve;
import throwline.sizing.RollHelp;
import throwline.units.Dimension;
import throwline.units.Measure;
import throwline.words.Message;

/**
 * Throws and mixes for what a pilot wants.
 *
 * @param question what was wanted
 * @param model the model, with the set-up and the sticks that were found
 * @param pack the battery it flies with
 * @param setUp flaps and ailerons; empty where none were asked for
 * @param roll aileron throw; empty where none was asked for
 * @param levelTrim elevator mix; empty where none was asked for
 * @param rollHelp flaps with the ailerons; empty where they were not asked for
 * @param loop flaps with the elevator; empty where no loop was asked for
 * @param takeOff flap for a take-off; empty where none was asked for
 * @param climb throttle and flap for a climb; empty where none was asked for
 * @param sticks the sticks that were found
 * @param flown the reference set-up and the one that was found, as a comparison of set-ups flies them; empty where
 *     neither a set-up nor a stick was found
 * @param notes what else is worth knowing
 */
public record FindResult(
        FindQuestion question,
        Model model,
        Pack pack,
        Optional<SetUpFound> setUp,
        Optional<RollFound> roll,
        Optional<TrimFound> levelTrim,
        Optional<HelpFound> rollHelp,
        Optional<LoopFound> loop,
        Optional<TakeOffFound> takeOff,
        Optional<ClimbFound> climb,
        List<Stick> sticks,
        Optional<Comparison> flown,
        List<Message> notes) {

    public FindResult {
        sticks = List.copyOf(sticks);
        notes = List.copyOf(notes);
    }

    /** A result in which nothing was wanted of the motor. */
    public FindResult(
            FindQuestion question,
            Model model,
            Pack pack,
            Optional<SetUpFound> setUp,
            Optional<RollFound> roll,
            Optional<TrimFound> levelTrim,
            Optional<HelpFound> rollHelp,
            Optional<LoopFound> loop,
            List<Stick> sticks,
            Optional<Comparison> flown,
            List<Message> notes) {
        this(
                question,
                model,
                pack,
                setUp,
                roll,
                levelTrim,
                rollHelp,
                loop,
                Optional.empty(),
                Optional.empty(),
                sticks,
                flown,
                notes);
    }

    /** What to tell where flaps of the answer go further down than any were measured. */
    public List<Message> beyondMeasured() {
        Stream<SetUp> setUps = Stream.of(
                        setUp.stream().map(s -> s.found().trial().setUp()),
                        levelTrim.stream().map(TrimFound::to),
                        takeOff.flatMap(TakeOffFound::proposed).stream())
                .flatMap(s -> s);
        Stream<Double> pulled = sticks.stream()
                .filter(Stick.Pull.class::isInstance)
                .flatMap(stick -> ((Stick.Pull) stick).deflections().values().stream());
        return BeyondMeasured.notes(Stream.concat(setUps.flatMap(s -> s.deflections().values().stream()), pulled)
                .mapToDouble(d -> d)
                .max()
                .orElse(0));
    }

    /** The set-up that was found, and the one that a mix was made for; each with half of the mix that was found for it. */
    public List<SetUp> proposed() {
        List<SetUp> setUps = new ArrayList<>();
        Optional<SetUp> found = setUp.map(s -> s.found().trial().setUp());
        Optional<TrimFound> trim = levelTrim.filter(t -> t.curve().isPresent());
        boolean trimmed = trim.isPresent()
                && found.isPresent()
                && trim.get().to().name().equals(found.get().name());
        if (found.isPresent() && !trimmed) {
            setUps.add(found.get());
        }
        trim.ifPresent(t -> {
            double half = half(t);
            String name = trimmed || found.isPresent() ? t.to().name() : question.name();
            if (trimmed || half != 0) {
                setUps.add(
                        new SetUp(trimmed || found.isEmpty() ? name : name + " trimmed", t.to().deflections(), half));
            }
        });
        takeOff.flatMap(TakeOffFound::proposed).ifPresent(setUps::add);
        return setUps;
    }

    private static double half(TrimFound trim) {
        List<MixCurve.Point> points = trim.curve().orElseThrow().points();
        return trim.start(points.get(points.size() - 1));
    }

    /** True where every want is met. */
    public boolean isMet() {
        return setUp.map(s -> s.found().met()).orElse(true)
                && roll.map(r -> r.found().map(FoundThrow::met).orElse(false)).orElse(true)
                && levelTrim
                        .map(t -> t.curve().isPresent() && t.shortOf().isEmpty())
                        .orElse(true)
                && rollHelp.map(h -> h.help().isPresent()).orElse(true)
                && loop.map(l -> l.round() != LoopFound.Round.NEVER).orElse(true)
                && takeOff.map(t -> t.found().map(FoundTakeOff::met).orElse(false))
                        .orElse(true)
                && climb.map(c -> c.found().met()).orElse(true);
    }

    /**
     * Flaps and ailerons.
     *
     * @param found the answer, or the nearest
     * @param stallSpeed of that set-up, m/s
     * @param descentAngle at the wanted speed, rad; empty where no way down is wanted
     * @param elevatorChange at the wanted speed against the reference, rad; empty where no way down is wanted
     * @param throwBand between which angles of one surface the true answer lies; empty where no band can be given
     */
    public record SetUpFound(
            FoundSetUp found,
            Headline stallSpeed,
            Optional<Headline> descentAngle,
            Optional<Headline> elevatorChange,
            Optional<ThrowBand> throwBand) {}

    /**
     * Angles of one surface between which the wanted value is met nine times out of ten.
     *
     * @param low rad, trailing edge down positive
     * @param high rad
     * @param lowOpen true where it may take less than the surface can do
     * @param highOpen true where it may take more than the surface can do
     */
    public record ThrowBand(
            @Measure(Dimension.ANGLE) double low,
            @Measure(Dimension.ANGLE) double high,
            boolean lowOpen,
            boolean highOpen) {}

    /**
     * Aileron throw.
     *
     * @param in the set-up in which it rolls
     * @param found the answer, or the nearest; empty where the model does not fly or roll so
     * @param rate roll rate with it, rad/s
     */
    public record RollFound(SetUp in, Optional<FoundThrow> found, Headline rate) {}

    /**
     * Elevator mix.
     *
     * @param from set-up with the lever at zero
     * @param to set-up with the lever at its end
     * @param curve the mix; empty where there is none
     * @param whole elevator change with the lever at its end, rad
     * @param shortOf why this is not quite what was asked for; empty where it is
     */
    public record TrimFound(SetUp from, SetUp to, Optional<MixCurve> curve, Headline whole, Optional<Message> shortOf) {

        /** The mix to start with at a point of the curve, rad; none where the whole change may go either way. */
        public double start(MixCurve.Point point) {
            boolean sure = whole instanceof Headline.Known known && !known.mayGoEitherWay();
            return sure ? StartingMix.of(point.elevator()) : 0;
        }
    }

    /**
     * Flaps with the ailerons.
     *
     * @param in the set-up in which it rolls
     * @param helped the stick without flaps
     * @param help the answer; empty where the model does not fly or roll so
     * @param without roll rate without flaps, rad/s
     * @param with roll rate with the best flaps, rad/s
     */
    public record HelpFound(SetUp in, Stick.Roll helped, Optional<RollHelp> help, Headline without, Headline with) {}

    /**
     * Flaps with the elevator.
     *
     * @param in the set-up in which it loops
     * @param help the answer; empty where the model does not fly or pull so
     * @param without radius with the elevator alone, m
     * @param radius with the best flaps, m
     * @param round with what it gets over the top
     */
    public record LoopFound(SetUp in, Optional<LoopHelp> help, Headline without, Headline radius, Round round) {

        /** What a loop needs to get over the top. */
        public enum Round {
            /** Its speed at the entry. */
            THROTTLE_CLOSED,
            /** Full throttle all the way. */
            FULL_THROTTLE,
            /** More than it has. */
            NEVER
        }
    }

    /**
     * Flap for a take-off.
     *
     * @param found the answer, or the nearest; empty where the model does not fly
     * @param run distance rolled, m
     * @param distance from standing still to over the obstacle, m
     * @param clean distance rolled without flap, m
     * @param throwBand between which angles of the flaps the true answer lies; empty where no flap is needed either way
     */
    public record TakeOffFound(
            Optional<FoundTakeOff> found,
            Headline run,
            Headline distance,
            Headline clean,
            Optional<ThrowBand> throwBand) {

        /** The set-up that was found; empty where it moves nothing or nothing takes off. */
        public Optional<SetUp> proposed() {
            return found.map(FoundTakeOff::found)
                    .filter(FoundTakeOff.Trial::flies)
                    .map(FoundTakeOff.Trial::setUp)
                    .filter(s -> !s.isClean());
        }
    }

    /**
     * Throttle and flap for a climb.
     *
     * @param found the answer, or the nearest
     * @param rate height gained a second at full throttle, m/s
     * @param angle of that path, rad
     */
    public record ClimbFound(FoundClimb found, Headline rate, Headline angle) {}
}
