package throwline.section;

import throwline.model.Hinge;

/**
 * Hinge moment coefficient of a plain surface on its own chord squared, positive where the air drives the trailing edge
 * down. Slopes for 9 % sections: a straight line in chord fraction through NACA 0009 at 0.20 and 0.40 (P. Soderman, read);
 * for 15 % sections thin-airfoil theory times 0.20 and 0.47 (Hoerner's NACA 0015, read); straight in thickness between. An
 * open gap takes 21 % off the part by deflection (same text).
 *
 * @param byAngle per rad of angle of attack above the clean section's zero lift
 * @param byDeflection per rad of deflection
 */
record HingeMoment(double byAngle, double byDeflection) {

    /** No larger coefficient is predicted (practice, large deflections). */
    private static final double LARGEST = 0.65;

    /** Up to here the slopes hold without bending towards the largest. */
    private static final double STRAIGHT = 0.45;

    private static final double PER_DEGREE = Math.toDegrees(1);

    static HingeMoment of(double chordFraction, double thickness, Hinge hinge) {
        double away = chordFraction - 0.20;
        double thick = Math.max(0, Math.min(1, (thickness - 0.09) / 0.06));
        double thinByAngle = (-0.0045 - 0.0275 * away) * PER_DEGREE;
        double thinByDeflection = (-0.012 - 0.015 * away) * PER_DEGREE;
        double thickByAngle = 0.20 * ThinAirfoil.hingeByAngle(chordFraction);
        double thickByDeflection = 0.47 * ThinAirfoil.hingeByDeflection(chordFraction);
        double closed = hinge == Hinge.OPEN ? 0.79 : 1;
        return new HingeMoment(
                thinByAngle + thick * (thickByAngle - thinByAngle),
                closed * (thinByDeflection + thick * (thickByDeflection - thinByDeflection)));
    }

    /** The coefficient at an angle above zero lift and a deflection, bent smoothly towards its largest size. */
    double at(double angle, double deflection) {
        double straight = byAngle * angle + byDeflection * deflection;
        double size = Math.abs(straight);
        if (size <= STRAIGHT) {
            return straight;
        }
        double room = LARGEST - STRAIGHT;
        return Math.copySign(LARGEST - room * Math.exp(-(size - STRAIGHT) / room), straight);
    }
}
