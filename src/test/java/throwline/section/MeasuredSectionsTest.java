package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/** Curves against the measurements they stand on and against facts that hold for every section. */
class MeasuredSectionsTest {

    /** Of the invented section at 4 degrees, and with its surface down. */
    private static final double LIFT = 0.4;

    private static final double DRAG = 0.08;

    private final PackedAirfoils library = new PackedAirfoils();
    private final MeasuredSections sections = new MeasuredSections();

    private SectionCurve curve(String airfoil, double deflection, double reynolds) {
        SectionPlace place =
                SectionPlace.of(library.find(new AirfoilName(airfoil)).orElseThrow());
        return sections.curve(place, new SurfaceState(Math.toRadians(deflection), 0.21, Hinge.TAPED), reynolds);
    }

    /** Summary of Low-Speed Airfoil Data vol. 2 (READ): 101 100, rising; stalls between 13.7 and 14.5 degrees. */
    @Test
    void stallOfAThickSportSection() {
        SectionCurve curve = curve("naca2415", 0, 101_100);
        assertThat(curve.maxLift()).isCloseTo(1.19, within(0.02));
        assertThat(Math.toDegrees(curve.stallAngle())).isBetween(13.2, 14.5);
        assertThat(curve.lift(Math.toRadians(15.5))).isCloseTo(0.74, within(0.05));
        assertThat(curve.risingLift(Math.toRadians(15.5))).isEqualTo(curve.maxLift());
    }

    /** SoarTech 8 (READ): E214C with its flap 6 degrees up at 196 500 and 3.71 degrees. */
    @Test
    void measuredFlapIsUsed() {
        SectionCurve curve = curve("e214c", -6, 196_500);
        assertThat(curve.lift(Math.toRadians(3.71))).isCloseTo(0.576, within(0.03));
        assertThat(curve.drag(Math.toRadians(3.71))).isCloseTo(0.0115, Percentage.withPercentage(10));
        assertThat(curve.basis(0)).isEqualTo(Basis.MEASURED);
        assertThat(curve("e214c", -3, 196_500).basis(0)).isEqualTo(Basis.BETWEEN);
        assertThat(curve("e214c", -12, 196_500).basis(0)).isEqualTo(Basis.METHOD);
    }

    /** Upside down, a symmetric section with its surface up is the same section with it down. */
    @Test
    void symmetricSectionMirrors() {
        SectionCurve down = curve("naca0009", 10, 150_000);
        SectionCurve up = curve("naca0009", -10, 150_000);
        for (double degrees = -20; degrees <= 20; degrees += 0.5) {
            double alpha = Math.toRadians(degrees);
            assertThat(up.lift(alpha)).isCloseTo(-down.lift(-alpha), within(0.12));
        }
    }

    /** An airfoil measured with a surface of its owner's own chord: what was measured comes back, and only there. */
    @Test
    void aMeasuredSurfaceKeepsItsOwnChord() {
        Airfoil own = measured(0.30);
        double alpha = Math.toRadians(4);
        SectionCurve there = curve(own, 0.30);
        assertThat(there.basis(alpha)).isEqualTo(Basis.MEASURED);
        assertThat(there.lift(alpha)).isCloseTo(LIFT + 0.9, within(0.03));
        assertThat(there.drag(alpha)).isCloseTo(DRAG, Percentage.withPercentage(10));
        SectionCurve narrower = curve(own, 0.20);
        assertThat(narrower.basis(alpha)).isEqualTo(Basis.METHOD);
        assertThat(narrower.lift(alpha)).isLessThan(there.lift(alpha) - 0.05);
        assertThat(narrower.drag(alpha)).isLessThan(there.drag(alpha)).isGreaterThan(DRAG / 2);
        assertThat(curve(own, 0.31).basis(alpha)).isEqualTo(Basis.MEASURED);
    }

    /** Between two measured chords the curve lies between theirs, and meets them. */
    @Test
    void betweenTwoMeasuredChords() {
        Airfoil own = measured(0.20, 0.30);
        double alpha = Math.toRadians(4);
        double least = Double.NEGATIVE_INFINITY;
        for (double chord = 0.20; chord < 0.305; chord += 0.02) {
            double lift = curve(own, chord).lift(alpha);
            assertThat(lift).isGreaterThan(least);
            least = lift;
        }
        assertThat(curve(own, 0.20).lift(alpha)).isCloseTo(LIFT + 0.6, within(0.03));
        assertThat(curve(own, 0.30).lift(alpha)).isCloseTo(LIFT + 0.9, within(0.03));
    }

    private SectionCurve curve(Airfoil airfoil, double chord) {
        return sections.curve(
                SectionPlace.of(airfoil), new SurfaceState(Math.toRadians(25), chord, Hinge.TAPED), 200_000);
    }

    /** Invented: lift 0.1 a degree to 12 degrees; a surface 25 degrees down adds 3 of lift for each of its chord. */
    private static Airfoil measured(double... chords) {
        List<PolarRun> runs = new ArrayList<>();
        runs.add(run(0, 0, 0.01));
        for (double chord : chords) {
            runs.add(run(chord, 3 * chord, DRAG));
        }
        return new Airfoil("invented", "invented", 0.12, 0, 0, runs);
    }

    private static PolarRun run(double chord, double added, double drag) {
        List<PolarRun.Point> points = new ArrayList<>();
        for (int degree = -12; degree <= 15; degree++) {
            double lift = LIFT / 4 * Math.min(degree, 12) - 0.05 * Math.max(0, degree - 12);
            points.add(new PolarRun.Point(Math.toRadians(degree), lift + added, drag, Double.NaN));
        }
        double deflection = chord == 0 ? 0 : Math.toRadians(25);
        return new PolarRun(PolarRun.Kind.DRAG, 200_000, deflection, chord, "invented", "PRACTICE", points);
    }
}
