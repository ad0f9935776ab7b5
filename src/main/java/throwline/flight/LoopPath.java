package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import throwline.air.Gravity;

/**
 * A whole loop at one angle of attack: with the throttle shut lift and drag coefficient stay, with the motor running they
 * follow the jet. Integrated over the angle turned in steps of one degree (mechanics; methods manual 12.2 and 12.4).
 *
 * @param topSpeed airspeed upside down at the top, m/s
 * @param endSpeed airspeed after the whole turn, m/s
 * @param height of the top above the entry, m
 * @param way places, from the entry to as far as it gets
 */
public record LoopPath(Optional<Double> topSpeed, Optional<Double> endSpeed, double height, List<Spot> way) {

    private static final int STEPS = 360;

    /** The path must bend by at least this load, else it hangs. */
    private static final double LEAST_BEND = 0.05;

    /** Share at which it hangs: where one degree of the loop leaves less than this of the speed. */
    private static final double SLOWED = 0.8;

    /** With less lift than this share of the weight at the top it falls out of the loop (PRACTICE). */
    private static final double LEAST_AT_TOP = 0.1;

    public LoopPath {
        way = List.copyOf(way);
    }

    /**
     * A place in the loop.
     *
     * @param along ahead of the entry, m
     * @param height above the entry, m
     * @param speed m/s
     */
    public record Spot(double along, double height, double speed) {}

    /**
     * Flies the loop.
     *
     * @param forces on the model
     * @param speed airspeed at the entry, m/s
     */
    static LoopPath fly(LoopForces forces, double speed) {
        Equations equations = new Equations(forces);
        double step = 2 * Math.PI / STEPS;
        ClassicalRungeKuttaIntegrator steps = new ClassicalRungeKuttaIntegrator(step);
        double[] y = {speed, 0, 0};
        List<Spot> way = new ArrayList<>();
        way.add(new Spot(0, 0, speed));
        Optional<Double> top = Optional.empty();
        double highest = 0;
        for (int k = 0; k < STEPS; k++) {
            if (equations.bend(k * step, y[0]) < LEAST_BEND) {
                return new LoopPath(top, Optional.empty(), highest, way);
            }
            double[] next = steps.singleStep(equations, k * step, y, (k + 1) * step);
            boolean fallsBack = 2 * k < STEPS && next[2] < y[2];
            if (fallsBack || !(next[0] > SLOWED * y[0])) {
                return new LoopPath(top, Optional.empty(), highest, way);
            }
            y = next;
            way.add(new Spot(y[1], y[2], y[0]));
            highest = Math.max(highest, y[2]);
            if (k + 1 == STEPS / 2) {
                if (forces.across(y[0]) < LEAST_AT_TOP) {
                    return new LoopPath(Optional.empty(), Optional.empty(), highest, way);
                }
                top = Optional.of(y[0]);
            }
        }
        return new LoopPath(top, Optional.of(y[0]), highest, way);
    }

    /** Speed and place over the angle that the path has turned up. */
    private record Equations(LoopForces forces) implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return 3;
        }

        /** Load that bends the path. */
        double bend(double angle, double speed) {
            return forces.across(speed) - Math.cos(angle);
        }

        @Override
        public void computeDerivatives(double angle, double[] y, double[] change) {
            double turning = Gravity.STANDARD * bend(angle, y[0]) / y[0];
            double slowing = Gravity.STANDARD * (forces.against(y[0]) + Math.sin(angle));
            change[0] = -slowing / turning;
            change[1] = y[0] * Math.cos(angle) / turning;
            change[2] = y[0] * Math.sin(angle) / turning;
        }
    }
}
