package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/** Curves against the measurements they stand on and against facts that hold for every section. */
class MeasuredSectionsTest {

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
}
