package throwline.section;

/**
 * A section with its flow off, as a plate with a nose, for angles far past the stall. The normal force follows the
 * free-streamline plate (Kirchhoff, Rayleigh: 2 pi sin a / (4 + pi sin a)) scaled to the drag measured square to the flow;
 * its centre of pressure is that of the same theory. A thick nose keeps some suction. At
 * 31 degrees NACA 63-215 and 63-415 carry 0.9 and 0.65 of it, two states of one flow (Riso-R-1280, read; methods manual 5.1).
 */
final class FlatPlate {

    /** Drag coefficient at 90 degrees of a 15 % section (MEMORY of tables of NACA 0015, SAND80-2114, which was not read). */
    static final double DRAG_SQUARE = 1.80;

    private static final double THEORY_SQUARE = 2 * Math.PI / (4 + Math.PI);

    /** Force towards the nose of a 15 % section square to the flow: lift coefficient 0.09 at 90 degrees (MEMORY, same tables). */
    private static final double NOSE_SUCTION = 0.09;

    private FlatPlate() {}

    /** Normal force coefficient from the sine of the angle of attack; odd. */
    static double normal(double sin) {
        return DRAG_SQUARE / THEORY_SQUARE * 2 * Math.PI * sin / (4 + Math.PI * Math.abs(sin));
    }

    /**
     * Force coefficient along the section towards its nose, positive.
     *
     * @param sin sine of the angle of attack
     * @param thickness thickness over chord; full suction from 0.15 on, none on a plate
     */
    static double noseSuction(double sin, double thickness) {
        return NOSE_SUCTION * Math.min(1, thickness / 0.15) * Math.abs(sin);
    }

    /** Quarter-chord moment coefficient under a normal force, from sine and cosine of the angle of attack. */
    static double moment(double sin, double cos, double normal) {
        double centre = 0.5 - 0.75 * cos / (4 + Math.PI * Math.abs(sin));
        return -normal * (centre - 0.25);
    }
}
