package throwline.section;

import java.util.List;

/**
 * Run of measurements at one Reynolds number and one deflection.
 *
 * @param kind what was measured
 * @param reynolds Reynolds number on the chord
 * @param deflection deflection of the model's surface, rad, trailing edge down positive
 * @param surfaceChord chord of that surface over the section's, 0.08 to 0.5; not read at zero deflection
 * @param source where the numbers come from
 * @param mark how sure that is: READ, COMPUTED, MEMORY or PRACTICE
 * @param points in rising order of angle
 */
public record PolarRun(
        Kind kind,
        double reynolds,
        double deflection,
        double surfaceChord,
        String source,
        String mark,
        List<Point> points) {

    public PolarRun {
        points = List.copyOf(points);
    }

    /** Quantities that a run measured. */
    public enum Kind {
        /** Lift and drag at the same angle, up to about the stall. */
        DRAG,
        /** Lift through the stall, angle rising. */
        LIFT_UP,
        /** Lift through the stall, angle falling. */
        LIFT_DOWN
    }

    /**
     * One measured point; what was not measured is NaN.
     *
     * @param alpha angle of attack, rad
     * @param lift lift coefficient
     * @param drag drag coefficient, or NaN
     * @param moment quarter-chord moment coefficient, nose up positive, or NaN
     */
    public record Point(double alpha, double lift, double drag, double moment) {}
}
