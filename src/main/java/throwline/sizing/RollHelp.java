package throwline.sizing;

import java.util.List;
import throwline.units.Dimension;
import throwline.units.Measure;

/**
 * Gain of flaps that move with the ailerons.
 *
 * @param speed at which it rolls, m/s
 * @param points by rising flap throw, the first without flaps
 * @param best the point with the highest rate
 * @param stoppedBy why no more than that
 */
public record RollHelp(double speed, List<Point> points, Point best, Limit stoppedBy) {

    public RollHelp {
        points = List.copyOf(points);
    }

    /**
     * One flap throw.
     *
     * @param flapUp how far the rising side's flap goes up, rad, not negative
     * @param flapDown how far the falling side's flap goes down, rad, not negative
     * @param rate rad/s
     * @param yawing yawing moment coefficient while rolling, nose right positive
     */
    public record Point(
            @Measure(Dimension.ANGLE) double flapUp,
            @Measure(Dimension.ANGLE) double flapDown,
            @Measure(Dimension.ANGULAR_RATE) double rate,
            double yawing) {

        /** The larger of both throws, rad. */
        public double size() {
            return Math.max(flapUp, flapDown);
        }
    }
}
