package throwline.power;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import throwline.numerics.Interpolation;

/**
 * Coefficients of a propeller over advance ratio and speed of turning, tabulated once: a spline over the advance ratio at
 * four speeds, straight in the logarithm of the speed between them. Beyond the last advance ratio, where the momentum
 * theory ends, the coefficients stay.
 */
public final class PropellerChart {

    /** Turns a second: model propellers run between a thousand and fifteen thousand a minute. */
    private static final double[] TURNS = {20, 45, 100, 220};

    private static final double STEP = 0.05;

    /** Advance ratio at which thrust vanishes, over pitch by diameter (COMPUTED from measured tables, methods manual 20.2). */
    private static final double ZERO_THRUST = 0.156;

    /** The theory is not carried further than this share past the advance ratio without thrust (methods manual 20.4). */
    private static final double FARTHEST = 1.4;

    private final double last;
    private final double torqueFactor;
    private final double[] logTurns;
    private final List<PolynomialSplineFunction> thrust;
    private final List<PolynomialSplineFunction> power;

    /**
     * @param blades the propeller
     */
    public PropellerChart(BladeElements blades) {
        this(blades, TURNS);
    }

    /** The same tabulated at other turns a second. */
    PropellerChart(BladeElements blades, double... turns) {
        int n = (int) Math.ceil(FARTHEST * (blades.pitchRatio() + ZERO_THRUST) / STEP) + 1;
        last = (n - 1) * STEP;
        torqueFactor = 1;
        logTurns = new double[turns.length];
        thrust = new ArrayList<>();
        power = new ArrayList<>();
        double[] advances = new double[n];
        for (int k = 0; k < turns.length; k++) {
            logTurns[k] = Math.log(turns[k]);
            double[] thrusts = new double[n];
            double[] powers = new double[n];
            for (int i = 0; i < n; i++) {
                advances[i] = i * STEP;
                Coefficients c = blades.at(advances[i], turns[k]);
                thrusts[i] = c.thrust();
                powers[i] = c.power();
            }
            thrust.add(new SplineInterpolator().interpolate(advances, thrusts));
            power.add(new SplineInterpolator().interpolate(advances, powers));
        }
    }

    private PropellerChart(PropellerChart other, double torqueFactor) {
        last = other.last;
        this.torqueFactor = torqueFactor;
        logTurns = other.logTurns;
        thrust = other.thrust;
        power = other.power;
    }

    /** The same propeller taking more torque for the same thrust, by a factor: what a bench said. */
    PropellerChart torque(double factor) {
        return new PropellerChart(this, factor);
    }

    /**
     * Thrust and power.
     *
     * @param advance advance ratio, not negative
     * @param turns turns a second, positive
     */
    public Coefficients at(double advance, double turns) {
        double j = Interpolation.clamp(advance, 0, last);
        double log = Interpolation.clamp(Math.log(turns), logTurns[0], logTurns[logTurns.length - 1]);
        int k = Interpolation.interval(logTurns, log);
        double share = (log - logTurns[k]) / (logTurns[k + 1] - logTurns[k]);
        return new Coefficients(
                Interpolation.between(thrust.get(k).value(j), thrust.get(k + 1).value(j), share),
                torqueFactor
                        * Interpolation.between(
                                power.get(k).value(j), power.get(k + 1).value(j), share));
    }

    /** True where an advance ratio lies beyond what the theory reaches. */
    public boolean isBeyond(double advance) {
        return advance > last;
    }
}
