package throwline.sizing;

import java.util.List;
import java.util.Optional;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * The set-up that does what is wanted, or the nearest one that flies.
 *
 * @param trial the set-up, flown
 * @param met true where all is met
 * @param why what keeps it from being met; empty where it is met
 * @param least the flown set-up that comes down flattest, or stalls fastest where only a stall speed is wanted
 * @param most the flown set-up that comes down steepest, or stalls slowest
 * @param stoppedBy what keeps {@code most} from going further
 * @param oneDegree what one degree more of each surface brings
 * @param line set-ups flown with only one surface moved from the answer, by rising angle of that surface
 * @param lineOf that surface
 * @param rollAtStops roll rate with the ailerons at their stops, rad/s; empty where no roll is wanted or none was found
 * @param flights how many set-ups were flown to find it
 */
public record FoundSetUp(
        CandidateFlight trial,
        boolean met,
        List<Limit> why,
        CandidateFlight least,
        CandidateFlight most,
        List<Limit> stoppedBy,
        List<OneDegree> oneDegree,
        List<CandidateFlight> line,
        Moved lineOf,
        Optional<Double> rollAtStops,
        int flights) {

    public FoundSetUp {
        why = List.copyOf(why);
        stoppedBy = List.copyOf(stoppedBy);
        oneDegree = List.copyOf(oneDegree);
        line = List.copyOf(line);
    }

    /** Surfaces that a search moves. */
    public enum Moved {
        /** The flaps. */
        FLAPS,
        /** The ailerons. */
        AILERONS
    }

    /**
     * What one degree of one surface brings, by flying it.
     *
     * @param surface which
     * @param step one degree, rad, with its sign: down positive; towards zero where the surface stands at its end
     * @param stallSpeed change, m/s
     * @param angle change of the descent angle at the wanted speed, rad; empty where no descent is wanted
     */
    public record OneDegree(
            Moved surface,
            @Measure(Dimension.ANGLE) double step,
            double stallSpeed,
            @Key("descentAngle") @Measure(Dimension.ANGLE) Optional<Double> angle) {}
}
