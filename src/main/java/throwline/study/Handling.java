package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.flight.PathPoint;
import throwline.flight.PullUp.Limit;
import throwline.flight.SurfaceMove.Moment;
import throwline.flight.SurfaceMove.Return;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.words.Message;

/**
 * Behaviour of one set-up with one pack in a landing among the others, in a tight pull, and while its surfaces move.
 *
 * @param ranking landings of all set-ups, shortest first
 * @param loops tightest pulls of every pull stick that works here, by stick, then by speed; behind a stick that moves flaps
 *     the same stick without them, unless another stick of the model is just that
 * @param gains what the flaps of such sticks bring, by stick, then by speed
 * @param noLoops speeds asked about without an answer
 * @param moves what happens while the surfaces go from the reference set-up to this one and back; empty for the reference
 *     itself and where {@code noMoves} says why
 * @param noMoves why there are none
 */
public record Handling(
        List<Rank> ranking,
        List<Loop> loops,
        List<Gain> gains,
        List<Message> noLoops,
        Optional<Moves> moves,
        Optional<Message> noMoves) {

    /** A load above this is a balloon (PRACTICE, methods manual 17.4). */
    public static final double BALLOON = 1.3;

    public Handling {
        ranking = List.copyOf(ranking);
        loops = List.copyOf(loops);
        gains = List.copyOf(gains);
        noLoops = List.copyOf(noLoops);
    }

    /** Nothing of it. */
    public static Handling none() {
        return new Handling(List.of(), List.of(), List.of(), List.of(), Optional.empty(), Optional.empty());
    }

    /**
     * The landing of one set-up.
     *
     * @param setUp its name
     * @param landing distance from the obstacle to a stop in still air, m
     * @param inWind the same against the field's wind, m
     */
    public record Rank(String setUp, Headline.Known landing, Headline inWind) {}

    /**
     * The tightest pull of one stick at one speed. Loads are lift over weight.
     *
     * @param stick its name; empty for the elevator's whole travel where the model has no pull stick
     * @param withoutFlaps true for the elevator of that stick alone, where its flaps stay where they are
     * @param speed at the entry, m/s
     * @param wingLoad load at which the wing gives its most lift
     * @param elevatorLoad load at which the stick is at full; empty where the wing comes first
     * @param tailLoad load at which the tail stalls; empty where it was not met
     * @param limit what ends the pull
     * @param load there
     * @param radius at the bottom of a loop, m
     * @param turnRadius of a level turn, m
     * @param angleLeft angle of attack left before the wing's most lift, rad
     * @param stallShare share of full stick that stalls the wing, above 1 where full stick does not; empty where the
     *     elevator's travel ends before
     * @param topSpeed airspeed at the top of a loop, throttle shut, m/s; empty where it does not get over
     * @param endSpeed airspeed after the loop, m/s; empty likewise
     * @param height of the loop, m
     * @param way places of the loop as far as it gets
     * @param atFull the same pull at full throttle; empty where motor and battery are not known, or it was not found
     */
    public record Loop(
            String stick,
            boolean withoutFlaps,
            double speed,
            double wingLoad,
            @Key("stickLoad") Optional<Double> elevatorLoad,
            Optional<Double> tailLoad,
            Limit limit,
            double load,
            double radius,
            double turnRadius,
            @Measure(Dimension.ANGLE) double angleLeft,
            @Key("stallsAtStick") Optional<Double> stallShare,
            Optional<Double> topSpeed,
            Optional<Double> endSpeed,
            double height,
            @Key(Key.NONE) List<PathPoint> way,
            @Key("fullThrottle") Optional<LoopAtFull> atFull) {

        public Loop {
            way = List.copyOf(way);
        }
    }

    /**
     * A loop at full throttle.
     *
     * @param load of the pull at its entry
     * @param limit what ends the pull
     * @param radius at the bottom, m
     * @param topSpeed airspeed at the top, m/s, its band from 0 where it may not get over; why there is none where it does not
     * @param endSpeed airspeed after the loop, m/s; empty where it does not get round
     * @param height of the loop, m
     * @param way places of the loop as far as it gets
     */
    public record LoopAtFull(
            double load,
            Limit limit,
            Headline.Known radius,
            Headline topSpeed,
            Optional<Double> endSpeed,
            double height,
            @Key(Key.NONE) List<PathPoint> way) {

        public LoopAtFull {
            way = List.copyOf(way);
        }
    }

    /**
     * What flaps that go with the elevator bring: radius at the bottom of the loop with them and with the elevator alone, its
     * throw the same.
     *
     * @param stick its name
     * @param plain name of the stick without them; the same name where the model has no such stick
     * @param speed at the entry, m/s
     * @param with radius with flaps, m
     * @param without radius without, m
     */
    public record Gain(String stick, String plain, double speed, Headline.Known with, Headline.Known without) {}

    /**
     * Surfaces on the move, throttle shut. Runs stand by mix: none, half, all of the elevator's change, then the one that the
     * person named.
     *
     * @param lowerSpeed speed at which they go to this set-up, m/s
     * @param lowering nobody at the stick
     * @param suggested shortest times that keep the load below 1.3, by mix
     * @param raiseSpeed speed at which they go back, m/s: the faster of the approach speeds of both set-ups
     * @param raising the pilot answering
     * @param stall stall speed of this set-up, m/s
     * @param referenceStall stall speed of the reference set-up, m/s
     * @param terms what was taken for it
     */
    public record Moves(
            double lowerSpeed,
            List<Move> lowering,
            List<Suggested> suggested,
            double raiseSpeed,
            List<Move> raising,
            double stall,
            double referenceStall,
            Terms terms) {

        public Moves {
            lowering = List.copyOf(lowering);
            suggested = List.copyOf(suggested);
            raising = List.copyOf(raising);
        }
    }

    /**
     * Assumptions for surfaces on the move.
     *
     * @param quickest shortest time that was tried, s
     * @param slowest longest time that was tried, s
     * @param reaction seconds until the pilot's hand moves
     * @param hand seconds that it takes
     */
    public record Terms(double quickest, double slowest, double reaction, double hand) {}

    /**
     * A mix.
     *
     * @param share of the elevator's whole change
     * @param elevator the change, rad, trailing edge down positive
     * @param own true for the one that the person named
     */
    public record Mix(
            @Key("mix") double share,
            @Measure(Dimension.ANGLE) double elevator,
            @Key("asked") boolean own) {}

    /**
     * A time for the surfaces.
     *
     * @param mix with this mix
     * @param time shortest time that keeps the load below 1.3, s; empty where none of those tried does
     */
    public record Suggested(Mix mix, Optional<Double> time) {}

    /** Ends of a run. */
    public enum End {
        /** It was followed to the end of the time watched. */
        FOLLOWED,
        /** The nose went up beyond the angles that are known. */
        LOST_UP,
        /** The nose went down beyond them. */
        LOST_DOWN
    }

    /**
     * Run of the surfaces from one set-up to another.
     *
     * @param time that the surfaces take, s
     * @param mix elevator that goes with them
     * @param end whether its numbers are to be used
     * @param balloon most rise above the path it was on, m
     * @param drop most sinking below it, m
     * @param mostLoad largest load
     * @param leastLoad smallest load
     * @param slowest lowest airspeed, m/s
     * @param fastest highest airspeed, m/s
     * @param comesBack to a path no steeper than before
     * @param heightLost from the start until then, m; empty where it was never steeper or did not come back
     * @param history moments over time, as far as it was followed
     */
    public record Move(
            double time,
            Mix mix,
            End end,
            double balloon,
            double drop,
            double mostLoad,
            double leastLoad,
            double slowest,
            double fastest,
            Return comesBack,
            Optional<Double> heightLost,
            List<Moment> history) {

        public Move {
            history = List.copyOf(history);
        }

        /** True where it was followed to the end. */
        public boolean followed() {
            return end == End.FOLLOWED;
        }
    }
}
