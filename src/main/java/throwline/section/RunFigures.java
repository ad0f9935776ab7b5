package throwline.section;

import java.util.List;
import java.util.OptionalDouble;
import throwline.section.PolarRun.Point;

/**
 * Figures of a run of measurements by itself, before anything is made of it.
 *
 * @param maxLift lift coefficient at its first peak, or the highest that it reached
 * @param stallAngle angle of attack there, rad
 * @param reachesPeak false where the run stops while lift still rises, so that both are lower bounds
 * @param zeroLiftAngle angle of attack at which lift passes zero, rad; empty where it does not
 */
public record RunFigures(double maxLift, double stallAngle, boolean reachesPeak, OptionalDouble zeroLiftAngle) {

    /** The figures of a run. */
    public static RunFigures of(PolarRun run) {
        LiftRun lift = LiftRun.of(run);
        return new RunFigures(lift.peak().lift(), lift.stall().alpha(), lift.reachesPeak(), zeroLift(lift.points()));
    }

    private static OptionalDouble zeroLift(List<Point> points) {
        for (int i = points.size() - 1; i > 0; i--) {
            Point below = points.get(i - 1);
            Point above = points.get(i);
            if (below.lift() < 0 && above.lift() >= 0) {
                double share = -below.lift() / (above.lift() - below.lift());
                return OptionalDouble.of(below.alpha() + share * (above.alpha() - below.alpha()));
            }
        }
        return OptionalDouble.empty();
    }
}
