package throwline.section;

/**
 * Thin-airfoil theory of a plain flap: attached flow, small angles, no thickness, no gap. The chord fraction is the flap's
 * chord over the section's, above 0 and below 1. Houghton and Carpenter, Aerodynamics for Engineering Students, section
 * 4.5, eqs 4.49-4.57 (their second hinge coefficient with 1 - cos 2 theta); moment and first hinge coefficient in closed
 * form by own integration.
 */
final class ThinAirfoil {

    private ThinAirfoil() {}

    /** Angle of the hinge on the chord circle, pi at the trailing edge, rad. */
    static double hingeAngle(double chordFraction) {
        return Math.acos(2 * chordFraction - 1);
    }

    /** Angle of attack that one radian of deflection is worth. */
    static double effectiveness(double chordFraction) {
        double th = hingeAngle(chordFraction);
        return 1 - (th - Math.sin(th)) / Math.PI;
    }

    /** Quarter-chord moment coefficient per radian of deflection at fixed angle of attack. */
    static double momentSlope(double chordFraction) {
        double th = hingeAngle(chordFraction);
        return -0.5 * Math.sin(th) * (1 - Math.cos(th));
    }

    /** Hinge moment coefficient per radian of angle of attack. */
    static double hingeByAngle(double chordFraction) {
        double th = hingeAngle(chordFraction);
        double rest = Math.PI - th;
        double bracket = 2 * rest * (2 * Math.cos(th) - 1) + 4 * Math.sin(th) - Math.sin(2 * th);
        return -bracket / (4 * chordFraction * chordFraction);
    }

    /** Hinge moment coefficient per radian of deflection. */
    static double hingeByDeflection(double chordFraction) {
        double th = hingeAngle(chordFraction);
        double rest = Math.PI - th;
        double bracket = 1 - Math.cos(2 * th) - 2 * rest * rest * (1 - 2 * Math.cos(th)) + 4 * rest * Math.sin(th);
        return -bracket / (4 * Math.PI * chordFraction * chordFraction);
    }
}
