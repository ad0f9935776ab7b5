package throwline.study;

import java.util.List;
import java.util.Optional;

/**
 * What one set-up with one pack does in a landing among the others, in a tight pull, and while its surfaces move.
 *
 * @param ranking landings of all set-ups, shortest first
 * @param loops tightest pulls of every pull stick that works here, by stick, then by speed
 * @param moves what happens while the surfaces go from the reference set-up to this one and back; empty for the reference
 *     itself and where one of the two has no steady descent at the speed
 */
public record Handling(List<Rank> ranking, List<Loop> loops, Optional<Moves> moves) {

    public Handling {
        ranking = List.copyOf(ranking);
        loops = List.copyOf(loops);
    }

    /** Nothing of it. */
    public static Handling none() {
        return new Handling(List.of(), List.of(), Optional.empty());
    }

    /**
     * The landing of one set-up.
     *
     * @param setUp its name
     * @param landing distance from the obstacle to a stop in still air, m
     * @param inWind the same against the field's wind, m
     */
    public record Rank(String setUp, Headline.Known landing, Headline inWind) {}

    /** What ends a pull. */
    public enum Limit {
        /** The wing gives no more lift. */
        WING,
        /** The stick is at full. */
        ELEVATOR,
        /** The tail stalls. */
        TAIL
    }

    /**
     * The tightest pull of one stick at one speed. Loads are lift over weight.
     *
     * @param stick its name; empty for the elevator's whole travel where the model has no pull stick
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
     */
    public record Loop(
            String stick,
            double speed,
            double wingLoad,
            Optional<Double> elevatorLoad,
            Optional<Double> tailLoad,
            Limit limit,
            double load,
            double radius,
            double turnRadius,
            double angleLeft,
            Optional<Double> stallShare,
            Optional<Double> topSpeed,
            Optional<Double> endSpeed,
            double height,
            List<FieldAnswer.Spot> way) {

        public Loop {
            way = List.copyOf(way);
        }
    }

    /**
     * Surfaces on the move, nobody at the stick, throttle shut.
     *
     * @param lowerSpeed speed at which they go to this set-up, m/s
     * @param lowering by time and mix
     * @param suggestedTime shortest time that keeps the load below 1.3 without any mix, s; empty where none of those tried
     *     does
     * @param raiseSpeed speed at which they go back, that of the approach, m/s
     * @param raising by time and mix
     * @param referenceStall stall speed of the reference set-up, m/s
     */
    public record Moves(
            double lowerSpeed,
            List<Move> lowering,
            Optional<Double> suggestedTime,
            double raiseSpeed,
            List<Move> raising,
            double referenceStall) {

        public Moves {
            lowering = List.copyOf(lowering);
            raising = List.copyOf(raising);
        }
    }

    /**
     * One run.
     *
     * @param time that the surfaces take, s
     * @param mix share of the elevator's whole change that goes with them
     * @param balloon most rise above the path it was on, m
     * @param drop most sinking below it, m
     * @param mostLoad largest load
     * @param leastLoad smallest load
     * @param slowest lowest airspeed, m/s
     * @param followed false where it pitched beyond the angles that are known, so that its numbers are not to be used
     */
    public record Move(
            double time,
            double mix,
            double balloon,
            double drop,
            double mostLoad,
            double leastLoad,
            double slowest,
            boolean followed) {}
}
