package throwline.section.computed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilShape;
import throwline.section.AirfoilShape.Corner;
import throwline.section.Basis;
import throwline.section.MeasuredSections;
import throwline.section.NotComputed;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.SurrogateAirfoil;

/** Airfoils made from outlines; how far off they are is the case {@code validation/sections/computed.csv}. */
class ComputedAirfoilTest {

    private static final LearnedAirfoils LEARNED = LearnedAirfoils.load();
    private static final List<Airfoil> ALL = all();
    private final MeasuredSections sections = new MeasuredSections();

    private static List<Airfoil> all() {
        PackedAirfoils library = new PackedAirfoils();
        return library.names().stream()
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .toList();
    }

    private SectionCurve curve(Airfoil airfoil, double reynolds) {
        return sections.curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
    }

    /** No measurement of an airfoil may shape its own prediction: without it, whatever it measured is without effect. */
    @Test
    void nothingFitsItsOwnPrediction() {
        Airfoil clarkY =
                ALL.stream().filter(a -> a.name().equals("clark-y")).findFirst().orElseThrow();
        List<Airfoil> others =
                ALL.stream().filter(a -> !a.name().startsWith("clark-y")).toList();
        LearnedAirfoil own = LearnedAirfoil.of(clarkY, sections).orElseThrow();
        List<LearnedAirfoil> rest = LEARNED.without("clark-y").nearest(own.traits());
        double[] wrong = {9, 9, 9, 9, 9};
        LearnedAirfoil spoiled = new LearnedAirfoil(
                "clark-y",
                own.traits(),
                Arrays.stream(SectionFigure.values()).collect(Collectors.toMap(f -> f, f -> wrong)));
        List<LearnedAirfoil> more = new java.util.ArrayList<>(rest);
        more.add(spoiled);
        AirfoilShape shape = clarkY.shape().orElseThrow();
        Airfoil a = new ComputedAirfoil(new LearnedAirfoils(rest))
                .of(shape, others, "x")
                .orElseThrow();
        Airfoil b = new ComputedAirfoil(new LearnedAirfoils(more).without("clark-y"))
                .of(shape, others, "x")
                .orElseThrow();
        assertThat(a.likeness()).isEqualTo(b.likeness());
        assertThat(a.likeness().orElseThrow().donor()).doesNotStartWith("clark-y");
        assertThat(curve(a, 2e5).maxLift()).isEqualTo(curve(b, 2e5).maxLift());
        assertThat(curve(a, 2e5).zeroLiftAngle()).isEqualTo(curve(b, 2e5).zeroLiftAngle());
        assertThat(curve(a, 2e5).stallAngle()).isEqualTo(curve(b, 2e5).stallAngle());
        assertThat(curve(a, 2e5).drag(0.05)).isEqualTo(curve(b, 2e5).drag(0.05));
    }

    /** The curve made of the moved runs has the figures that the rules expect. */
    @Test
    void theCurveKeepsWhatIsExpected() {
        AirfoilShape shape = SurrogateAirfoil.ordinary(0.12, 0.03).outline();
        SectionTraits traits = SectionTraits.of(shape).orElseThrow();
        Airfoil airfoil = new ComputedAirfoil(LEARNED).of(shape, ALL, "x").orElseThrow();
        for (double reynolds : new double[] {100_000, 200_000, 300_000}) {
            SectionCurve curve = curve(airfoil, reynolds);
            assertThat(curve.basis(0.05)).isEqualTo(Basis.COMPUTED);
            assertThat(curve.maxLift())
                    .isCloseTo(LEARNED.predicted(SectionFigure.MAX_LIFT, traits, reynolds), within(0.03));
            assertThat(Math.toDegrees(
                            curve.zeroLiftAngle() - LEARNED.predicted(SectionFigure.ZERO_LIFT, traits, reynolds)))
                    .isCloseTo(0, within(0.3));
        }
        assertThat(curve(airfoil, 40_000).basis(0.05)).isEqualTo(Basis.LIKENESS);
        assertThat(curve(airfoil, 600_000).basis(0.05)).isEqualTo(Basis.LIKENESS);
    }

