package throwline.study;

import throwline.numerics.Interpolation;

/**
 * A deflection as it is measured on the bench: the straight distance between the places of the trailing edge with the
 * surface at zero and moved, 2 c sin(angle / 2) for a chord c behind the hinge.
 *
 * @param chord behind the hinge, m
 */
public record EdgeThrow(double chord) {

    /** Throws are set to this on the bench, m (PRACTICE, methods manual 17.7). */
    public static final double TOLERANCE = 0.001;

    /** Straight distance, m, with the sign of the angle in rad. */
    public double distance(double angle) {
        return 2 * chord * Math.sin(angle / 2);
    }

    /** Height of the edge above or below its place at zero, m, with the sign of the angle in rad: c sin(angle). */
    public double height(double angle) {
        return chord * Math.sin(angle);
    }

    /** Angle, rad, whose straight distance is this, m; at most half a turn. */
    public double angleOf(double distance) {
        return 2 * Math.asin(Interpolation.clamp(distance / (2 * chord), -1, 1));
    }
}
