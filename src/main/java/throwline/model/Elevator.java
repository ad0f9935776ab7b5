package throwline.model;

/**
 * The elevator: the full span of the tail.
 *
 * @param chordFraction chord behind the hinge over the tail's chord; 1 for an all-moving tail
 * @param travelUp largest deflection up, rad, not negative
 * @param travelDown largest deflection down, rad, not negative
 * @param hinge how the hinge line is closed
 */
public record Elevator(double chordFraction, double travelUp, double travelDown, Hinge hinge) {}
