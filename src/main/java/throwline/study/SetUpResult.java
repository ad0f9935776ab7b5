package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.words.Message;

/**
 * Flight of the model in one set-up with one pack, throttle shut.
 *
 * @param setUp where the surfaces stand
 * @param headlines the numbers that a person reads first
 * @param firstStall which part of the wing lets go first, at the stall
 * @param sweep the steady descent over speed, slowest first, points that converged only
 * @param load lift along the span at the approach speed, left tip to right tip
 * @param servos what the servos have to do
 * @param field close to the ground and in bumps
 * @param oneSided surfaces that move on one side only, against the roll sticks
 * @param power flight with the motor running as charts show it
 * @param notes what holds for this set-up
 */
public record SetUpResult(
        @Key("name") SetUp setUp,
        @Key(Key.INLINE) HeadlineNumbers headlines,
        @Key(Key.NONE) FirstStall firstStall,
        @Key(Key.NONE) List<SpeedPoint> sweep,
        @Key(Key.NONE) List<LoadStation> load,
        @Key(Key.INLINE) ServoAnswer servos,
        @Key(Key.NONE) FieldAnswer field,
        List<OneSided> oneSided,
        @Key(Key.NONE) UnderPower power,
        List<Message> notes) {

    /** A result of which nothing with the motor running is drawn. */
    public SetUpResult(
            SetUp setUp,
            HeadlineNumbers headlines,
            FirstStall firstStall,
            List<SpeedPoint> sweep,
            List<LoadStation> load,
            ServoAnswer servos,
            FieldAnswer field,
            List<OneSided> oneSided,
            List<Message> notes) {
        this(setUp, headlines, firstStall, sweep, load, servos, field, oneSided, UnderPower.none(), notes);
    }

    public SetUpResult {
        sweep = List.copyOf(sweep);
        load = List.copyOf(load);
        oneSided = List.copyOf(oneSided);
        notes = List.copyOf(notes);
    }

    /** Why there is no number yet, in an answer of steady flight alone. */
    public static final String WORKING = "why.working";

    /** The same under another name, beside which the first can stand. */
    public SetUpResult named(String other) {
        SetUp renamed = new SetUp(other, setUp.deflections(), setUp.elevator(), setUp.switchPosition());
        return new SetUpResult(renamed, headlines, firstStall, sweep, load, servos, field, oneSided, power, notes);
    }

    /** True where all has been worked out. */
    public boolean isFinished() {
        return headlines.all().stream()
                .noneMatch(entry -> entry.number() instanceof Headline.Unknown unknown
                        && unknown.why().equals(WORKING));
    }

    /** The same with other bands around its numbers. */
    SetUpResult with(HeadlineNumbers wider) {
        return with(wider, sweep, servos);
    }

    /** The same with numbers and a sweep that flights put right. */
    SetUpResult with(HeadlineNumbers learnt, List<SpeedPoint> flown, ServoAnswer mixed) {
        return new SetUpResult(setUp, learnt, firstStall, flown, load, mixed, field, oneSided, power, notes);
    }

    /** The number of a quantity that has one a set-up; roll rates are asked for by stick. */
    public Headline number(FlightQuantity quantity) {
        return headlines.number(quantity);
    }

    /** The same; empty where there is none. */
    public Optional<Headline.Known> known(FlightQuantity quantity) {
        return number(quantity).known();
    }

    public Headline stallSpeed() {
        return number(FlightQuantity.STALL_SPEED);
    }

    public Headline approachSpeed() {
        return number(FlightQuantity.APPROACH_SPEED);
    }

    public Headline descentAngle() {
        return number(FlightQuantity.DESCENT_ANGLE);
    }

    /** Steady roll rates at full stick, one entry a roll stick that works here. */
    public List<RollRate> rollRates() {
        return headlines.rollRates();
    }

    /** What lets go first; empty where nothing does. */
    @Key(value = "firstStall", after = "headlines")
    public Optional<FirstStall> letsGo() {
        return Optional.of(firstStall).filter(stall -> stall.manner() != Manner.NOT_REACHED);
    }

    /** Distance of the elevator's trailing edge from neutral at the approach speed, m; empty where it is not known. */
    @Key(value = "elevatorStraight", after = "letsGo")
    public Optional<Double> elevatorStraight() {
        return servos.positions().stream()
                .filter(position -> position.surface().equals(Servo.ELEVATOR))
                .findFirst()
                .flatMap(position -> known(FlightQuantity.ELEVATOR)
                        .map(known -> new EdgeThrow(position.chord()).distance(known.value())));
    }

    /** True where a note of this code holds for it. */
    public boolean isNoted(String code) {
        return notes.stream().anyMatch(note -> note.code().equals(code));
    }

    /**
     * Place on the wing that lets go first.
     *
     * @param side left, right or both
     * @param spanFraction distance from the middle over half the span
     * @param surface surface in front of which it lies; empty where there is none
     * @param manner what the model does then
     */
    public record FirstStall(
            Side side,
            double spanFraction,
            @Key(value = "surface", nullIfEmpty = true) String surface,
            @Key(Key.NONE) Manner manner) {}

    /** A side of the model. */
    public enum Side {
        /** The left wing. */
        LEFT,
        /** The right wing. */
        RIGHT,
        /** Both at once. */
        BOTH
    }

    /** Behaviour of the model when the wing lets go. */
    public enum Manner {
        /** Sinks with level wings. */
        SAGS,
        /** Part of the wing in front of the ailerons goes first or nearly so. */
        MAY_DROP_A_WING,
        /** No surface is known to roll the model, so that nothing tells whether a wing drops. */
        UNKNOWN,
        /** The elevator's travel ends before any part of the wing lets go, or no stall was found. */
        NOT_REACHED
    }

    /**
     * Steady descent at one speed.
     *
     * @param speed airspeed, m/s
     * @param descentAngle below the horizon, rad
     * @param sinkRate m/s
     * @param lift lift coefficient of the whole model on the wing's area
     * @param drag drag coefficient of the whole model on the wing's area
     * @param elevator rad, trailing edge down positive
     */
    public record SpeedPoint(
            double speed,
            @Measure(Dimension.ANGLE) double descentAngle,
            double sinkRate,
            double lift,
            double drag,
            @Measure(Dimension.ANGLE) double elevator) {}

    /**
     * Strip of the wing.
     *
     * @param at distance from the middle, m, right positive
     * @param chord m
     * @param lift lift coefficient of the strip
     * @param limit the largest that it can carry
     */
    public record LoadStation(double at, double chord, double lift, double limit) {}
}
