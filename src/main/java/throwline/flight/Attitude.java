package throwline.flight;

import throwline.liftingline.AngleWalk;
import throwline.liftingline.LiftingLineSolution;

/**
 * The whole model at one speed and one angle of attack, with the elevator that holds it there. Coefficients are on the
 * wing's area and the dynamic pressure of the undisturbed air.
 *
 * @param speed airspeed, m/s
 * @param alpha angle of attack of the body's axis, rad
 * @param lift lift coefficient of the whole model, tail included
 * @param drag drag coefficient of the whole model
 * @param elevator where the elevator stands, rad, trailing edge down positive
 * @param elevatorLimit whether its travel suffices
 * @param tailMargin angle left before the tail stalls, rad
 * @param tailInWake true where part of the tail lies in the wing's wake
 * @param downwash mean downwash angle at the tail, rad
 * @param tailPressure mean dynamic pressure at the tail over that of the undisturbed air
 * @param moments pitching moments by their cause
 * @param wing solution of the wing
 * @param converged false where some part is not a solution
 */
public record Attitude(
        double speed,
        double alpha,
        double lift,
        double drag,
        double elevator,
        ElevatorLimit elevatorLimit,
        double tailMargin,
        boolean tailInWake,
        double downwash,
        double tailPressure,
        Moments moments,
        LiftingLineSolution wing,
        boolean converged)
        implements AngleWalk.Point {

    /** Whether the elevator's travel suffices to hold the attitude. */
    public enum ElevatorLimit {
        /** Enough travel. */
        NONE,
        /** Too little travel up; the nose drops. */
        UP,
        /** Too little travel down; the nose rises. */
        DOWN
    }

    /** Angle of the steady descent without thrust, rad below the horizon. */
    public double descentAngle() {
        return SteadyDescent.angle(lift, drag);
    }

    /** Size of the resulting force coefficient. */
    public double resultant() {
        return Math.hypot(lift, drag);
    }
}
