package throwline.section;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;

/**
 * Stand-in for an airfoil that was never measured: the measured one nearest in thickness, camber and moment, turned by the
 * difference of their zero-lift angles.
 *
 * @param thickness thickness over chord
 * @param camber camber over chord
 * @param zeroLiftAngle of the camber line by thin-airfoil theory, rad
 * @param moment quarter-chord moment of the camber line by thin-airfoil theory
 */
public record SurrogateAirfoil(double thickness, double camber, double zeroLiftAngle, double moment) {

    /** Differences that count alike in the choice of the nearest (practice). */
    private static final double THICKNESS_STEP = 0.03;

    private static final double CAMBER_STEP = 0.01;
    private static final double MOMENT_STEP = 0.03;

    /**
     * Measured zero-lift angles and moments over those of theory at 200 000 to 300 000: 0.80 to 0.99 for NACA 2414, 2415,
     * 2.5411 and 6409 (computed); 0.85 for moments (practice).
     */
    private static final double ZERO_LIFT_SHARE = 0.87;

    private static final double MOMENT_SHARE = 0.85;

    /**
     * The donor's zero-lift angle is taken at its highest Reynolds number up to this: theory is nearest there
     * (PRACTICE).
     */
    private static final double REYNOLDS = 300_000;

    /** A donor must have been measured below this Reynolds number, as models fly (PRACTICE). */
    private static final double MODEL_SIZE = 150_000;

    /** Below this thickness only plates are alike, above it none is (PRACTICE, methods manual 3.7). */
    private static final double PLATE = 0.05;

    /** Thickness and camber of an ordinary airfoil, as words give them. */
    public static SurrogateAirfoil ordinary(double thickness, double camber) {
        AirfoilShape line = AirfoilShape.ordinary(camber);
        return new SurrogateAirfoil(thickness, camber, line.zeroLiftAngle(), line.moment());
    }

    /** This one with another moment of its camber line, measured size. */
    public SurrogateAirfoil withMoment(double measured) {
        return new SurrogateAirfoil(thickness, camber, zeroLiftAngle, measured / MOMENT_SHARE);
    }

    /** Quarter-chord moment to expect of it. */
    double measuredMoment() {
        return MOMENT_SHARE * moment;
    }

    /** A usual outline of this thickness, camber and moment. */
    public AirfoilShape outline() {
        return moment == AirfoilShape.ordinary(camber).moment()
                ? UsualOutline.of(thickness, camber)
                : UsualOutline.of(thickness, camber, moment);
    }

    /** Shape from coordinates. */
    public static SurrogateAirfoil of(AirfoilShape shape) {
        return new SurrogateAirfoil(shape.thickness(), shape.camber(), shape.zeroLiftAngle(), shape.moment());
    }

    /**
     * The stand-in.
     *
     * @param candidates measured airfoils, not empty
     * @param name what the user called it
     * @param description one line in words
     * @return empty where no candidate was measured at model size
     */
    public Optional<Airfoil> among(List<Airfoil> candidates, String name, String description) {
        return nearest(candidates).map(donor -> standIn(donor, name, description));
    }

    /** The measured airfoil most alike; empty where no candidate was measured at model size. */
    public Optional<Airfoil> nearest(List<Airfoil> candidates) {
        return candidates.stream()
                .filter(SurrogateAirfoil::fitForModels)
                .filter(donor -> (donor.thickness() < PLATE) == (thickness < PLATE))
                .min(Comparator.comparingDouble(this::distance));
    }

    private static boolean fitForModels(Airfoil airfoil) {
        return airfoil.likeness().isEmpty()
                && airfoil.runs().stream()
                        .anyMatch(
                                run -> run.kind() == Kind.DRAG && run.deflection() == 0 && run.reynolds() < MODEL_SIZE);
    }

    private double distance(Airfoil donor) {
        return Math.hypot(
                Math.hypot((donor.thickness() - thickness) / THICKNESS_STEP, (donor.camber() - camber) / CAMBER_STEP),
                (donor.nominalMoment() - measuredMoment()) / MOMENT_STEP);
    }

    private Airfoil standIn(Airfoil donor, String name, String description) {
        double highest = donor.runs().stream()
                .filter(run -> run.deflection() == 0)
                .mapToDouble(PolarRun::reynolds)
                .max()
                .orElse(REYNOLDS);
        SectionCurve measured =
                new MeasuredSections().curve(SectionPlace.of(donor), SurfaceState.none(), Math.min(highest, REYNOLDS));
        double turn = ZERO_LIFT_SHARE * zeroLiftAngle - measured.zeroLiftAngle();
        List<PolarRun> turned = donor.runs().stream()
                .filter(run -> run.deflection() == 0)
                .map(run -> turned(run, turn))
                .toList();
        return new Airfoil(
                name,
                description,
                thickness,
                camber,
                measuredMoment(),
                turned,
                Optional.of(Likeness.standIn(donor.name())),
                Optional.empty());
    }

    /** The run at other angles, its moments dropped: they belong to the donor's camber line. */
    private static PolarRun turned(PolarRun run, double turn) {
        List<Point> points = run.points().stream()
                .map(point -> new Point(point.alpha() + turn, point.lift(), point.drag(), Double.NaN))
                .toList();
        return new PolarRun(
                run.kind(), run.reynolds(), run.deflection(), run.surfaceChord(), run.source(), run.mark(), points);
    }
}
