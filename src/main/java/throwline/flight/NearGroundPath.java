package throwline.flight;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import throwline.air.Gravity;

/**
 * A point of weight on its way through the air near the ground, with the ground's effect and the wind of each height: how
 * airspeed, path and place change. Air that gets slower towards the ground pulls a sinking model along with it, which
 * takes airspeed and steepens the path.
 *
 * <p>State: airspeed, m/s; angle of the path below the horizon, rad; height of the wheels, m; place over the ground, m.
 */
final class NearGroundPath implements FirstOrderDifferentialEquations {

    static final int SPEED = 0;
    static final int ANGLE = 1;
    static final int HEIGHT = 2;
    static final int ALONG = 3;

    private final NearGroundFlight flight;
    private final Pilot pilot;

    NearGroundPath(NearGroundFlight flight, Pilot pilot) {
        this.flight = flight;
        this.pilot = pilot;
    }

    /** Pilot at the elevator: the lift that is held. */
    interface Pilot {
        /** Lift wanted, N. */
        double lift(double speed, double angle);
    }

    @Override
    public int getDimension() {
        return 4;
    }

    private double lift(double[] y) {
        double most = flight.polar().limit(y[HEIGHT]) * flight.pressureArea(y[SPEED]);
        return Math.min(most, pilot.lift(y[SPEED], y[ANGLE]));
    }

    /** Demand of a place on the way on wing and elevator. */
    Landing.Pull pull(double[] y) {
        double lift = lift(y);
        double area = flight.pressureArea(y[SPEED]);
        boolean all = lift >= flight.polar().limit(y[HEIGHT]) * area;
        return new Landing.Pull(lift / area, y[HEIGHT], -turning(y, lift) / y[SPEED], all);
    }

    /** Change of the path's angle over time, rad/s. */
    double turning(double[] y) {
        return turning(y, lift(y));
    }

    private double turning(double[] y, double lift) {
        double windTurn = flight.windGradient(y[HEIGHT]) * Math.pow(Math.sin(y[ANGLE]), 2);
        return (Gravity.STANDARD * Math.cos(y[ANGLE]) - lift / flight.mass()) / y[SPEED] + windTurn;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] change) {
        double speed = y[SPEED];
        double down = Math.sin(y[ANGLE]);
        double ahead = Math.cos(y[ANGLE]);
        double area = flight.pressureArea(speed);
        double lift = lift(y);
        double drag = area * flight.polar().drag(lift / area, y[HEIGHT]);
        double windPull = flight.windGradient(y[HEIGHT]) * speed * down * ahead;
        change[SPEED] = Gravity.STANDARD * down - drag / flight.mass() - windPull;
        change[ANGLE] = turning(y, lift);
        change[HEIGHT] = -speed * down;
        change[ALONG] = speed * ahead - flight.windAt(y[HEIGHT]);
    }
}
