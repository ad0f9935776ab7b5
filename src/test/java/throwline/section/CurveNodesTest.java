package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/** Curves whose nodes are made when they are read are the cubics through all of them (property). */
class CurveNodesTest {

    private static TabulatedCurve curve(String airfoil, double deflection) {
        SectionPlace place = SectionPlace.of(
                new PackedAirfoils().find(new AirfoilName(airfoil)).orElseThrow());
        SurfaceState surface = new SurfaceState(Math.toRadians(deflection), 0.25, Hinge.TAPED);
        return new MeasuredSections().curve(place, surface, 180_000);
    }

    @ParameterizedTest
    @CsvSource({"clark-y-b, 0", "clark-y-b, 40", "sd7037, -14", "s8036, 12", "naca0009, 20", "flat-plate, -20"})
    void readsTheCubicThroughAllNodes(String airfoil, double deflection) {
        TabulatedCurve curve = curve(airfoil, deflection);
        AngleGrid grid = curve.grid();
        double[] angles =
                IntStream.range(0, AngleGrid.COUNT).mapToDouble(grid::angle).toArray();
        MonotoneCubic lift = through(angles, curve::lift);
        MonotoneCubic drag = through(angles, curve::drag);
        TabulatedCurve fresh = curve(airfoil, deflection);
        for (double alpha = -1.57; alpha < 1.57; alpha += 0.0031) {
            assertThat(fresh.lift(alpha)).isCloseTo(lift.value(alpha), within(1e-10));
            assertThat(fresh.drag(alpha)).isCloseTo(drag.value(alpha), within(1e-10));
        }
    }

    private static MonotoneCubic through(double[] angles, DoubleUnaryOperator curve) {
        return MonotoneCubic.through(angles, Arrays.stream(angles).map(curve).toArray());
    }

    @ParameterizedTest
    @CsvSource({"clark-y-b, 0", "clark-y-b, 40", "sd7037, -14", "s8036, 12", "naca0009, 0", "flat-plate, -20"})
    void hullVanishesAtTheAngleOfZeroLift(String airfoil, double deflection) {
        TabulatedCurve curve = curve(airfoil, deflection);
        assertThat(curve.risingLift(curve.zeroLiftAngle())).isCloseTo(0, within(1e-12));
        assertThat(curve.risingLift(curve.zeroLiftAngle() + 0.02)).isPositive();
    }

    @Test
    void manyThreadsReadWhatOneReads() {
        TabulatedCurve shared = curve("clark-y-b", 20);
        TabulatedCurve own = curve("clark-y-b", 20);
        double[] read = IntStream.range(0, 40_000)
                .parallel()
                .mapToDouble(k -> shared.drag(-1.5 + (k % 400) * 0.0075))
                .toArray();
        for (int k = 0; k < read.length; k++) {
            assertThat(read[k]).isEqualTo(own.drag(-1.5 + (k % 400) * 0.0075));
        }
    }
}
