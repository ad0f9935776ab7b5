package throwline.sizing;

import java.util.List;
import throwline.units.Dimension;
import throwline.units.Measure;

/**
 * Elevator mixed to the lever that moves a model from its reference set-up into another, so that it flies level trimmed
 * at one speed wherever the lever stands.
 *
 * @param speed the speed it is made for, m/s
 * @param points by rising lever, the first at zero
 * @param straightError largest distance between the exact elevator and straight lines between the points, rad, looked at
 *     half way between them
 * @param otherSpeeds what the whole lever asks for at other speeds
 */
public record MixCurve(double speed, List<Point> points, double straightError, List<AtSpeed> otherSpeeds) {

    public MixCurve {
        points = List.copyOf(points);
        otherSpeeds = List.copyOf(otherSpeeds);
    }

    /**
     * One place of the lever.
     *
     * @param lever 0 for the reference set-up, 1 for the other
     * @param elevator elevator to be added against the reference at the same speed, rad, trailing edge down positive
     */
    public record Point(double lever, double elevator) {}

    /**
     * Another speed.
     *
     * @param speed m/s
     * @param elevator elevator to be added with the lever at its end, rad
     */
    public record AtSpeed(
            double speed, @Measure(Dimension.ANGLE) double elevator) {}
}
