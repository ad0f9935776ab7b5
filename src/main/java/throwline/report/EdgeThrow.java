package throwline.report;

/**
 * A deflection as it is measured on the bench: the straight distance between the places of the trailing edge with the
 * surface at zero and moved, 2 c sin(angle / 2) for a chord c behind the hinge.
 *
 * @param chord behind the hinge, m
 */
public record EdgeThrow(double chord) {

    /** Straight distance, m, with the sign of the angle in rad. */
    public double distance(double angle) {
        return 2 * chord * Math.sin(angle / 2);
    }

    /** Height of the edge above or below its place at zero, m, with the sign of the angle in rad: c sin(angle). */
    public double height(double angle) {
        return chord * Math.sin(angle);
    }
}
