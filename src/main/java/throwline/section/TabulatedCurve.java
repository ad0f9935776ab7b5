package throwline.section;

import java.util.OptionalDouble;
import throwline.section.CurveNodes.Coefficient;

/**
 * A section curve on an {@link AngleGrid}: monotone cubics for lift, its hull and drag, straight lines for the moment.
 * Safe for several threads.
 */
final class TabulatedCurve implements SectionCurve {

    private final AngleGrid grid;
    private final CurveNodes nodes;
    private final HullCurve rising;
    private final Traits traits;
    private final double zeroLiftAngle;

    /**
     * A curve from its values at the angles of a grid.
     *
     * @param grid the angles
     * @param source the values
     * @param traits what else is known of it
     */
    TabulatedCurve(AngleGrid grid, CurveNodes.Source source, Traits traits) {
        this.grid = grid;
        this.traits = traits;
        nodes = new CurveNodes(grid, source);
        rising = new HullCurve(grid, node -> source.at(Coefficient.LIFT, node));
        zeroLiftAngle = findZeroLift();
    }

    /**
     * What is known of a curve beside its values.
     *
     * @param attachedSlope per rad
     * @param recovery how far below the stall lift comes back with falling angle, rad; empty where not measured
     * @param hinge hinge moments
     * @param bases what every stretch rests on
     */
    record Traits(double attachedSlope, OptionalDouble recovery, HingeMoment hinge, BasisMap bases) {

        Traits blend(Traits other, double weight) {
            OptionalDouble both = recovery.isPresent() && other.recovery.isPresent()
                    ? OptionalDouble.of((1 - weight) * recovery.getAsDouble() + weight * other.recovery.getAsDouble())
                    : OptionalDouble.empty();
            return new Traits(
                    attachedSlope + weight * (other.attachedSlope - attachedSlope),
                    both,
                    hinge.blend(other.hinge, weight),
                    bases.blend(other.bases, weight));
        }
    }

    /** This curve and another, landmark with landmark; weight 0 gives this. */
    TabulatedCurve blend(TabulatedCurve other, double weight) {
        CurveNodes.Source between = (coefficient, node) -> {
            double here = nodes.value(coefficient, node);
            return here + weight * (other.nodes.value(coefficient, node) - here);
        };
        return new TabulatedCurve(grid.blend(other.grid, weight), between, traits.blend(other.traits, weight));
    }

    /** Where the hull crosses zero; on the attached slope beyond it where it does not. */
    private double findZeroLift() {
        if (minLift() >= 0) {
            return negativeStallAngle() - minLift() / traits.attachedSlope;
        }
        if (maxLift() <= 0) {
            return stallAngle() - maxLift() / traits.attachedSlope;
        }
        return rising.zeroAngle();
    }

    AngleGrid grid() {
        return grid;
    }

    CurveNodes nodes() {
        return nodes;
    }

    HullCurve risingNodes() {
        return rising;
    }

    @Override
    public double lift(double alpha) {
        return nodes.cubic(Coefficient.LIFT, grid.place(alpha));
    }

    @Override
    public double drag(double alpha) {
        return nodes.cubic(Coefficient.DRAG, grid.place(alpha));
    }

    @Override
    public double moment(double alpha) {
        return nodes.straight(Coefficient.MOMENT, grid.place(alpha));
    }

    @Override
    public double hinge(double alpha) {
        return traits.hinge.at(alpha);
    }

    @Override
    public double risingLift(double alpha) {
        return rising.cubic(grid.place(alpha));
    }

    @Override
    public double risingLiftSlope(double alpha) {
        return rising.cubicSlope(grid.place(alpha));
    }

    @Override
    public void risingPiece(double alpha, HullPiece piece) {
        rising.piece(grid.place(alpha), piece);
    }

    @Override
    public double zeroLiftAngle() {
        return zeroLiftAngle;
    }

    @Override
    public double stallAngle() {
        return grid.stallAngle();
    }

    @Override
    public double negativeStallAngle() {
        return grid.lowerStallAngle();
    }

    @Override
    public double maxLift() {
        return rising.most();
    }

    @Override
    public double minLift() {
        return rising.least();
    }

    @Override
    public double attachedSlope() {
        return traits.attachedSlope;
    }

    @Override
    public OptionalDouble recoveryAngle() {
        OptionalDouble below = traits.recovery;
        return below.isPresent() ? OptionalDouble.of(stallAngle() - below.getAsDouble()) : below;
    }

    @Override
    public Basis basis(double alpha) {
        return traits.bases.at(alpha);
    }
}
