package throwline.section.computed;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import throwline.numerics.Interpolation;
import throwline.section.Airfoil;
import throwline.section.AirfoilShape;
import throwline.section.Likeness;
import throwline.section.MeasuredSections;
import throwline.section.NotComputed;
import throwline.section.PolarRun;
import throwline.section.PolarRun.Point;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.SurrogateAirfoil;

/**
 * Maker of airfoils that nobody measured: the runs of the measured airfoil most alike, each moved to the zero-lift angle,
 * the most lift and the stall angle that the rules expect of the wanted outline at that Reynolds number.
 */
public final class ComputedAirfoil {

    /** Measured moments over those without friction: nine of ten of 33 airfoils lie within 0.02 (COMPUTED). */
    private static final double MOMENT_SHARE = 0.95;

    /** Below this share of the way from zero lift to the stall, curves are moved along only. */
    private static final double STRAIGHT = 0.3;

    private static final List<SectionFigure> DRAGS =
            List.of(SectionFigure.DRAG_LOW, SectionFigure.DRAG_MIDDLE, SectionFigure.DRAG_HIGH);

    /** Drag is raised or lowered to at most twice the donor's or half of it, in logarithms (PRACTICE). */
    private static final double MOST_RISE = 0.7;

    /** Angles are squeezed to no less than this share (PRACTICE). */
    private static final double SQUEEZED = 0.25;

    private final LearnedAirfoils learned;
    private final SectionAerodynamics sections;

    /**
     * @param learned what the measured airfoils teach
     */
    public ComputedAirfoil(LearnedAirfoils learned) {
        this.learned = learned;
        this.sections = new MeasuredSections();
    }

    /**
     * The airfoil.
     *
     * @param shape its outline
     * @param candidates measured airfoils by the names that were learned from
     * @param name what the user called it
     * @return empty where the outline is outside what the method is meant for
     */
    public Optional<Airfoil> of(AirfoilShape shape, List<Airfoil> candidates, String name) {
        return traits(shape)
                .flatMap(traits -> learned.nearest(traits).stream()
                        .flatMap(
                                near -> candidates.stream().filter(c -> c.name().equals(near.name())))
                        .findFirst()
                        .map(donor -> of(traits, donor, name)))
                .map(airfoil -> airfoil.with(shape));
    }

    /**
     * The airfoil that stands in for one of which only thickness, camber and perhaps moment are known: by way of a usual
     * outline, the nearest itself where the method is not meant for that.
     *
     * @param said what is known
     * @param candidates as above
     * @param name what the user called it
     */
    public Optional<Airfoil> standIn(SurrogateAirfoil said, List<Airfoil> candidates, String name) {
        Optional<SectionTraits> traits = traits(said.outline());
        return traits.isEmpty()
                ? said.among(candidates, name, name)
                : said.nearest(candidates)
                        .map(donor -> of(traits.get(), donor, name).asStandInFor(said));
    }

    /** Why an outline is outside what the method is meant for; empty where it is not. */
    public Optional<NotComputed> whyNot(AirfoilShape shape) {
        return SectionRange.outside(shape.thickness(), shape.camber())
                .or(() -> SectionTraits.of(shape).map(this::outside).orElse(Optional.of(NotComputed.UNEVEN)));
    }

    private Optional<NotComputed> outside(SectionTraits traits) {
        return SectionRange.outside(traits, learned.nearest(traits).get(0));
    }

    private Optional<SectionTraits> traits(AirfoilShape shape) {
        return SectionTraits.of(shape).filter(traits -> outside(traits).isEmpty());
    }

    private Airfoil of(SectionTraits traits, Airfoil donor, String name) {
        List<PolarRun> runs = donor.runs().stream()
                .filter(run -> run.deflection() == 0)
                .map(run -> moved(run, traits, donor))
                .toList();
        return new Airfoil(
                name,
                name,
                traits.thickness(),
                traits.camber(),
                MOMENT_SHARE * traits.moment(),
                runs,
                Optional.of(Likeness.computed(donor.name(), SectionRange.SLOWEST)),
                Optional.empty());
    }

    private PolarRun moved(PolarRun run, SectionTraits traits, Airfoil donor) {
        SectionCurve curve = sections.curve(SectionPlace.of(donor), SurfaceState.none(), run.reynolds());
        Move move = new Move(
                curve.zeroLiftAngle(),
                curve.stallAngle(),
                learned.predicted(SectionFigure.ZERO_LIFT, traits, run.reynolds()) - curve.zeroLiftAngle(),
                learned.predicted(SectionFigure.STALL_ANGLE, traits, run.reynolds()) - curve.stallAngle(),
                learned.predicted(SectionFigure.MAX_LIFT, traits, run.reynolds()) - curve.maxLift(),
                rise(curve, traits, run.reynolds()));
        List<Point> points = run.points().stream()
                .map(move::of)
                .sorted(Comparator.comparingDouble(Point::alpha))
                .toList();
        return new PolarRun(
                run.kind(), run.reynolds(), run.deflection(), run.surfaceChord(), run.source(), run.mark(), points);
    }

    /** Logarithms of expected drag over the donor's, by lift; those of the lift below where the donor's is none. */
    private DoubleUnaryOperator rise(SectionCurve curve, SectionTraits traits, double reynolds) {
        double[] rises = new double[DRAGS.size()];
        for (int i = 0; i < rises.length; i++) {
            double measured = LearnedAirfoil.read(DRAGS.get(i), curve);
            double rise = Math.log(learned.predicted(DRAGS.get(i), traits, reynolds) / measured);
            rises[i] =
                    Double.isFinite(rise) ? Interpolation.clamp(rise, -MOST_RISE, MOST_RISE) : i > 0 ? rises[i - 1] : 0;
        }
        return lift -> Interpolation.at(ComputedDrag.LIFTS, rises, lift);
    }

    /** The way of each point of a run. */
    private record Move(
            double zeroLift,
            double stall,
            double zeroLiftShift,
            double stallShift,
            double liftRise,
            DoubleUnaryOperator dragRise) {

        /** Moments are dropped: they belong to the donor's camber line. */
        Point of(Point point) {
            double share = share(point.alpha());
            double stretch =
                    Math.max(stallShift - zeroLiftShift, -(1 - SQUEEZED) / 1.5 * (1 - STRAIGHT) * (stall - zeroLift));
            return new Point(
                    point.alpha() + zeroLiftShift + share * stretch,
                    point.lift() + share * liftRise,
                    point.drag() * Math.exp(dragRise.applyAsDouble(point.lift())),
                    Double.NaN);
        }

        private double share(double alpha) {
            double way = (alpha - zeroLift) / (stall - zeroLift);
            double x = Interpolation.clamp((way - STRAIGHT) / (1 - STRAIGHT), 0, 1);
            return x * x * (3 - 2 * x);
        }
    }
}
