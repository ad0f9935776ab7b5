package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import throwline.air.Gravity;
import throwline.numerics.Interpolation;

/**
 * The first seconds of going around, in steps of time: {@code V' = g ((T - D)/W - sin g)}, {@code g' = (g/V)(n - cos g)};
 * the pilot reacts, the motor speeds up, the nose is brought up with a limited load (methods manual 20.15).
 *
 * @param speed of the approach, m/s
 * @param descent angle of its path below the horizon, rad
 * @param closed net drag over weight with the throttle closed at one g
 * @param open the same at full throttle, negative where it pulls
 * @param perLoad change of both for each g of load over one
 */
record GoAroundFlight(double speed, double descent, double closed, double open, double perLoad) {

    private static final double STEP = 0.01;
    private static final double LONGEST = 10;

    /** A path is shown so long, s, a point every so many steps. */
    private static final double SHOWN = 6;

    private static final int EACH = 20;

    /** Until the throttle is open, and the time in which a motor speeds up, s (PRACTICE). */
    private static final double REACTION = 0.5;

    private static final double SPEEDS_UP = 0.25;

    /** Load for each rad that the path is off the wanted one, and its ends (PRACTICE). */
    private static final double FIRMNESS = 3;

    private static final double MOST_LESS = -0.2;
    private static final double MOST_MORE = 0.35;

    /** Path that a pilot takes, rad (PRACTICE). */
    private static final double TARGET = Math.toRadians(15);

    /** Height lost to the lowest point, m; infinite where there is none within ten seconds. */
    double heightLost() {
        return target() <= 0 ? Double.POSITIVE_INFINITY : fly(LONGEST, true, new ArrayList<>());
    }

    /** The path of the first seconds, the decision at its beginning. */
    List<PathPoint> way() {
        List<PathPoint> way = new ArrayList<>(List.of(new PathPoint(0, 0)));
        fly(SHOWN, false, way);
        return way;
    }

    private double target() {
        return Math.min(TARGET, Math.asin(Interpolation.clamp(-open, -1, 1)));
    }

    /** Flies it for a time, s, or to its lowest point; height lost there, m, infinite where that is not reached. */
    private double fly(double until, boolean toTheLowest, List<PathPoint> way) {
        double target = target();
        double v = speed;
        double path = -descent;
        double height = 0;
        double along = 0;
        for (int step = 0; step * STEP < until; step++) {
            double t = step * STEP;
            double power = t < REACTION ? 0 : 1 - Math.exp(-(t - REACTION) / SPEEDS_UP);
            double more = t < REACTION ? 0 : Interpolation.clamp(FIRMNESS * (target - path), MOST_LESS, MOST_MORE);
            double drag = Interpolation.between(closed, open, power) + perLoad * more;
            v += STEP * Gravity.STANDARD * (-drag - Math.sin(path));
            path += STEP * Gravity.STANDARD / v * more;
            height += STEP * v * Math.sin(path);
            along += STEP * v * Math.cos(path);
            if (toTheLowest && path >= 0) {
                return -height;
            }
            if (step % EACH == EACH - 1) {
                way.add(new PathPoint(along, height));
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
