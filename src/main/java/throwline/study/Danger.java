package throwline.study;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import throwline.model.Field;
import throwline.study.SetUpResult.Manner;

/**
 * Dangers of a set-up, the worst first (the ranking: common practice, no source). One of them rules its set-up out for what
 * it is bad at, whatever its numbers are.
 */
public enum Danger {
    /** The balance point lies behind the neutral point. */
    BALANCE_BEHIND_NEUTRAL(Bad.ALL, "note.unstable"),
    /** No steady flight was found at the speed to come in at: its elevator or its drag does not allow it. */
    NO_STEADY_APPROACH(Bad.ALL, ""),
    /** A servo is asked for more than all of its torque. */
    SERVO_OVERLOADED(Bad.ALL, "note.servo.overpowered"),
    /** The round-out ends below the stall. */
    ROUND_OUT_STALLS(Bad.FINAL, "note.flare-stalls note.flare-stalls-wind"),
    /** The model still sinks hard when its wheels touch. */
    ROUND_OUT_TOO_LITTLE(Bad.FINAL, "note.flare-sinks note.flare-sinks-wind"),
    /** The round-out takes all the lift there is. */
    NO_LIFT_IN_HAND(Bad.FINAL, "note.flare-all-lift note.flare-all-lift-wind"),
    /** The round-out or the touch-down takes all of the up elevator. */
    NO_ELEVATOR_IN_HAND(Bad.FINAL, "note.flare-elevator-round note.flare-elevator-short"),
    /** At full throttle it goes on sinking. */
    SINKS_AT_FULL_THROTTLE(Bad.FINAL, "note.go-around.sinks"),
    /** The balance point lies hardly ahead of the neutral point. */
    HARDLY_STABLE(Bad.ALL, "note.hardly-stable"),
    /** The tail is near its own stall when coming in. */
    TAIL_NEAR_STALL(Bad.DESCENT, "note.tail-near-stall"),
    /** A wing may drop when flown too slowly. */
    MAY_DROP_A_WING(Bad.LANDING, ""),
    /** The landing does not end before the field does, whatever the wind of the file. */
    FIELD_TOO_SHORT(Bad.LANDING, ""),
    /** The elevator reaches its stop before the wing lets go. */
    OUT_OF_ELEVATOR(Bad.NOTHING, "note.elevator-before-wing"),
    /** Full aileron does not hold a flap or aileron that moves on one side only. */
    ONE_SIDE_NOT_HELD(Bad.NOTHING, "note.one-side.not-held"),
    /** A surface stands further down than anybody has measured at this size. */
    NEVER_MEASURED(Bad.NOTHING, "");

    /** Purposes of a set-up. */
    public enum Use {
        /** Landing slowly and short. */
        LANDING,
        /** Coming down steeply. */
        DESCENT,
        /** Anything else, such as rolling. */
        FLYING
    }

    /** What a set-up with a danger is bad at. */
    private enum Bad {
        ALL,
        FINAL,
        DESCENT,
        LANDING,
        NOTHING
    }

    private final Bad bad;
    private final String notes;

    /** With the notes that tell of it, between blanks. */
    Danger(Bad bad, String notes) {
        this.bad = bad;
        this.notes = notes;
    }

    /** Codes of the notes that tell of it; none where the numbers do. */
    List<String> notes() {
        return notes.isEmpty() ? List.of() : List.of(notes.split(" ", -1));
    }

    /** Key of the words: {@code danger.KEY}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** True where a set-up with it is not to be recommended for this. */
    public boolean rulesOut(Use use) {
        return switch (bad) {
            case ALL -> true;
            case FINAL -> use != Use.FLYING;
            case DESCENT -> use == Use.DESCENT;
            case LANDING -> use == Use.LANDING;
            case NOTHING -> false;
        };
    }

    /**
     * The dangers of a set-up, the worst first.
     *
     * @param result the set-up's flight
     * @param field where it lands
     */
    public static List<Danger> of(SetUpResult result, Field field) {
        Set<Danger> found = EnumSet.noneOf(Danger.class);
        Arrays.stream(values())
                .filter(danger -> danger.notes().stream().anyMatch(result::isNoted))
                .forEach(found::add);
        boolean slowFlightKnown = result.stallSpeed() instanceof Headline.Known;
        if (!(result.descentAngle() instanceof Headline.Known)) {
            found.add(NO_STEADY_APPROACH);
        }
        if (slowFlightKnown && result.firstStall().manner() == Manner.MAY_DROP_A_WING) {
            found.add(MAY_DROP_A_WING);
        }
        if (FieldFit.of(result, field).filter(FieldFit::isDanger).isPresent()) {
            found.add(FIELD_TOO_SHORT);
        }
        if (!BeyondMeasured.notes(List.of(result.setUp())).isEmpty()) {
            found.add(NEVER_MEASURED);
        }
        return List.copyOf(found);
    }

    /** True where one of these dangers rules a set-up out for this. */
    static boolean anyRulesOut(List<Danger> dangers, Use use) {
        return dangers.stream().anyMatch(danger -> danger.rulesOut(use));
    }
}
