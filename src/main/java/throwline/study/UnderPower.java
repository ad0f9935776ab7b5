package throwline.study;

import java.util.List;
import throwline.flight.PathPoint;
import throwline.study.FlyResult.LevelPoint;

/**
 * Flight of a set-up with the motor running as charts show it.
 *
 * @param takeOff from standing still to over the obstacle, seen from the side; empty where it does not get there
 * @param goingAround from the decision, at height 0, on; empty where it was not found
 * @param level level flights over speed, slowest first
 */
public record UnderPower(List<PathPoint> takeOff, List<PathPoint> goingAround, List<LevelPoint> level) {

    public UnderPower {
        takeOff = List.copyOf(takeOff);
        goingAround = List.copyOf(goingAround);
        level = List.copyOf(level);
    }

    /** Nothing. */
    public static UnderPower none() {
        return new UnderPower(List.of(), List.of(), List.of());
    }
}
