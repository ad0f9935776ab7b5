package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import throwline.air.Gravity;
import throwline.numerics.Interpolation;

/**
 * The model free in heave and pitch, throttle shut, while its surfaces and the elevator move: speed, path, attitude,
 * pitch rate and height over time, in steps of 0.01 s.
 *
 * @param coefficients of the whole model
 * @param balance weight, air and area
 * @param chord mean chord, m
 * @param gyration radius of gyration in pitch, m
 */
record PitchFlight(PitchCoefficients coefficients, SteadyDescent balance, double chord, double gyration) {

    private static final double STEP = 0.01;
    private static final double ANGLE_TOLERANCE = 1e-7;
    private static final int MOST_EVALUATIONS = 100;

    /**
     * What moves.
     *
     * @param from share of the way at first, 0 or 1
     * @param to share at last
     * @param time that the surfaces take, s
     * @param elevator where it stands at first, rad
     * @param mixed change of the elevator that goes with the surfaces, rad
     * @param pilot what the pilot does besides
     */
    record Schedule(double from, double to, double time, double elevator, double mixed, Pilot pilot) {

        double done(double at) {
            return time <= 0 ? 1 : Interpolation.clamp(at / time, 0, 1);
        }

        double share(double at) {
            return from + (to - from) * done(at);
        }

        double elevator(double at) {
            return elevator + done(at) * (mixed + pilot.answered(at) * (pilot.needed - mixed));
        }
    }

    /**
     * A pilot who brings the elevator to where the surfaces need it, once the change is seen.
     *
     * @param needed whole change of the elevator with the surfaces all the way, rad
     * @param after seconds until the hand moves; infinite for nobody at the stick
     * @param within seconds that the hand takes
     */
    record Pilot(double needed, double after, double within) {

        static Pilot nobody() {
            return new Pilot(0, Double.POSITIVE_INFINITY, 1);
        }

        /** Share of what is needed that is there at a time. */
        double answered(double at) {
            return Interpolation.clamp((at - after) / within, 0, 1);
        }
    }

    /**
     * One moment.
     *
     * @param time s
     * @param speed m/s
     * @param angle of the path below the horizon, rad
     * @param alpha angle of attack, rad
     * @param height over the start, m
     * @param load lift over weight
     */
    record State(double time, double speed, double angle, double alpha, double height, double load) {}

    /**
     * The steady descent with the surfaces standing still.
     *
     * @param share where they stand
     * @param speed m/s
     * @param lowest lowest angle of attack searched, rad
     * @param highest highest angle of attack searched, rad
     * @return it, with the elevator that holds it; empty where there is none
     */
    Optional<Steady> steady(double share, double speed, double lowest, double highest) {
        double wanted = balance.resultantFor(speed);
        UnivariateFunction excess = alpha -> {
            double lift = coefficients.lift(share, alpha, elevator(share, alpha), 0);
            double drag = coefficients.drag(share, alpha);
            return lift - Math.sqrt(Math.max(0, wanted * wanted - drag * drag));
        };
        if (excess.value(lowest) * excess.value(highest) >= 0) {
            return Optional.empty();
        }
        double alpha =
                new BracketingNthOrderBrentSolver(ANGLE_TOLERANCE, 5).solve(MOST_EVALUATIONS, excess, lowest, highest);
        double elevator = elevator(share, alpha);
        double lift = coefficients.lift(share, alpha, elevator, 0);
        double angle = SteadyDescent.angle(lift, coefficients.drag(share, alpha));
        return Optional.of(new Steady(new State(0, speed, angle, alpha, 0, lift / wanted), elevator));
    }

    /** The elevator that takes the moment away: the moment is linear in it. */
    private double elevator(double share, double alpha) {
        double without = coefficients.moment(share, alpha, 0, 0, 0);
        double perRadian = coefficients.moment(share, alpha, 1, 0, 0) - without;
        return -without / perRadian;
    }

    /**
     * A steady descent.
     *
     * @param state its state, at height 0
     * @param elevator that holds it, rad
     */
    record Steady(State state, double elevator) {}

    /** Flight of so many seconds from a steady start; one state a step. */
    List<State> fly(Schedule schedule, State start, double seconds) {
        Equations equations = new Equations(schedule);
        ClassicalRungeKuttaIntegrator steps = new ClassicalRungeKuttaIntegrator(STEP);
        double[] y = {start.speed(), start.angle(), start.alpha() - start.angle(), 0, start.height()};
        List<State> states = new ArrayList<>();
        states.add(equations.state(0, y));
        int most = (int) Math.round(seconds / STEP);
        for (int k = 0; k < most; k++) {
            y = steps.singleStep(equations, k * STEP, y, (k + 1) * STEP);
            states.add(equations.state((k + 1) * STEP, y));
        }
        return states;
    }

    /** Speed, angle of the path below the horizon, attitude of the body above it, pitch rate, height. */
    private final class Equations implements FirstOrderDifferentialEquations {
        private final Schedule schedule;

        Equations(Schedule schedule) {
            this.schedule = schedule;
        }

        @Override
        public int getDimension() {
            return 5;
        }

        private double load(double t, double[] y) {
            double lift = coefficients.lift(schedule.share(t), y[1] + y[2], schedule.elevator(t), y[3] / y[0]);
            return lift / balance.resultantFor(y[0]);
        }

        State state(double t, double[] y) {
            return new State(t, y[0], y[1], y[1] + y[2], y[4], load(t, y));
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] change) {
            double speed = y[0];
            double alpha = y[1] + y[2];
            double share = schedule.share(t);
            double perWeight = 1 / balance.resultantFor(speed);
            change[0] = Gravity.STANDARD * (Math.sin(y[1]) - perWeight * coefficients.drag(share, alpha));
            change[1] = Gravity.STANDARD * (Math.cos(y[1]) - load(t, y)) / speed;
            change[2] = y[3];
            double moment =
                    coefficients.moment(share, alpha, schedule.elevator(t), y[3] / speed, (y[3] + change[1]) / speed);
            change[3] = Gravity.STANDARD * perWeight * chord * moment / (gyration * gyration);
            change[4] = -speed * Math.sin(y[1]);
        }
    }
}
