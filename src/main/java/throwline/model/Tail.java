package throwline.model;

/**
 * The horizontal tail, of constant chord.
 *
 * @param span span, m
 * @param chord chord, m
 * @param arm leading edge of the tail behind the leading edge of the wing, both at the middle, m
 * @param height quarter chord of the tail above the plane of the wing, m
 * @param incidence against the body's axis, rad, nose up positive
 * @param position where it sits, which tells how much of the body's wake it meets
 * @param airfoil its airfoil
 * @param elevator the elevator
 */
public record Tail(
        double span,
        double chord,
        double arm,
        double height,
        double incidence,
        TailPosition position,
        AirfoilName airfoil,
        Elevator elevator) {

    /** From the elevator's hinge, or the pivot of an all-moving tail, to the trailing edge, m: throws are measured on it. */
    public double throwChord() {
        return chord * elevator.throwFraction();
    }

    /** Area, m^2. */
    public double area() {
        return span * chord;
    }
}
