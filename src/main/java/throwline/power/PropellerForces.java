package throwline.power;

/**
 * Forces of a propeller across its axis when the air meets it at an angle: it acts as a fin of its blades' side area
 * with an aspect ratio of 8 in the air at the disc (Ribner, NACA Reports 819 and 820, summaries read; methods manual
 * 20.9).
 */
public final class PropellerForces {

    /** Lift slope of a fin of aspect ratio 8, 1/rad (lifting line with an efficiency of 1: 2 pi 8 / 10). */
    private static final double FIN_SLOPE = 5.03;

    private PropellerForces() {}

    /** Force across the axis, towards the side that the air is turned away from, N a radian of the axis to the air. */
    public static double normalPerRadian(BladeElements blades, Slipstream jet) {
        double speed = jet.speed();
        return jet.density() / 2 * speed * (speed + jet.induced()) * blades.sideArea() * FIN_SLOPE;
    }
}
