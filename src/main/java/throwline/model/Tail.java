package throwline.model;

import java.util.Optional;

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
 * @param cruise where the elevator stands in cruise, by which the incidence is to be worked out; empty where it is given or
 *     assumed
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
        Elevator elevator,
        Optional<CruiseTrim> cruise) {

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
        this(span, chord, arm, height, incidence, 0, 0, position, airfoil, elevator, Optional.empty());
    }

    /** From the elevator's hinge, or the pivot of an all-moving tail, to the trailing edge, m: throws are measured on it. */
    public double throwChord() {
        return chord * elevator.throwFraction();
    }

    /** The same tail turned nose up by an angle, rad. */
    public Tail turned(double angle) {
        return at(incidence + angle, incidenceDoubt, cruise);
    }

    /**
     * The same tail where its incidence was worked out from the elevator in cruise.
     *
     * @param angle its incidence, rad
     * @param doubt how far off that may be nine times out of ten, rad
     */
    public Tail rigged(double angle, double doubt) {
        return at(angle, doubt, Optional.empty());
    }

    private Tail at(double angle, double doubt, Optional<CruiseTrim> read) {
        return new Tail(span, chord, arm, height, angle, doubt, fins, position, airfoil, elevator, read);
    }

    /** Area, m^2. */
    public double area() {
        return span * chord;
    }
}
