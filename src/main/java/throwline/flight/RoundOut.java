package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/**
 * The round-out: from the approach the model is pulled with constant load above that of straight flight until its path is
 * level, or until wing or elevator give no more. Integrated in steps of 0.02 s (methods manual 10.2).
 */
final class RoundOut {

    private static final double STEP = 0.02;
    private static final int MOST_STEPS = 1000;
    private static final int MOST_PASSES = 20;
    private static final double HEIGHT_TOLERANCE = 0.005;

    private final NearGroundFlight flight;
    private final Approach approach;
    private final double load;
    private final double bottom;

    /**
     * @param flight the model near the ground
     * @param approach how it comes in
     * @param load lift over weight at the bottom, above 1
     * @param bottom height of the wheels at which it is to end, m
     */
    RoundOut(NearGroundFlight flight, Approach approach, double load, double bottom) {
        this.flight = flight;
        this.approach = approach;
        this.load = load;
        this.bottom = bottom;
    }

    /**
     * One round-out.
     *
     * @param height where it begins, height of the wheels, m
     * @param distance over the ground, m
     * @param speed airspeed at its end, m/s
     * @param sink height still lost per second at its end, m/s; zero where the path became level
     * @param way places over the ground from its beginning
     * @param pulls what each step asks of wing and elevator
     */
    record Flown(
            double height,
            double distance,
            double speed,
            double sink,
            List<Landing.Spot> way,
            List<Landing.Pull> pulls) {}

    /** The round-out that ends at the wanted height. */
    Flown fly() {
        double[] low = approach.at(bottom);
        double from = bottom + new FlareArc(low[NearGroundPath.SPEED], load).height(low[NearGroundPath.ANGLE]);
        Flown flown = from(from);
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double end = flown.way.get(flown.way.size() - 1).height();
            if (Math.abs(end - bottom) < HEIGHT_TOLERANCE) {
                break;
            }
            from += bottom - end;
            flown = from(from);
        }
        return flown;
    }

    private Flown from(double height) {
        ClassicalRungeKuttaIntegrator steps = new ClassicalRungeKuttaIntegrator(STEP);
        NearGroundPath path =
                new NearGroundPath(flight, (speed, angle) -> flight.weight() * (Math.cos(angle) + load - 1));
        double[] y = approach.at(height);
        y[NearGroundPath.HEIGHT] = height;
        y[NearGroundPath.ALONG] = 0;
        List<Landing.Spot> way = new ArrayList<>();
        way.add(spot(y));
        List<Landing.Pull> pulls = new ArrayList<>();
        boolean level = false;
        for (int k = 0; k < MOST_STEPS && !level; k++) {
            double turning = path.turning(y);
            if (turning >= 0) {
                break;
            }
            pulls.add(path.pull(y));
            level = y[NearGroundPath.ANGLE] + turning * STEP <= 0;
            y = steps.singleStep(path, 0, y, level ? -y[NearGroundPath.ANGLE] / turning : STEP);
            way.add(spot(y));
        }
        double sink = level ? 0 : y[NearGroundPath.SPEED] * Math.sin(y[NearGroundPath.ANGLE]);
        return new Flown(height, y[NearGroundPath.ALONG], y[NearGroundPath.SPEED], sink, way, pulls);
    }

    private static Landing.Spot spot(double[] y) {
        return new Landing.Spot(y[NearGroundPath.ALONG], y[NearGroundPath.HEIGHT], y[NearGroundPath.SPEED]);
    }
}
