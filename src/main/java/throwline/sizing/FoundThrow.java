package throwline.sizing;

import java.util.List;
import java.util.Optional;
import throwline.model.Stick;

/**
 * The throw of the ailerons for a wanted roll rate, or the nearest.
 *
 * @param stick what full stick adds
 * @param rate roll rate with it, rad/s
 * @param met true where the wanted rate is met
 * @param why what keeps it from being met; empty where it is met
 * @param rateAtStops roll rate with the ailerons at their stops, rad/s
 * @param perDegree rise of the rate for one degree more on either side, rad/s
 * @param yawing yawing moment coefficient while rolling, nose right positive
 * @param letsGo speed at which a part of the wing lets go with the stick at full, m/s; empty where none does
 */
public record FoundThrow(
        Stick.Roll stick,
        double rate,
        boolean met,
        List<Limit> why,
        double rateAtStops,
        double perDegree,
        double yawing,
        Optional<Double> letsGo) {

    public FoundThrow {
        why = List.copyOf(why);
    }
}
