package throwline.section;

/**
 * A plate across the flow, for angles far past the stall. The normal force follows the free-streamline plate (Kirchhoff,
 * Rayleigh: 2 pi sin a / (4 + pi sin a)) scaled to the drag measured square to the flow; its centre of pressure is that
 * of the same theory.
 */
final class FlatPlate {

    /** Drag coefficient at 90 degrees: Sheldahl and Klimas, SAND80-2114, NACA 0015 (read). */
    static final double DRAG_SQUARE = 1.80;

    private static final double THEORY_SQUARE = 2 * Math.PI / (4 + Math.PI);

    private FlatPlate() {}

    /** Normal force coefficient; angle in radians, odd. */
    static double normal(double alpha) {
        double sin = Math.sin(alpha);
        return DRAG_SQUARE / THEORY_SQUARE * 2 * Math.PI * sin / (4 + Math.PI * Math.abs(sin));
    }

    /** Quarter-chord moment coefficient under a normal force at an angle of attack. */
    static double moment(double alpha, double normal) {
        double centre = 0.5 - 0.75 * Math.cos(alpha) / (4 + Math.PI * Math.abs(Math.sin(alpha)));
        return -normal * (centre - 0.25);
    }
}
