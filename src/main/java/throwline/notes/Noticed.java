package throwline.notes;

import java.util.OptionalDouble;

/** Something that was noticed in flight or found on the bench. */
public sealed interface Noticed {

    /** How it was found, and whether it counts. */
    Told told();

    /** Set-up that it was noticed in; empty for what holds for the whole model. */
    default String setUp() {
        return "";
    }

    /**
     * How something was found.
     *
     * @param source unique among all notes of the model, such as {@code stall landing flap, 2026-10-04}
     * @param toldBy way of measuring
     * @param giveOrTake nine of ten lie so close, in the unit of the value; empty for the usual of the way
     * @param giveOrTakeShare the same as a share of the value
     * @param times mean of so many, at least 1
     * @param counts false where it is kept and not used
     */
    record Told(
            String source,
            ToldBy toldBy,
            OptionalDouble giveOrTake,
            OptionalDouble giveOrTakeShare,
            int times,
            boolean counts) {}

    /** Ways over the ground. */
    enum Going {
        /** Against the wind. */
        INTO_THE_WIND,
        /** The wind behind. */
        WITH_THE_WIND,
        /** The wind from the side. */
        ACROSS,
        /** As many runs against it as with it. */
        BOTH_WAYS,
        /** Not remembered. */
        UNKNOWN
    }

    /** What the throttle did. */
    enum Throttle {
        /** Closed. */
        SHUT,
        /** As far open as level flight needs. */
        CRUISE,
        /** Fully open. */
        FULL
    }

    /** Speeds that have a name. */
    enum FlownAt {
        /** The approach speed of the set-up. */
        COMING_IN,
        /** Twice the stall speed of the clean set-up. */
        CRUISE,
        /** Just above the stall. */
        SLOW,
        /** A speed that was told. */
        TOLD
    }

    /**
     * A speed as read.
     *
     * @param ground over the ground, m/s: the mean of both ways where both were flown
     * @param airspeed through the air, m/s
     * @param going over the ground
     */
    record SpeedRead(OptionalDouble ground, OptionalDouble airspeed, Going going) {}

    /**
     * A speed that something was flown at.
     *
     * @param at its name
     * @param speed through the air, m/s, where it was told
     */
    record Speed(FlownAt at, OptionalDouble speed) {}

    /**
     * A stall, wings level, throttle closed.
     *
     * @param speed as read
     */
    record Stall(Told told, String setUp, SpeedRead speed) implements Noticed {}

    /**
     * A glide, throttle closed.
     *
     * @param height lost, m
     * @param distance over the ground, m
     * @param time s
     * @param going over the ground
     * @param speed flown at
     */
    record Glide(
            Told told,
            String setUp,
            double height,
            OptionalDouble distance,
            OptionalDouble time,
            Going going,
            Speed speed)
            implements Noticed {}

    /**
     * Elevator that held the model.
     *
     * @param elevator rad, trailing edge down positive: where it stands, or how far from where the set-up puts it
     * @param fromSetUp true where it is told from where the set-up puts it
     * @param speed flown at
     * @param throttle what it did
     */
    record Trim(Told told, String setUp, double elevator, boolean fromSetUp, Speed speed, Throttle throttle)
            implements Noticed {}

    /**
     * Rolls at full stick.
     *
     * @param stick its name
     * @param rolls how many
     * @param time s
     * @param speed flown at
     */
    record Roll(Told told, String setUp, String stick, double rolls, double time, Speed speed) implements Noticed {}

    /**
     * Float from level to touch-down.
     *
     * @param distance over the ground, m
     */
    record Floated(Told told, String setUp, double distance) implements Noticed {}

    /**
     * Level flight at a throttle.
     *
     * @param speed as read
     */
    record LevelSpeed(Told told, String setUp, SpeedRead speed) implements Noticed {}

    /**
     * The model on a scale, ready to fly.
     *
     * @param mass kg
     */
    record Weight(Told told, double mass) implements Noticed {}

    /**
     * Where the model balances.
     *
     * @param behind the leading edge at the middle, m
     */
    record Balance(Told told, double behind) implements Noticed {}
}
