package throwline.flight;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The balance of a steady descent without thrust, exact at any angle: {@code L = W cos g}, {@code D = W sin g}
 * (methods manual 9.1).
 *
 * @param weight N
 * @param density of the air, kg/m^3
 * @param area reference area of the coefficients, m^2
 */
public record SteadyDescent(double weight, double density, double area) {

    private static final double TOLERANCE = 1e-8;
    private static final int MOST_EVALUATIONS = 100;

    /** Speed at which these coefficients carry the weight, m/s. */
    public double speed(double lift, double drag) {
        return Math.sqrt(2 * weight / (density * area * Math.hypot(lift, drag)));
    }

    /** Angle of the path below the horizon, rad. */
    public static double angle(double lift, double drag) {
        return Math.atan2(drag, lift);
    }

    /** Height lost per second, m/s. */
    public double sink(double lift, double drag) {
        return speed(lift, drag) * Math.sin(angle(lift, drag));
    }

    /** Lowest speed at one g, m/s, for the largest lift coefficient. */
    public double stallSpeed(double maxLift) {
        return speed(maxLift, 0);
    }

    /** Resulting coefficient that carries the weight at a speed, m/s. */
    public double resultantFor(double speed) {
        return 2 * weight / (density * speed * speed * area);
    }

    /**
     * Angle of the path over the ground in a steady headwind.
     *
     * @param speed airspeed, m/s
     * @param angle of the path through the air, rad
     * @param headwind m/s, less than the forward speed
     * @return rad below the horizon
     */
    public static double groundAngle(double speed, double angle, double headwind) {
        return Math.atan2(speed * Math.sin(angle), speed * Math.cos(angle) - headwind);
    }

    /**
     * Where on a polar the weight is carried at a given speed.
     *
     * @param resultant resulting coefficient over any rising variable, an angle of attack for example
     * @param withoutLift value of the variable at which there is no lift
     * @param atStall value of the variable at the largest lift, above {@code withoutLift}
     * @param speed the speed, m/s
     * @return whether it can be held, and where
     */
    public Held held(UnivariateFunction resultant, double withoutLift, double atStall, double speed) {
        double wanted = resultantFor(speed);
        if (resultant.value(atStall) < wanted) {
            return new Held(Descent.Outcome.TOO_SLOW, atStall);
        }
        if (resultant.value(withoutLift) > wanted) {
            return new Held(Descent.Outcome.TOO_FAST, withoutLift);
        }
        double at = new BracketingNthOrderBrentSolver(TOLERANCE, 5)
                .solve(MOST_EVALUATIONS, x -> resultant.value(x) - wanted, withoutLift, atStall);
        return new Held(Descent.Outcome.STEADY, at);
    }

    /**
     * Where a speed is held.
     *
     * @param outcome steady, or why not
     * @param at value of the variable
     */
    public record Held(Descent.Outcome outcome, double at) {}
}
