package throwline.model;

import throwline.numerics.Interpolation;

/**
 * A hinged surface on the trailing edge of one side of the wing; the other side has its mirror image.
 *
 * @param name what set-ups and sticks call it
 * @param from inner end, distance from the middle, m
 * @param to outer end, distance from the middle, m
 * @param chordFraction chord behind the hinge over the section's chord, 0.08 to 0.5
 * @param travelUp largest deflection up, rad, not negative
 * @param travelDown largest deflection down, rad, not negative
 * @param hinge how the hinge line is closed
 */
public record Surface(
        String name, double from, double to, double chordFraction, double travelUp, double travelDown, Hinge hinge) {

    /**
     * The deflection that the surface reaches when told to go to another.
     *
     * @param deflection wanted, rad, trailing edge down positive
     * @return the same, cut at the travel
     */
    public double reached(double deflection) {
        return Interpolation.clamp(deflection, -travelUp, travelDown);
    }
}
