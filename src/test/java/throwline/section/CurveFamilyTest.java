package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/** Curves read between rungs of Reynolds number are those made at it (property: nothing but the way of making differs). */
class CurveFamilyTest {

    private final MeasuredSections sections = new MeasuredSections();

    private static Airfoil airfoil(String name) {
        return new PackedAirfoils().find(new AirfoilName(name)).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "clark-y-b, clark-y-b, 0, 0",
        "sd7037, sd7037, 0, 35",
        "s8036, s8036, 0, -14",
        "e214c, e214c, 0, 12",
        "clark-y, sd7037, 0.4, 55",
        "naca0009, naca0009, 0, 8",
        "flat-plate, flat-plate, 0, -20"
    })
    void readsBetweenRungsWhatIsMadeThere(String inner, String outer, double weight, double deflection) {
        SectionPlace place = new SectionPlace(airfoil(inner), airfoil(outer), weight);
        SurfaceState surface = new SurfaceState(Math.toRadians(deflection), 0.25, Hinge.TAPED);
        CurveFamily family = sections.family(place, surface);
        Random random = new Random(20);
        int farDrags = 0;
        for (int k = 0; k < 400; k++) {
            double reynolds = 30_000 * Math.exp(4 * random.nextDouble());
            SectionCurve made = sections.curve(place, surface, reynolds);
            SectionCurve read = family.at(reynolds);
            double alpha = Math.toRadians(-25 + 50 * random.nextDouble());
            assertThat(read.risingLift(alpha)).isCloseTo(made.risingLift(alpha), within(1e-3));
            assertThat(read.lift(alpha)).isCloseTo(made.lift(alpha), within(3e-3));
            assertThat(read.moment(alpha)).isCloseTo(made.moment(alpha), within(1e-3));
            double away = Math.log(read.drag(alpha) / made.drag(alpha));
            assertThat(away).isCloseTo(0, within(0.03));
            farDrags += Math.abs(away) > 1e-3 ? 1 : 0;
            assertThat(read.hinge(alpha)).isCloseTo(made.hinge(alpha), within(1e-3));
            assertThat(read.maxLift()).isCloseTo(made.maxLift(), within(5e-4));
            assertThat(read.minLift()).isCloseTo(made.minLift(), within(5e-4));
            assertThat(read.stallAngle()).isCloseTo(made.stallAngle(), within(1e-4));
            assertThat(read.zeroLiftAngle()).isCloseTo(made.zeroLiftAngle(), within(1e-4));
        }
        assertThat(farDrags).isLessThan(20);
    }

    @Test
    void slopeIsThatOfTheLift() {
        SectionCurve curve = sections.family(SectionPlace.of(airfoil("clark-y-b")), SurfaceState.none())
                .at(137_000);
        double step = 1e-6;
        for (double degrees = -14; degrees < 20; degrees += 0.37) {
            double alpha = Math.toRadians(degrees);
            double rise = curve.risingLift(alpha + step) - curve.risingLift(alpha - step);
            assertThat(curve.risingLiftSlope(alpha)).isCloseTo(rise / (2 * step), within(1e-4));
        }
    }
}
