package throwline.study;

import java.util.List;
import throwline.section.Basis;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Section with its surface at one deflection over angle of attack.
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
        @Key("re") double reynolds,
        @Measure(Dimension.ANGLE) double flap,
        double flapChord,
        double maxLift,
        double minLift,
        @Measure(Dimension.ANGLE) double stallAngle,
        List<Point> points) {

    public SectionSweep {
        points = List.copyOf(points);
    }

    /**
     * Coefficients at one angle.
     *
     * @param angle of attack, rad
     * @param lift lift coefficient
     * @param drag drag coefficient
     * @param moment quarter-chord moment coefficient
     * @param hinge hinge moment coefficient
     * @param basis what these rest on
     */
    public record Point(
            @Measure(Dimension.ANGLE) double angle,
            double lift,
            double drag,
            double moment,
            double hinge,
            Basis basis) {}
}
