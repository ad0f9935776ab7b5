package throwline.section;

import java.util.OptionalDouble;

/**
 * Two-dimensional coefficients of one section with its surface at one deflection and one Reynolds number. Angles of
 * attack are in radians from -pi/2 to pi/2 and are clamped to that range. Every function is continuous; lift has a
 * continuous slope. Immutable.
 */
public interface SectionCurve {

    /** Lift coefficient, with its fall past the stall. */
    double lift(double alpha);

    /** Drag coefficient, positive. */
    double drag(double alpha);

    /** Pitching moment coefficient about the quarter chord, nose up positive. */
    double moment(double alpha);

    /**
     * Hinge moment coefficient of the surface on its own chord squared, positive where the air drives the trailing edge
     * down; zero where the section has no surface.
     */
    double hinge(double alpha);

    /**
     * The non-decreasing hull of the lift curve: the lift up to the first peak and flat beyond it, downwards likewise.
     * This is what the lifting line solves with.
     */
    double risingLift(double alpha);

    /** Slope of {@link #risingLift}, per radian, never negative. */
    double risingLiftSlope(double alpha);

    /**
     * Stretch of {@link #risingLift} around an angle, for who reads it again and again near by; the angle alone where a curve
     * is not made of cubics.
     *
     * @param alpha angle of attack, rad
     * @param piece gets the stretch, which holds the angle but for the last bits of rounding
     */
    default void risingPiece(double alpha, HullPiece piece) {
        piece.point(alpha, risingLift(alpha), risingLiftSlope(alpha));
    }

    /** Angle of attack at zero lift, rad. */
    double zeroLiftAngle();

    /** Angle of attack of the first peak, rad. */
    double stallAngle();

    /** Angle of attack of the lower peak, rad. */
    double negativeStallAngle();

    /** Lift coefficient at the first peak. */
    double maxLift();

    /** Lift coefficient at the lower peak. */
    double minLift();

    /** Slope of the lift curve near zero lift, per radian: the least-squares slope over the middle of the attached range. */
    double attachedSlope();

    /**
     * Angle of attack at which lift comes back when the angle falls after a stall, rad; at most the stall angle. Empty where
     * no run with falling angle was measured.
     */
    default OptionalDouble recoveryAngle() {
        return OptionalDouble.empty();
    }

    /** Basis of the curve at this angle. */
    Basis basis(double alpha);
}
