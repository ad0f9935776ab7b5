package throwline.model;

/**
 * The elevator: the full span of the tail.
 *
 * @param chordFraction chord behind the hinge over the tail's chord; 1 for an all-moving tail
 * @param travelUp largest deflection up, rad, not negative
 * @param travelDown largest deflection down, rad, not negative
 * @param hinge how the hinge line is closed
 * @param pivot where an all-moving tail pivots, behind its leading edge over its chord; not read for a hinged elevator
 */
public record Elevator(double chordFraction, double travelUp, double travelDown, Hinge hinge, double pivot) {

    /** Where an all-moving tail pivots unless the file says otherwise: at the quarter chord (common practice, no source). */
    public static final double USUAL_PIVOT = 0.25;

    /** An elevator that is hinged, or pivots at the usual place. */
    public Elevator(double chordFraction, double travelUp, double travelDown, Hinge hinge) {
        this(chordFraction, travelUp, travelDown, hinge, USUAL_PIVOT);
    }

    /** True where the whole tail turns. */
    public boolean isAllMoving() {
        return chordFraction == 1;
    }

    /** From the hinge, or the pivot of an all-moving tail, to the trailing edge, over the tail's chord. */
    public double throwFraction() {
        return isAllMoving() ? 1 - pivot : chordFraction;
    }
}
