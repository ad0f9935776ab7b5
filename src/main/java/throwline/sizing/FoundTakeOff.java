package throwline.sizing;

import java.util.List;
import throwline.flight.TakeOff;
import throwline.model.SetUp;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * The least flap with which a take-off run is short enough, or the flap with the shortest.
 *
 * @param line set-ups tried, by rising flap, the first without
 * @param found the answer, or the nearest
 * @param met true where its run is short enough
 * @param why what keeps it from being shorter; empty where it is met
 */
public record FoundTakeOff(List<Trial> line, Trial found, boolean met, List<Limit> why) {

    public FoundTakeOff {
        line = List.copyOf(line);
        why = List.copyOf(why);
    }

    /**
     * One set-up, taken off with at full throttle.
     *
     * @param flap of the surfaces that are moved, rad, trailing edge down positive
     * @param setUp the same as a set-up
     * @param takeOff from the field of the file
     */
    public record Trial(
            @Measure(Dimension.ANGLE) double flap,
            @Key(Key.NONE) SetUp setUp,
            @Key(Key.NONE) TakeOff takeOff) {

        /** Distance rolled, m; infinite where it does not leave the ground. */
        @Key(value = "run", after = "takeOff")
        public double run() {
            return flies() ? takeOff.run() : Double.POSITIVE_INFINITY;
        }

        /** True where it leaves the ground. */
        public boolean flies() {
            return takeOff.outcome() == TakeOff.Outcome.FLIES;
        }
    }

    /** The take-off without flap. */
    public Trial clean() {
        return line.get(0);
    }
}
