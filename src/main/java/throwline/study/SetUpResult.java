package throwline.study;

import java.util.List;
import throwline.model.SetUp;
import throwline.words.Message;

/**
 * How the model flies in one set-up with one pack, throttle shut.
 *
 * @param setUp where the surfaces stand
 * @param stallSpeed lowest steady speed, m/s
 * @param approachSpeed speed to come in at, m/s
 * @param descentAngle below the horizon at the approach speed, rad, positive down
 * @param sinkRate at the approach speed, m/s, positive down
 * @param bestGlideRatio best ratio of distance to height at any speed
 * @param noseDownSpeed steady speed pointing straight down, m/s
 * @param elevator where the elevator stands at the approach speed, rad, trailing edge down positive
 * @param elevatorChange against the reference set-up at the same speed, rad, trailing edge down positive
 * @param rollRates steady rate at full stick at the approach speed, one entry a roll stick that works here
 * @param firstStall which part of the wing lets go first, at the stall
 * @param sweep the steady descent over speed, slowest first, points that converged only
 * @param load lift along the span at the approach speed, left tip to right tip
 * @param servos what the servos have to do
 * @param field close to the ground and in bumps
 * @param notes what holds for this set-up
 */
public record SetUpResult(
        SetUp setUp,
        Headline stallSpeed,
        Headline approachSpeed,
        Headline descentAngle,
        Headline sinkRate,
        Headline bestGlideRatio,
        Headline noseDownSpeed,
        Headline elevator,
        Headline elevatorChange,
        List<RollRate> rollRates,
        FirstStall firstStall,
        List<SpeedPoint> sweep,
        List<LoadStation> load,
        ServoAnswer servos,
        FieldAnswer field,
        List<Message> notes) {

    public SetUpResult {
        rollRates = List.copyOf(rollRates);
        sweep = List.copyOf(sweep);
        load = List.copyOf(load);
        notes = List.copyOf(notes);
    }

    /** The same with other bands around these numbers. */
    SetUpResult withHeadlines(
            Headline stall, Headline approach, Headline angle, Headline sink, Headline sits, List<RollRate> rolls) {
        return new SetUpResult(
                setUp,
                stall,
                approach,
                angle,
                sink,
                bestGlideRatio,
                noseDownSpeed,
                sits,
                elevatorChange,
                rolls,
                firstStall,
                sweep,
                load,
                servos,
                field,
                notes);
    }

    /** True where a note of this code holds for it. */
    public boolean isNoted(String code) {
        return notes.stream().anyMatch(note -> note.code().equals(code));
    }

    /**
     * Steady roll at full stick.
     *
     * @param stick name of the stick
     * @param rate to the right, rad/s
     * @param atItsStop true where a surface was cut at its travel
     */
    public record RollRate(String stick, Headline rate, boolean atItsStop) {}

    /**
     * Where the wing lets go first.
     *
     * @param side left, right or both
     * @param spanFraction distance from the middle over half the span
     * @param surface surface in front of which it lies; empty where there is none
     * @param manner what the model does then
     */
    public record FirstStall(Side side, double spanFraction, String surface, Manner manner) {}

    /** A side of the model. */
    public enum Side {
        /** The left wing. */
        LEFT,
        /** The right wing. */
        RIGHT,
        /** Both at once. */
        BOTH
    }

    /** What the model does when the wing lets go. */
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
     * One steady descent.
     *
     * @param speed airspeed, m/s
     * @param descentAngle below the horizon, rad
     * @param sinkRate m/s
     * @param lift lift coefficient of the whole model on the wing's area
     * @param drag drag coefficient of the whole model on the wing's area
     * @param elevator rad, trailing edge down positive
     */
    public record SpeedPoint(
            double speed, double descentAngle, double sinkRate, double lift, double drag, double elevator) {}

    /**
     * One strip of the wing.
     *
     * @param at distance from the middle, m, right positive
     * @param chord m
     * @param lift lift coefficient of the strip
     * @param limit the largest that it can carry
     */
    public record LoadStation(double at, double chord, double lift, double limit) {}
}
