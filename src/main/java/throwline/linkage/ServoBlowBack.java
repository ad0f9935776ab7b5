package throwline.linkage;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.model.Servo;
import throwline.numerics.Interpolation;

/**
 * A surface that a servo holds against the air. A servo is a position loop: its torque grows with its error until it
 * reaches the rating at an error called its give; past that it holds the rating and is pushed back. The surface rests where
 *
 * <pre>rating clamp((told - s) / give, -1, 1) + hinge(surface(s)) ratio(s) = 0</pre>
 *
 * <p>over the servo's angle {@code s}: statics by virtual work, {@code ratio} being the linkage's change of surface angle
 * over servo angle. Friction of the linkage, which helps to hold, is left out: this is the most that the air pushes back.
 *
 * <p>The first term never rises with {@code s}. Where the hinge moment falls with the angle (the air restores) and the
 * ratio is even, the second falls too: one root. Where the ratio goes to nothing, as with an arm that comes into line with
 * its rod, the load may be largest on the way and there may be more roots than one; and where the hinge moment rises, as
 * on a tail that pivots behind its aerodynamic centre. Then the answer is where a surface first comes to rest when it is
 * moved there slowly from neutral, which is the most blown-back of them. Roots that lie closer together than half a degree
 * of servo are not told apart.
 *
 * @param run servo and linkage
 * @param rating torque of the servo, N m, above zero
 * @param give error at which the servo gives its rating, rad, not negative
 * @param play free movement of the surface from end to end, rad, not negative; the air pushes the surface to one end of it
 */
public record ServoBlowBack(ControlRun run, double rating, double give, double play) {

    /** Least give, in place of none at all, rad. */
    private static final double RIGID = 1e-6;

    /** Servo angle at which the walk from neutral looks, rad. */
    private static final double STEP = Math.toRadians(0.5);

    /** The servo's angle is found to this, rad. */
    private static final double TOLERANCE = 1e-8;

    private static final int MOST_EVALUATIONS = 200;

    /** How a surface is held. */
    public enum Hold {
        /** Within the servo's rating. */
        HELD,
        /** By all that the servo can do, pushed back further than it gives. */
        OVERPOWERED,
        /** The air takes it to the end of the servo's swing or of the linkage. */
        BLOWN
    }

    /**
     * Where a surface rests.
     *
     * @param angle of the surface, rad, trailing edge down positive
     * @param hold how it is held there
     */
    public record Rest(double angle, Hold hold) {}

    /**
     * The surface of a servo; empty where the servo's torque is not given.
     *
     * @param run servo and linkage
     * @param servo the servo
     * @param chord from hinge to trailing edge at the surface's root end, m
     */
    public static Optional<ServoBlowBack> of(ControlRun run, Servo servo, double chord) {
        double play = 2 * Math.asin(Math.min(1, servo.play() / (2 * chord)));
        return servo.torque().stream()
                .mapToObj(torque -> new ServoBlowBack(run, torque, servo.give(), play))
                .findFirst();
    }

    /**
     * Where the surface rests.
     *
     * @param told where the transmitter sends it, rad; cut at what is reached on the bench
     * @param hinge hinge moment over the surface's angle, N m, positive where the air drives the trailing edge down;
     *     continuous
     */
    public Rest at(double told, DoubleUnaryOperator hinge) {
        return new Balance(told, hinge).rest();
    }

    private final class Balance {
        private final DoubleUnaryOperator hinge;
        private final double told;
        private final double low;
        private final double high;

        Balance(double deflection, DoubleUnaryOperator hinge) {
            this.hinge = hinge;
            low = run.offset() - run.swing();
            high = run.offset() + run.swing();
            told = within(run.linkage().servoAt(run.benchAngle(deflection)).orElse(0));
        }

        private double within(double servo) {
            return Interpolation.clamp(servo, low, high);
        }

        Rest rest() {
            double start = within(0);
            double way = Math.signum(push(start));
            double from = start;
            while (way != 0) {
                double to = next(from, way);
                if (to == from || run.linkage().surfaceAt(to).isEmpty()) {
                    return new Rest(surface(from), Hold.BLOWN);
                }
                if (way * push(to) <= 0) {
                    return held(root(this::push, from, to));
                }
                from = to;
            }
            return held(start);
        }

        /** A step further, not past where the servo was told to go nor past the end of its swing. */
        private double next(double from, double way) {
            double to = within(from + way * STEP);
            return (told - from) * way > 0 && (told - to) * way < 0 ? told : to;
        }

        /** Torque that moves the servo down, N m. */
        private double push(double servo) {
            double error = (told - servo) / Math.max(give, RIGID);
            double angle = linked(servo);
            return rating * Interpolation.clamp(error, -1, 1)
                    + pressed(angle) * run.linkage().ratioAt(servo).orElse(0);
        }

        private double linked(double servo) {
            return run.linkage().surfaceAt(servo).orElse(0);
        }

        /** Hinge moment with the surface pushed to one end of its play; none where it floats between them. */
        private double pressed(double angle) {
            return hinge.applyAsDouble(angle) > 0
                    ? Math.max(0, hinge.applyAsDouble(angle + play / 2))
                    : Math.min(0, hinge.applyAsDouble(angle - play / 2));
        }

        private Rest held(double servo) {
            boolean within = Math.abs(told - servo) <= Math.max(give, RIGID) + TOLERANCE;
            return new Rest(surface(servo), within ? Hold.HELD : Hold.OVERPOWERED);
        }

        /** Where the surface stands within its play. */
        private double surface(double servo) {
            double angle = linked(servo);
            double here = hinge.applyAsDouble(angle);
            double end = angle + Math.signum(here) * play / 2;
            boolean floats = here * hinge.applyAsDouble(end) < 0;
            return floats ? root(hinge::applyAsDouble, angle, end) : end;
        }

        private static double root(UnivariateFunction function, double from, double to) {
            return new BracketingNthOrderBrentSolver(TOLERANCE, 5)
                    .solve(MOST_EVALUATIONS, function, Math.min(from, to), Math.max(from, to));
        }
    }
}
