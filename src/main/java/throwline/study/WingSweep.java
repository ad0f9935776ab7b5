package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.words.Message;

/**
 * The bare wing at one set-up over incidence.
 *
 * @param setUp name of the set-up
 * @param area m^2
 * @param span m
 * @param meanChord mean aerodynamic chord, m
 * @param speed airspeed, m/s
 * @param points one entry an incidence
 * @param stall the three marks of the stall, wings level in free or ground air as asked; empty where it was not found
 * @param warnings what holds for the whole sweep
 */
public record WingSweep(
        @Key(Key.NONE) String setUp,
        double area,
        double span,
        double meanChord,
        @Key(Key.NONE) double speed,
        List<Point> points,
        @Key(Key.NONE) Optional<Stall> stall,
        @Key(Key.NONE) List<Message> warnings) {

    public WingSweep {
        points = List.copyOf(points);
        warnings = List.copyOf(warnings);
    }

    /**
     * The three marks of the stall.
     *
     * @param onset where the margin, averaged over one local chord, first reaches zero
     * @param at where along the span that is, m, right positive
     * @param checkedMaximum largest lift with the sections' falling curves
     * @param plateau half of the area past its stall angle
     */
    public record Stall(Mark onset, @Key("onsetAt") double at, Mark checkedMaximum, Mark plateau) {}

    /**
     * Mark of the stall.
     *
     * @param incidence of the root chord, rad
     * @param lift lift coefficient
     */
    public record Mark(@Measure(Dimension.ANGLE) double incidence, double lift) {}

    /**
     * Coefficients at one incidence.
     *
     * @param incidence of the root chord, rad
     * @param lift lift coefficient
     * @param drag drag coefficient, induced and profile
     * @param inducedDrag drag coefficient of the tilted lift
     * @param profileDrag drag coefficient of the sections
     * @param rolling rolling moment coefficient on span, right wing down positive
     * @param yawing yawing moment coefficient on span, nose right positive
     * @param pitching pitching moment coefficient on the mean chord about the mean quarter chord, nose up positive
     * @param converged false where the numbers are not a solution
     * @param iterations Newton steps taken
     * @param strips left tip to right tip
     */
    public record Point(
            @Measure(Dimension.ANGLE) double incidence,
            double lift,
            double drag,
            double inducedDrag,
            double profileDrag,
            double rolling,
            double yawing,
            double pitching,
            boolean converged,
            int iterations,
            List<Strip> strips) {
        public Point {
            strips = List.copyOf(strips);
        }
    }

    /**
     * Strip of the wing.
     *
     * @param at distance from the middle, m, right positive
     * @param width m
     * @param chord m
     * @param lift lift coefficient
     * @param limit largest lift coefficient that it can carry
     * @param localIncidence effective angle of attack, rad
     * @param deflection of the surface on it, rad, trailing edge down positive
     * @param margin angle left to the section's stall, up or down, whichever is nearer, rad; negative past it
     * @param hinge hinge moment over dynamic pressure, m^3, positive where the air drives the trailing edge down; zero
     *     where there is no surface
     */
    public record Strip(
            double at,
            double width,
            double chord,
            double lift,
            double limit,
            @Measure(Dimension.ANGLE) double localIncidence,
            @Measure(Dimension.ANGLE) double deflection,
            @Measure(Dimension.ANGLE) double margin,
            double hinge) {}
}
