package throwline.flight;

import java.util.Arrays;
import throwline.air.Gravity;
import throwline.numerics.Interpolation;

/**
 * Integration of a take-off run over airspeed: {@code m dV/dt = F(V) - mu (W - L(V))}, with the wind on the nose, and the
 * way to over an obstacle on an arc and a straight climb (methods manual 20.14).
 */
public final class TakeOffRun {

    private static final int STEPS = 200;

    /** Gain of speed at lift-off over that of gravity below which nobody should count on it (PRACTICE). */
    private static final double LEAST_GAIN = 0.05;

    /** Pull at rest over friction below which it may not roll at all (PRACTICE). */
    private static final double STARTS = 1.1;

    private final double mass;
    private final double friction;
    private final double[] squares;
    private final double[] pull;
    private final double[] lift;

    /**
     * @param mass kg
     * @param friction of wheels or belly
     * @param speeds airspeeds at which the forces are known, m/s, rising from 0
     * @param pull force along the way less drag, N, at these speeds
     * @param lift N, at these speeds
     */
    public TakeOffRun(double mass, double friction, double[] speeds, double[] pull, double[] lift) {
        this.mass = mass;
        this.friction = friction;
        this.squares = Arrays.stream(speeds).map(v -> v * v).toArray();
        this.pull = pull.clone();
        this.lift = lift.clone();
    }

    /** Acceleration at an airspeed, m/s^2. */
    private double gain(double speed) {
        double squared = speed * speed;
        double force = Interpolation.at(squares, pull, squared);
        double onWheels = Math.max(0, mass * Gravity.STANDARD - Interpolation.at(squares, lift, squared));
        return (force - friction * onWheels) / mass;
    }

    /**
     * The take-off.
     *
     * @param liftOff airspeed, m/s
     * @param wind on the nose, m/s
     * @param climb angle of the path after it, rad
     */
    public TakeOff fly(double liftOff, double wind, double climb) {
        if (pull[0] < STARTS * friction * mass * Gravity.STANDARD) {
            return new TakeOff(TakeOff.Outcome.WILL_NOT_ROLL, liftOff, 0, 0, wind, climb);
        }
        double from = Math.min(wind, liftOff);
        double step = (liftOff - from) / STEPS;
        double run = 0;
        double seconds = 0;
        for (int k = 0; k < STEPS; k++) {
            double speed = from + (k + 0.5) * step;
            double gain = gain(speed);
            if (gain < LEAST_GAIN * Gravity.STANDARD) {
                return new TakeOff(TakeOff.Outcome.TOO_LITTLE_THRUST, liftOff, 0, 0, wind, climb);
            }
            run += (speed - wind) * step / gain;
            seconds += step / gain;
        }
        return new TakeOff(TakeOff.Outcome.FLIES, liftOff, run, seconds, wind, climb);
    }
}
