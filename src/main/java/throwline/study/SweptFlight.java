package throwline.study;

import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import throwline.correction.SetUpFlight;
import throwline.numerics.Interpolation;
import throwline.study.SetUpResult.SpeedPoint;

/**
 * Flight of a set-up between the speeds of its sweep. Path and elevator are curves over the logarithm of speed; another drag
 * or weight flies the same curve of drag over lift at another lift coefficient.
 */
final class SweptFlight implements SetUpFlight {

    /** An Akima spline needs five points. */
    private static final int ENOUGH = 5;

    private static final int STEPS = 30;
    private static final double SETTLED = 1e-12;

    private final double stallSpeed;
    private final double approachSpeed;
    private final double slowest;
    private final double fastest;
    private final UnivariateFunction slope;
    private final UnivariateFunction elevator;
    private final double floats;
    private final double balance;
    private final Map<String, Double> rolls;

    /**
     * @param stallSpeed m/s
     * @param approachSpeed m/s
     * @param sweep at least two speeds, rising
     * @param floats distance from level flight above the ground to touch-down in still air, m; not a number where not known
     * @param balance elevator for each metre of balance at the approach speed, rad/m
     * @param rolls roll rate over airspeed by stick, rad/m
     */
    SweptFlight(
            double stallSpeed,
            double approachSpeed,
            List<SpeedPoint> sweep,
            double floats,
            double balance,
            Map<String, Double> rolls) {
        this.stallSpeed = stallSpeed;
        this.approachSpeed = approachSpeed;
        this.floats = floats;
        this.balance = balance;
        this.rolls = Map.copyOf(rolls);
        slowest = Math.log(sweep.get(0).speed());
        fastest = Math.log(sweep.get(sweep.size() - 1).speed());
        double[] x = sweep.stream().mapToDouble(p -> Math.log(p.speed())).toArray();
        slope = curve(
                x,
                sweep.stream()
                        .mapToDouble(p -> Math.log(Math.tan(p.descentAngle())))
                        .toArray());
        elevator = curve(x, sweep.stream().mapToDouble(SpeedPoint::elevator).toArray());
    }

    private static UnivariateFunction curve(double[] x, double[] y) {
        return x.length < ENOUGH
                ? new LinearInterpolator().interpolate(x, y)
                : new AkimaSplineInterpolator().interpolate(x, y);
    }

    @Override
    public double stallSpeed() {
        return stallSpeed;
    }

    @Override
    public double approachSpeed() {
        return approachSpeed;
    }

    @Override
    public double floats() {
        return floats;
    }

    private double held(double logSpeed) {
        return Interpolation.clamp(logSpeed, slowest, fastest);
    }

    /**
     * A steeper path needs less lift at the same speed: {@code CL = W cos g/(q S)}. The curve has that lift at the speed
     * {@code V'} with {@code (V'/V)^2 = cos g(V')/cos g}.
     */
    @Override
    public double descentAngle(double speed, double drag) {
        double start = Math.log(speed);
        double undone = Math.atan(Math.exp(slope.value(held(start))));
        double angle = Math.atan(drag * Math.tan(undone));
        for (int step = 0; step < STEPS; step++) {
            double at = held(start + Math.log(Math.cos(undone) / Math.cos(angle)) / 2);
            undone = Math.atan(Math.exp(slope.value(at)));
            double next = Math.atan(drag * Math.tan(undone));
            if (Math.abs(next - angle) < SETTLED) {
                return next;
            }
            angle = next;
        }
        return angle;
    }

    @Override
    public double elevator(double speed) {
        return elevator.value(held(Math.log(speed)));
    }

    @Override
    public double elevatorPerBalance(double speed) {
        return balance * Math.pow(approachSpeed / speed, 2);
    }

    @Override
    public double rollPerSpeed(String stick) {
        return rolls.getOrDefault(stick, Double.NaN);
    }
}
