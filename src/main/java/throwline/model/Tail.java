package throwline.model;

/**
 * The horizontal tail, of constant chord.
 *
 * @param span span, m
 * @param chord chord, m
 * @param arm leading edge of the tail behind the leading edge of the wing, both at the middle, m
 * @param height quarter chord of the tail above the plane of the wing, m
 * @param incidence against the body's axis, rad, nose up positive
 * @param incidenceDoubt how far off its incidence against the wing's may be nine times out of ten, rad; 0 where it is given
 * @param fins height of each of two fins at its ends, the parts above and below it together, m; 0 without such fins
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
        double incidenceDoubt,
        double fins,
        TailPosition position,
        AirfoilName airfoil,
        Elevator elevator) {

    /** A tail whose incidence is known, without fins at its ends. */
    public Tail(
            double span,
            double chord,
            double arm,
            double height,
            double incidence,
            TailPosition position,
            AirfoilName airfoil,
            Elevator elevator) {
        this(span, chord, arm, height, incidence, 0, 0, position, airfoil, elevator);
    }

    /** From the elevator's hinge, or the pivot of an all-moving tail, to the trailing edge, m: throws are measured on it. */
    public double throwChord() {
        return chord * elevator.throwFraction();
    }

    /** The same tail turned nose up by an angle, rad. */
    public Tail turned(double angle) {
        return new Tail(span, chord, arm, height, incidence + angle, incidenceDoubt, fins, position, airfoil, elevator);
    }

    /** Area, m^2. */
    public double area() {
        return span * chord;
    }
}
