package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.model.Hinge;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;

/** Laws for what was not measured: over Reynolds number, at hinges, and far past the stall. */
class SectionLawsTest {

    private static final double DEGREE = Math.PI / 180;

    private static Airfoil airfoil(double thickness, double camber) {
        PolarRun run = new PolarRun(
                Kind.DRAG, 1e5, 0, 0.2, "invented", "PRACTICE", List.of(new Point(0, 0, 0.01, Double.NaN)));
        return new Airfoil("invented", "", thickness, camber, 0, List.of(run));
    }

    /** Powers and logarithms: two steps are one, the way back takes it off again, and drag follows the power it is told. */
    @Test
    void overReynoldsNumber() {
        ReynoldsLaw law = new ReynoldsLaw(0.09, 0.5, -0.01);
        for (double[] way : new double[][] {{6e4, 1.2e5, 3e5}, {1e5, 4e5, 2e6}, {3e6, 6e5, 8e4}}) {
            assertThat(law.maxLiftRise(way[0], way[1]) + law.maxLiftRise(way[1], way[2]))
                    .isCloseTo(law.maxLiftRise(way[0], way[2]), within(1e-12));
            assertThat(law.logDragRise(way[0], way[1]) + law.logDragRise(way[1], way[2]))
                    .isCloseTo(law.logDragRise(way[0], way[2]), within(1e-12));
            assertThat(law.zeroLiftShift(way[0], way[1]) + law.zeroLiftShift(way[1], way[2]))
                    .isCloseTo(law.zeroLiftShift(way[0], way[2]), within(1e-12));
        }
        assertThat(Math.exp(law.logDragRise(1e5, 4e5))).isCloseTo(0.5, within(1e-12));
        assertThat(Math.exp(law.logDragRise(1e6, 16e6))).isCloseTo(0.5, within(1e-12));
        assertThat(law.maxLiftRise(1e5, 1e5 * Math.E)).isCloseTo(0.09, within(1e-12));
        assertThat(law.zeroLiftShift(1e5, 2e5)).isCloseTo(-0.01 * Math.log(2), within(1e-12));
        assertThat(law.zeroLiftShift(2e5, 4e5)).isZero();
    }

    /** The figures of methods manual 3.6: thick sections gain 0.09 a natural logarithm, thin ones 0.04; exponents 0.33 to 0.65. */
    @ParameterizedTest
    @CsvSource({
        "0.09, 0, 0.04, 0.335, 0",
        "0.10, 0.02, 0.04, 0.465, -0.72",
        "0.12, 0.03, 0.065, 0.575, -1.08",
        "0.15, 0.04, 0.09, 0.65, -1.44",
        "0.06, 0, 0.04, 0.33, 0"
    })
    void ofAnAirfoil(double thickness, double camber, double lift, double exponent, double zeroLift) {
        ReynoldsLaw law = ReynoldsLaw.of(airfoil(thickness, camber));
        assertThat(law.maxLiftPerLog()).isCloseTo(lift, within(1e-9));
        assertThat(law.dragExponent()).isCloseTo(exponent, within(1e-9));
        assertThat(law.zeroLiftPerLog() / DEGREE).isCloseTo(zeroLift, within(1e-9));
    }

    private static HingeMoment hinge(double deflection, double chord, Hinge hinge, double thickness) {
        return HingeMoment.of(new SurfaceState(deflection, chord, hinge), thickness, 0);
    }

    /**
     * NACA 0009 (P. Soderman, READ): -0.0045 and -0.012 a degree at a fifth of the chord, -0.010 and -0.015 at two fifths; an open
     * gap takes 21 per cent off the part by deflection (Hoerner, READ).
     */
    @ParameterizedTest
    @CsvSource({"0.2, -0.0045, -0.012", "0.4, -0.010, -0.015", "0.3, -0.00725, -0.0135"})
    void thinSection(double chord, double byAngle, double byDeflection) {
        assertThat(hinge(0, chord, Hinge.TAPED, 0.09).at(5 * DEGREE)).isCloseTo(5 * byAngle, within(1e-9));
        assertThat(hinge(10 * DEGREE, chord, Hinge.TAPED, 0.09).at(0)).isCloseTo(10 * byDeflection, within(1e-9));
        assertThat(hinge(10 * DEGREE, chord, Hinge.OPEN, 0.09).at(0)).isCloseTo(7.9 * byDeflection, within(1e-9));
        assertThat(hinge(10 * DEGREE, chord, Hinge.TAPED, 0.06).at(0)).isCloseTo(10 * byDeflection, within(1e-9));
    }

