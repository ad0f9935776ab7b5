package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * The way down before the round-out: from the steady approach at some height with the stick left alone, so that the lift
 * coefficient stays. In still air that stays the steady approach until the ground is felt; in a headwind that gets weaker
 * on the way down it gets slower and steeper.
 */
final class Approach {

    /** Height at which it begins, here or at the obstacle, whichever is higher: below the wind is told at this height, m. */
    private static final double FROM = 10;

    private static final double STEP = 0.1;
    private static final int MOST_STEPS = 20_000;

    private final List<double[]> states = new ArrayList<>();

    /**
     * Flies it down to the ground.
     *
     * @param flight the model near the ground
     * @param lift lift coefficient of the steady approach
     * @param speed airspeed at first, m/s
     * @param angle of the path at first, rad below the horizon
     * @param obstacle height of the obstacle, m
     */
    Approach(NearGroundFlight flight, double lift, double speed, double angle, double obstacle) {
        NearGroundPath path = new NearGroundPath(flight, (v, a) -> lift * flight.pressureArea(v));
        ClassicalRungeKuttaIntegrator steps = new ClassicalRungeKuttaIntegrator(STEP);
        double[] y = {speed, angle, Math.max(FROM, obstacle), 0};
        states.add(y);
        for (int k = 0; k < MOST_STEPS && y[NearGroundPath.HEIGHT] > 0 && y[NearGroundPath.ANGLE] > 0; k++) {
            y = steps.singleStep(path, 0, y, STEP);
            states.add(y);
        }
    }

    /** Speed, angle, height and place with the wheels at a height, linear between the steps; above all, the first. */
    double[] at(double height) {
        for (int i = 1; i < states.size(); i++) {
            double[] high = states.get(i - 1);
            double[] low = states.get(i);
            if (low[NearGroundPath.HEIGHT] <= height) {
                double lost = high[NearGroundPath.HEIGHT] - low[NearGroundPath.HEIGHT];
                double share = Math.max(0, high[NearGroundPath.HEIGHT] - height) / lost;
                double[] between = new double[high.length];
                for (int k = 0; k < between.length; k++) {
                    between[k] = high[k] + share * (low[k] - high[k]);
                }
                return between;
            }
        }
        return states.get(states.size() - 1).clone();
    }

    /** True where it gets forward over the ground all the way down. */
    boolean advances() {
        return IntStream.range(1, states.size())
                .allMatch(i -> states.get(i)[NearGroundPath.ALONG] > states.get(i - 1)[NearGroundPath.ALONG]);
    }

    /** Places from one height down to another, counted from the first. */
    List<Landing.Spot> way(double from, double to) {
        double[] first = at(from);
        double[] last = at(to);
        List<Landing.Spot> spots = new ArrayList<>();
        spots.add(spot(first, first));
        states.stream()
                .filter(y -> y[NearGroundPath.HEIGHT] < from && y[NearGroundPath.HEIGHT] > to)
                .forEach(y -> spots.add(spot(y, first)));
        spots.add(spot(last, first));
        return spots;
    }

    private static Landing.Spot spot(double[] y, double[] from) {
        return new Landing.Spot(
                y[NearGroundPath.ALONG] - from[NearGroundPath.ALONG],
                y[NearGroundPath.HEIGHT],
                y[NearGroundPath.SPEED]);
    }
}
