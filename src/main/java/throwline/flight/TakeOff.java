package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import throwline.air.Gravity;

/**
 * A take-off at full throttle: a run, an arc and a straight climb (methods manual 20.14).
 *
 * @param outcome whether it leaves the ground
 * @param liftOff airspeed at lift-off and after it, m/s
 * @param run distance rolled, m; 0 where it does not leave the ground
 * @param seconds that takes, s
 * @param wind on the nose, m/s
 * @param climb angle of the path after the arc, rad; not positive where it does not climb
 */
public record TakeOff(Outcome outcome, double liftOff, double run, double seconds, double wind, double climb) {

    /** Load over one g on the arc after lift-off (PRACTICE). */
    private static final double ARC = 0.15;

    private static final int POINTS = 12;

    /** Whether it leaves the ground. */
    public enum Outcome {
        /** It does. */
        FLIES,
        /** The wheels do not roll on this ground. */
        WILL_NOT_ROLL,
        /** It rolls, but hardly gains speed near lift-off. */
        TOO_LITTLE_THRUST
    }

    private double radius() {
        return liftOff * liftOff / (ARC * Gravity.STANDARD);
    }

    /** Way over the ground for one through the air. */
    private double overGround() {
        return Math.max(0, 1 - wind / liftOff);
    }

    /** Distance from standing still to over a height, m; infinite where it does not get there. */
    public double distance(double height) {
        if (outcome != Outcome.FLIES || climb <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double arc = radius() * (1 - Math.cos(climb));
        double through = height < arc
                ? radius() * Math.sin(Math.acos(1 - height / radius()))
                : radius() * Math.sin(climb) + (height - arc) / Math.tan(climb);
        return run + through * overGround();
    }

    /** Height so many seconds after lift-off, or after it leaves the hand at that speed, m; none where it does not climb. */
    public double heightAfter(double time) {
        if (climb <= 0) {
            return 0;
        }
        double bending = Math.min(time, radius() * climb / liftOff);
        double turned = liftOff * bending / radius();
        return radius() * (1 - Math.cos(turned)) + (time - bending) * liftOff * Math.sin(climb);
    }

    /** The path from standing still to a height, m, which is over the obstacle; empty where it does not leave the ground. */
    public List<PathPoint> way(double height) {
        List<PathPoint> way = new ArrayList<>();
        if (outcome != Outcome.FLIES || climb <= 0) {
            return way;
        }
        way.add(new PathPoint(0, 0));
        double arc = radius() * (1 - Math.cos(climb));
        double bent = height < arc ? Math.acos(1 - height / radius()) : climb;
        for (int k = 0; k <= POINTS; k++) {
            double turned = bent * k / POINTS;
            way.add(new PathPoint(run + radius() * Math.sin(turned) * overGround(), radius() * (1 - Math.cos(turned))));
        }
        if (height > arc) {
            way.add(new PathPoint(distance(height), height));
        }
        return way;
    }
}