    /** Past the most lift either way nothing is computed: what follows belongs to another airfoil. */
    @Test
    void nothingPastTheMostLift() {
        for (double camber : new double[] {0, 0.02, 0.04}) {
            Airfoil airfoil = new ComputedAirfoil(LEARNED)
                    .of(SurrogateAirfoil.ordinary(0.12, camber).outline(), ALL, "x")
                    .orElseThrow();
            for (double reynolds : new double[] {60_000, 100_000, 200_000, 400_000}) {
                SectionCurve curve = curve(airfoil, reynolds);
                for (int half = -40; half <= 60; half++) {
                    double alpha = Math.toRadians(0.5 * half);
                    if (alpha > curve.stallAngle() || alpha < curve.negativeStallAngle()) {
                        assertThat(curve.basis(alpha))
                                .as("%f at %f", alpha, reynolds)
                                .isEqualTo(Basis.LIKENESS);
                    }
                }
            }
        }
    }

    /** More camber lifts more and earlier, at equal thickness (textbooks). */
    @Test
    void camberLifts() {
        double lift = 0;
        double zero = 1;
        for (double camber = 0; camber < 0.05; camber += 0.01) {
            Airfoil airfoil = new ComputedAirfoil(LEARNED)
                    .of(SurrogateAirfoil.ordinary(0.12, camber).outline(), ALL, "x")
                    .orElseThrow();
            SectionCurve curve = curve(airfoil, 250_000);
            assertThat(curve.maxLift()).isGreaterThan(lift);
            assertThat(curve.zeroLiftAngle()).isLessThan(zero);
            lift = curve.maxLift();
            zero = curve.zeroLiftAngle();
        }
    }

    /** Neither a heavily cambered section, which may collapse, nor a plate is computed. */
    @Test
    void limits() {
        ComputedAirfoil method = new ComputedAirfoil(LEARNED);
        AirfoilShape curved = SurrogateAirfoil.ordinary(0.12, 0.08).outline();
        assertThat(method.of(curved, ALL, "x")).isEmpty();
        assertThat(method.whyNot(curved)).contains(NotComputed.CAMBERED);
        AirfoilShape plate = SurrogateAirfoil.ordinary(0.03, 0.02).outline();
        assertThat(method.of(plate, ALL, "x")).isEmpty();
        assertThat(method.whyNot(plate)).contains(NotComputed.THIN);
        assertThat(method.whyNot(SurrogateAirfoil.ordinary(0.12, 0.03).outline()))
                .isEmpty();
    }

    /** Whatever the outline, there are finite numbers or none. */
    @Test
    void finiteOrNone() {
        Random random = new Random(20);
        int made = 0;
        for (int i = 0; i < 60; i++) {
            AirfoilShape shape = waved(random, 0.04 * random.nextDouble());
            for (Airfoil airfoil :
                    new ComputedAirfoil(LEARNED).of(shape, ALL, "x").stream().toList()) {
                made++;
                for (double reynolds = 40_000; reynolds < 1_500_000; reynolds *= 1.7) {
                    SectionCurve curve = curve(airfoil, reynolds);
                    for (int degrees = -6; degrees <= 18; degrees++) {
                        double alpha = Math.toRadians(degrees);
                        assertThat(curve.lift(alpha)).isFinite().isBetween(-3.0, 3.5);
                        assertThat(curve.drag(alpha)).isFinite().isPositive();
                    }
                }
            }
        }
        assertThat(made).isBetween(10, 60);
    }

    private static AirfoilShape waved(Random random, double height) {
        AirfoilShape clean = SurrogateAirfoil.ordinary(0.04 + 0.2 * random.nextDouble(), 0.08 * random.nextDouble())
                .outline();
        double waves = 1 + random.nextInt(6);
        return new AirfoilShape(
                clean.upper().stream().map(c -> wave(c, height, waves)).toList(),
                clean.lower().stream().map(c -> wave(c, height, waves)).toList());
    }

    private static Corner wave(Corner c, double height, double waves) {
        return new Corner(c.x(), c.y() + height * c.x() * Math.sin(waves * Math.PI * c.x()));
    }
}
