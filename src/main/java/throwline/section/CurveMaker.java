package throwline.section;

import java.util.OptionalDouble;
import throwline.numerics.Interpolation;

/**
 * Maker of a section curve from an airfoil's clean curve and the effect of a deflected surface: one translation of the clean
 * curve in angle and lift, drag read at shifted lift, the plate past the stalls.
 */
final class CurveMaker implements CurveNodes.Source {

    private static final double DEGREE = Math.toRadians(1);

    /** The measured curve goes over into the plate within this angle, rad (PRACTICE, methods manual 5.2). */
    private static final double TO_PLATE = 14 * DEGREE;

    /**
     * The centre of pressure goes over to the plate's within this angle past the stall, rad (PRACTICE, methods manual
     * 5.3).
     */
    private static final double CENTRE_MOVES = 3 * DEGREE;

    /**
     * The low-drag range moves by this share of the lift shift, at and below this lift: computed from the E214C polars alone,
     * so the band of drag by the method is 30 % where that airfoil itself lies within 26 (methods manual 4.6).
     */
    private static final double BUCKET_SHARE = 0.85;

    private static final double BUCKET_LIFT = 0.2;

    /** Friction of a plate along the flow, both sides, at a Reynolds number of 100 000 (MEMORY, methods manual 5.1). */
    private static final double PLATE_FRICTION = 0.02;

    /**
     * A measured drag is lowered for a narrower surface to no less than this share of it (PRACTICE, methods manual
     * 4.10).
     */
    private static final double LEAST_OF_MEASURED = 0.5;

    /** Steepest line from nose to trailing edge for which the inclined plate is meant (PRACTICE, methods manual 5.4). */
    private static final double STEEPEST_PLATE = 30 * DEGREE;

    private final CleanCurve clean;
    private final LiftStation lift;
    private final FlapEffect effect;
    private final double slant;
    private final double thickness;
    private final boolean byMethod;
    private final AngleGrid grid;

    /**
     * Sets up for one curve.
     *
     * @param clean the measured curve
     * @param effect what the surface adds
     * @param slant angle of the line from the nose to the deflected trailing edge, rad
     * @param thickness thickness over chord
     * @param byMethod true where the effect is not nothing
     */
    CurveMaker(CleanCurve clean, FlapEffect effect, double slant, double thickness, boolean byMethod) {
        this.clean = clean;
        this.lift = clean.lift();
        this.effect = effect;
        this.slant = Interpolation.clamp(slant, -STEEPEST_PLATE, STEEPEST_PLATE);
        this.thickness = thickness;
        this.byMethod = byMethod;
        grid = AngleGrid.around(lift.alpha(), effect.maxLift() / lift.slope() - effect.zeroLift());
    }

    /**
     * The curve.
     *
     * @param hinge its hinge moments
     * @param recovery how far below the stall lift comes back, rad
     */
    TabulatedCurve make(HingeMoment hinge, OptionalDouble recovery) {
        return new TabulatedCurve(grid, this, new TabulatedCurve.Traits(lift.slope(), recovery, hinge, bases()));
    }

    @Override
    public double at(CurveNodes.Coefficient coefficient, int i) {
        if (!isAttached(i)) {
            Past past = pastStall(i);
            return switch (coefficient) {
                case LIFT -> past.lift;
                case DRAG -> past.drag;
                case MOMENT -> past.moment;
            };
        }
        return switch (coefficient) {
            case LIFT -> attachedLift(i);
            case DRAG -> lowered(attachedDrag(i)) + added();
            case MOMENT -> attachedMoment(i);
        };
    }

    private static boolean isAttached(int i) {
        return i >= AngleGrid.LOWER_STALL && i <= AngleGrid.STALL;
    }

    /** The node of the clean curve: the same, or the last towards it. */
    private static int node(int i) {
        return Math.max(0, Math.min(NodeLayout.COUNT - 1, i - AngleGrid.OUTER));
    }

