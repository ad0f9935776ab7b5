package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;

/** Airfoils that stand in for others; how far off they are is a case under {@code validation/sections}. */
class SurrogateAirfoilTest {

    private final PackedAirfoils library = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();

    private List<Airfoil> measured() {
        return library.names().stream()
                // The second Clark Y is part of the first.
                .filter(name -> !name.equals("clark-y-b"))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .toList();
    }

    /** A plate stands in for a plate only, and a symmetric airfoil for a symmetric one. */
    @Test
    void likeForLike() {
        assertThat(SurrogateAirfoil.ordinary(0.025, 0)
                        .among(measured(), "slab", "")
                        .orElseThrow()
                        .likeness())
                .contains(Likeness.standIn("flat-plate"));
        Airfoil tail =
                SurrogateAirfoil.ordinary(0.08, 0).among(measured(), "tail", "").orElseThrow();
        assertThat(tail.likeness()).contains(Likeness.standIn("naca0009"));
        SectionCurve curve = sections.curve(SectionPlace.of(tail), SurfaceState.none(), 100_000);
        assertThat(Math.toDegrees(curve.zeroLiftAngle())).isCloseTo(0, within(0.05));
    }

    private static Airfoil invented(String name, double thickness, double camber, double moment, double reynolds) {
        List<PolarRun.Point> points = DoubleStream.iterate(-10, a -> a <= 14, a -> a + 1)
                .mapToObj(a -> new PolarRun.Point(
                        Math.toRadians(a), 0.1 * (a + 2) - (a > 10 ? 0.2 * (a - 10) : 0), 0.01 + 1e-4 * a * a, moment))
                .toList();
        return new Airfoil(
                name,
                name,
                thickness,
                camber,
                moment,
                List.of(new PolarRun(PolarRun.Kind.DRAG, reynolds, 0, 0.2, "invented", "PRACTICE", points)));
    }

    private static String nearest(SurrogateAirfoil wanted, Airfoil... candidates) {
        return wanted.nearest(List.of(candidates)).map(Airfoil::name).orElse("none");
    }

    /** A step of 3 per cent thickness, 1 of camber and 0.03 of moment count alike (PRACTICE); so do their squares' sum. */
    @Test
    void nearestInThicknessCamberAndMoment() {
        SurrogateAirfoil wanted = new SurrogateAirfoil(0.12, 0.03, -0.06, -0.08 / 0.85);
        Airfoil thicker = invented("thicker", 0.12 + 0.9 * 0.03, 0.03, -0.08, 1e5);
        Airfoil curved = invented("curved", 0.12, 0.03 + 0.8 * 0.01, -0.08, 1e5);
        Airfoil nose = invented("nose", 0.12, 0.03, -0.08 + 0.7 * 0.03, 1e5);
        Airfoil all = invented("all", 0.12 - 0.5 * 0.03, 0.03 - 0.5 * 0.01, -0.08 - 0.5 * 0.03, 1e5);
        assertThat(nearest(wanted, thicker, curved, nose, all)).isEqualTo("nose");
        assertThat(nearest(wanted, thicker, curved, all)).isEqualTo("curved");
        assertThat(nearest(wanted, thicker, all)).isEqualTo("all");
        assertThat(nearest(wanted, thicker)).isEqualTo("thicker");
    }

    /** Measured at model size, with measurements of its own, and a plate only for a plate. */
    @Test
    void whoMayStandIn() {
        SurrogateAirfoil wanted = new SurrogateAirfoil(0.12, 0.03, -0.06, -0.08);
        assertThat(nearest(wanted, invented("fast", 0.12, 0.03, -0.068, 150_000)))
                .isEqualTo("none");
        assertThat(nearest(wanted, invented("slow", 0.12, 0.03, -0.068, 149_000)))
                .isEqualTo("slow");
        assertThat(nearest(wanted, invented("plate", 0.04, 0.03, -0.068, 1e5))).isEqualTo("none");
        assertThat(nearest(new SurrogateAirfoil(0.045, 0.03, -0.06, -0.08), invented("plate", 0.04, 0.03, -0.068, 1e5)))
                .isEqualTo("plate");
        Airfoil second = wanted.among(List.of(invented("slow", 0.12, 0.03, -0.068, 1e5)), "wanted", "")
                .orElseThrow();
        assertThat(nearest(wanted, second)).isEqualTo("none");
    }

    /**
     * The donor's curve at the wanted zero-lift angle, 0.87 of theory (computed from four measured NACA sections), lift and drag
     * as measured; its moments are those of the wanted camber line, 0.85 of theory (PRACTICE).
     */
    @Test
    void turnedToItsZeroLiftAngle() {
        double theory = Math.toRadians(-4);
        Airfoil donor = invented("donor", 0.12, 0.03, -0.068, 1e5);
        Airfoil found = new SurrogateAirfoil(0.12, 0.04, theory, -0.1)
                .among(List.of(donor), "wanted", "in words")
                .orElseThrow();
        assertThat(found.nominalMoment()).isCloseTo(-0.085, within(1e-12));
        assertThat(found.thickness()).isEqualTo(0.12);
        assertThat(found.camber()).isEqualTo(0.04);
        // The invented curve is straight and lifts nothing at -2 degrees.
        double turn = 0.87 * theory - Math.toRadians(-2);
        List<PolarRun.Point> before = donor.runs().get(0).points();
        List<PolarRun.Point> after = found.runs().get(0).points();
        for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).alpha()).isCloseTo(before.get(i).alpha() + turn, within(Math.toRadians(0.02)));
            assertThat(after.get(i).lift()).isEqualTo(before.get(i).lift());
            assertThat(after.get(i).drag()).isEqualTo(before.get(i).drag());
            assertThat(after.get(i).moment()).isNaN();
        }
        assertThat(new SurrogateAirfoil(0.12, 0.04, theory, -0.1)
                        .withMoment(-0.05)
                        .measuredMoment())
                .isCloseTo(-0.05, within(1e-12));
    }

    /** A usual outline has the thickness and the camber that words give, and the moment where one is told. */
    @Test
    void usualOutline() {
        SurrogateAirfoil plain = SurrogateAirfoil.ordinary(0.12, 0.03);
        assertThat(plain.outline().thickness()).isCloseTo(0.12, within(1e-3));
        assertThat(plain.outline().camber()).isCloseTo(0.03, within(1e-3));
        assertThat(plain.outline().moment()).isCloseTo(plain.moment(), within(2e-3));
        SurrogateAirfoil reflexed = plain.withMoment(-0.02);
        assertThat(reflexed.outline().moment()).isCloseTo(-0.02 / 0.85, within(4e-3));
        SurrogateAirfoil again = SurrogateAirfoil.of(plain.outline());
        assertThat(again.zeroLiftAngle()).isCloseTo(plain.zeroLiftAngle(), within(Math.toRadians(0.1)));
    }

    @Test
    void likeness() {
        Likeness computed = Likeness.computed("donor", 60_000);
        assertThat(computed.basis(59_000)).isEqualTo(Basis.LIKENESS);
        assertThat(computed.basis(60_000)).isEqualTo(Basis.COMPUTED);
        assertThat(computed.basis(500_000)).isEqualTo(Basis.COMPUTED);
        assertThat(computed.basis(501_000)).isEqualTo(Basis.LIKENESS);
        assertThat(computed.note()).isEqualTo("note.airfoil.computed");
        assertThat(Likeness.standIn("donor").basis(1e5)).isEqualTo(Basis.LIKENESS);
        assertThat(Likeness.standIn("donor").because(NotComputed.THIN).note()).isEqualTo("note.airfoil.likeness.thin");
    }
}
