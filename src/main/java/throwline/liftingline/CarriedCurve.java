package throwline.liftingline;

import throwline.section.Basis;
import throwline.section.SectionCurve;
import throwline.section.TurnedCurve;

/**
 * Section without a surface that carries on part of the lift of the moved one beside it: the section at rest with its zero-lift
 * angle part of the way to that of the moved one. Most lift and drag at equal lift are those at rest.
 */
final class CarriedCurve extends TurnedCurve {

    private final SectionCurve moved;
    private final double share;

    /**
     * @param rest the section with nothing moved
     * @param moved the same section with the surface beside it moved
     * @param share of the change of the zero-lift angle that is carried on, 0 to 1
     */
    CarriedCurve(SectionCurve rest, SectionCurve moved, double share) {
        super(rest, share * (moved.zeroLiftAngle() - rest.zeroLiftAngle()));
        this.moved = moved;
        this.share = share;
    }

    @Override
    public double moment(double alpha) {
        return (1 - share) * super.moment(alpha) + share * moved.moment(alpha);
    }

    @Override
    public double hinge(double alpha) {
        return 0;
    }

    @Override
    public Basis basis(double alpha) {
        return super.basis(alpha).weaker(Basis.METHOD);
    }
}