    private double attachedLift(int i) {
        return lift.lift()[node(i)] + effect.maxLift();
    }

    private double attachedMoment(int i) {
        return lift.moment()[node(i)] + effect.moment();
    }

    /** The coefficients at a node past a stall. */
    private record Past(double lift, double drag, double moment) {}

    /** Lets the measured curve go over into the plate. */
    private Past pastStall(int i) {
        double alpha = grid.angle(i);
        double past = Math.max(alpha - grid.stallAngle(), grid.lowerStallAngle() - alpha);
        double share = Ramp.smooth((past - lift.reach().past()) / TO_PLATE);
        double measuredDrag = share < 1 ? lowered(attachedDrag(i)) : 0;
        double inclined = alpha + slant;
        double sin = Math.sin(inclined);
        double cos = Math.cos(inclined);
        double normal = FlatPlate.normal(sin);
        double suction = FlatPlate.noseSuction(sin, thickness);
        double plateLift = normal * cos + suction * sin;
        double plateDrag = normal * sin + (PLATE_FRICTION - suction) * cos;
        double surfaceDrag = added() * (1 - share * Ramp.smooth(Math.abs(inclined) / STEEPEST_PLATE - 1));
        double cl = (1 - share) * attachedLift(i) + share * plateLift;
        double cd = (1 - share) * measuredDrag + share * plateDrag + surfaceDrag;
        double moved = Ramp.smooth((past - lift.reach().momentPast()) / CENTRE_MOVES);
        double moment = FlatPlate.moment(sin, cos, cl * cos + cd * sin);
        return new Past(cl, cd, (1 - moved) * attachedMoment(i) + moved * moment);
    }

    private double added() {
        return Math.max(0, effect.drag());
    }

    private double lowered(double measured) {
        return Math.max(LEAST_OF_MEASURED * measured, measured + Math.min(0, effect.drag()));
    }

    /** Clean drag at lift shifted with the low-drag range; near and past the stalls that of the same node. */
    private double attachedDrag(int i) {
        int node = node(i);
        double liftHere = attachedLift(i);
        double alpha = lift.alpha()[node];
        double top = lift.maxLift() + effect.maxLift();
        double fade = Interpolation.clamp((liftHere - BUCKET_LIFT) / Math.max(0.3, top - BUCKET_LIFT), 0, 1);
        double bucket = BUCKET_SHARE * effect.zeroLift() * lift.slope();
        double shift = bucket + fade * (effect.maxLift() - bucket);
        double readAt = Interpolation.clamp(liftHere - shift, lift.minLift(), lift.maxLift());
        double byLift = DragStation.logDrag(clean.drag().byLift(), readAt);
        double byNode = clean.drag().byNode()[node];
        double aboveLower = alpha - lift.lowerStallAngle();
        double lower = near(aboveLower) * Math.max(0, byNode - byLift);
        return Math.exp(byLift + near(lift.stallAngle() - alpha) * (byNode - byLift) + lower);
    }

    /**
     * 1 within one degree of a stall and past it, 0 beyond four: points of a run lie a degree apart (PRACTICE, methods
     * manual 3.4).
     */
    private static double near(double before) {
        return Ramp.smooth((4 * DEGREE - before) / (3 * DEGREE));
    }

    private BasisMap bases() {
        MeasuredReach reach = lift.reach();
        double half = reach.past() + TO_PLATE / 2;
        Basis attached = byMethod ? clean.basis().weaker(Basis.METHOD) : clean.basis();
        // Past the most lift the section method says nothing: what follows is another airfoil's.
        double past = attached == Basis.COMPUTED || reach.before() > 0 ? 0 : reach.past();
        return new BasisMap(
                attached,
                grid.lowerStallAngle() - half,
                grid.lowerStallAngle() + reach.low(),
                grid.stallAngle() - reach.before() + past,
                grid.stallAngle() + half);
    }
}
