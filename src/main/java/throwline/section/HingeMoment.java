package throwline.section;

import throwline.model.Hinge;
import throwline.numerics.Interpolation;

/**
 * Hinge moment coefficient of a plain surface on its own chord squared, positive where the air drives the trailing edge
 * down. Slopes for 9 % sections: a straight line in chord fraction through NACA 0009 at 0.20 and 0.40 (P. Soderman, read);
 * for 15 % sections thin-airfoil theory times 0.20 and 0.47 (Hoerner's NACA 0015, read); straight in thickness between. An
 * open gap takes 21 % off the part by deflection (same text).
 *
 * @param byAngle per rad of angle of attack
 * @param atZero what it would be at zero angle if it were not bent
 */
record HingeMoment(double byAngle, double atZero) {

    /** No surface, no moment. */
    static final HingeMoment NONE = new HingeMoment(0, 0);

    /** No larger coefficient is predicted (practice, large deflections). */
    private static final double LARGEST = 0.65;

    /** Up to here the slopes hold without bending towards the largest. */
    private static final double STRAIGHT = 0.45;

    private static final double PER_DEGREE = Math.toDegrees(1);

    /**
     * The hinge moment of a surface.
     *
     * @param surface the surface; one without chord has none
     * @param thickness thickness over chord
     * @param zeroLift the clean section's zero-lift angle, from which the angle counts, rad
     */
    static HingeMoment of(SurfaceState surface, double thickness, double zeroLift) {
        double chordFraction = surface.chordFraction();
        if (chordFraction <= 0) {
            return NONE;
        }
        double away = chordFraction - 0.20;
        double thick = Interpolation.clamp((thickness - 0.09) / 0.06, 0, 1);
        double thinByAngle = (-0.0045 - 0.0275 * away) * PER_DEGREE;
        double thinByDeflection = (-0.012 - 0.015 * away) * PER_DEGREE;
        double thickByAngle = 0.20 * ThinAirfoil.hingeByAngle(chordFraction);
        double thickByDeflection = 0.47 * ThinAirfoil.hingeByDeflection(chordFraction);
        double closed = surface.hinge() == Hinge.OPEN ? 0.79 : 1;
        double byAngle = thinByAngle + thick * (thickByAngle - thinByAngle);
        double byDeflection = closed * (thinByDeflection + thick * (thickByDeflection - thinByDeflection));
        return new HingeMoment(byAngle, byDeflection * surface.deflection() - byAngle * zeroLift);
    }

    /** That of a section between this and another; weight 0 gives this. */
    HingeMoment blend(HingeMoment other, double weight) {
        return new HingeMoment(byAngle + weight * (other.byAngle - byAngle), atZero + weight * (other.atZero - atZero));
    }

    /** The coefficient at an angle of attack in rad, bent smoothly towards its largest size. */
    double at(double alpha) {
        double straight = byAngle * Interpolation.clamp(alpha, -Math.PI / 2, Math.PI / 2) + atZero;
        double size = Math.abs(straight);
        if (size <= STRAIGHT) {
            return straight;
        }
        double room = LARGEST - STRAIGHT;
        return Math.copySign(LARGEST - room * Math.exp(-(size - STRAIGHT) / room), straight);
    }
}