    /** Thin-airfoil theory times 0.20 and 0.47 on a section 15 per cent thick (Hoerner's NACA 0015, READ), the mean at 12. */
    @Test
    void thickSection() {
        double byAngle = 0.20 * ThinAirfoil.hingeByAngle(0.3);
        double byDeflection = 0.47 * ThinAirfoil.hingeByDeflection(0.3);
        assertThat(hinge(0, 0.3, Hinge.TAPED, 0.15).at(4 * DEGREE)).isCloseTo(4 * DEGREE * byAngle, within(1e-9));
        assertThat(hinge(6 * DEGREE, 0.3, Hinge.TAPED, 0.18).at(0)).isCloseTo(6 * DEGREE * byDeflection, within(1e-9));
        double mean = (hinge(6 * DEGREE, 0.3, Hinge.TAPED, 0.15).at(2 * DEGREE)
                        + hinge(6 * DEGREE, 0.3, Hinge.TAPED, 0.09).at(2 * DEGREE))
                / 2;
        assertThat(hinge(6 * DEGREE, 0.3, Hinge.TAPED, 0.12).at(2 * DEGREE)).isCloseTo(mean, within(1e-9));
        HingeMoment a = hinge(6 * DEGREE, 0.3, Hinge.TAPED, 0.15);
        HingeMoment b = hinge(-4 * DEGREE, 0.3, Hinge.TAPED, 0.09);
        assertThat(a.blend(b, 0.25).at(0.05)).isCloseTo(0.75 * a.at(0.05) + 0.25 * b.at(0.05), within(1e-9));
    }

    /** Counted from the clean section's zero lift; bent smoothly so that no coefficient passes 0.65, the same both ways. */
    @Test
    void largestMoment() {
        HingeMoment cambered = HingeMoment.of(new SurfaceState(0, 0.25, Hinge.TAPED), 0.09, -4 * DEGREE);
        assertThat(cambered.at(-4 * DEGREE)).isCloseTo(0, within(1e-12));
        double before = 0;
        for (double down = 5; down <= 85; down += 1) {
            double size = -hinge(down * DEGREE, 0.25, Hinge.TAPED, 0.09).at(0);
            assertThat(size).isGreaterThan(before).isLessThan(0.65);
            assertThat(hinge(-down * DEGREE, 0.25, Hinge.TAPED, 0.09).at(0)).isCloseTo(size, within(1e-12));
            before = size;
        }
        assertThat(before).isGreaterThan(0.6);
        double knee = 0.45 / (0.01275 / DEGREE);
        double slope = (hinge(knee + 1e-3, 0.25, Hinge.TAPED, 0.09).at(0)
                        - hinge(knee - 1e-3, 0.25, Hinge.TAPED, 0.09).at(0))
                / 2e-3;
        assertThat(slope).isCloseTo(-0.01275 / DEGREE, within(0.01));
        assertThat(HingeMoment.of(new SurfaceState(0.2, 0, Hinge.TAPED), 0.09, 0)
                        .at(0.1))
                .isZero();
    }

    /**
     * The free-streamline plate (Kirchhoff, Rayleigh; closed form): normal force {@code 2 pi sin a / (4 + pi sin a)} to scale,
     * acting 5/16 of the chord behind the nose at small angles and in the middle square to the flow.
     */
    @Test
    void flatPlate() {
        assertThat(FlatPlate.normal(1)).isCloseTo(1.80, within(1e-12));
        double half = Math.sin(30 * DEGREE);
        assertThat(FlatPlate.normal(half) / FlatPlate.normal(1))
                .isCloseTo(half * (4 + Math.PI) / (4 + Math.PI * half), within(1e-12));
        assertThat(FlatPlate.normal(-half)).isCloseTo(-FlatPlate.normal(half), within(1e-12));
        assertThat(FlatPlate.moment(0, 1, 1)).isCloseTo(-(5.0 / 16 - 0.25), within(1e-12));
        assertThat(FlatPlate.moment(1, 0, 2)).isCloseTo(-0.5, within(1e-12));
        assertThat(FlatPlate.moment(half, Math.cos(30 * DEGREE), 1))
                .isCloseTo(-(0.25 - 0.75 * Math.cos(30 * DEGREE) / (4 + Math.PI / 2)), within(1e-12));
        assertThat(FlatPlate.noseSuction(1, 0.15)).isCloseTo(0.09, within(1e-12));
        assertThat(FlatPlate.noseSuction(1, 0.3)).isCloseTo(0.09, within(1e-12));
        assertThat(FlatPlate.noseSuction(-half, 0.05)).isCloseTo(0.015, within(1e-12));
    }
}
