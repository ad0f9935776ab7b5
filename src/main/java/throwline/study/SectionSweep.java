package throwline.study;

import java.util.List;
import throwline.section.Basis;

/**
 * One section with its surface at one deflection over angle of attack.
 *
 * @param airfoil its name
 * @param reynolds Reynolds number
 * @param flap deflection, rad, trailing edge down positive
 * @param flapChord chord behind the hinge over the chord
 * @param maxLift lift coefficient at the first peak
 * @param minLift lift coefficient at the lower peak
 * @param stallAngle angle of the first peak, rad
 * @param points rising angle
 */
public record SectionSweep(
        String airfoil,
        double reynolds,
        double flap,
        double flapChord,
        double maxLift,
        double minLift,
        double stallAngle,
        List<Point> points) {

    public SectionSweep {
        points = List.copyOf(points);
    }

    /**
     * One angle.
     *
     * @param angle of attack, rad
     * @param lift lift coefficient
     * @param drag drag coefficient
     * @param moment quarter-chord moment coefficient
     * @param hinge hinge moment coefficient
     * @param basis what these rest on
     */
    public record Point(double angle, double lift, double drag, double moment, double hinge, Basis basis) {}
}
