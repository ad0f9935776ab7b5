package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.model.Wing;
import throwline.section.SectionCurve;

/** Lift while strip after strip stalls, with the library's sections: that of a continuous span, not of a number of strips. */
class PastStallTest {

    /**
     * A wing has no strips: at every quarter degree through the stall 80 of them carry what 640 carry, also with sections that
     * lose a third of their lift in a degree (NACA 2415, S8036) and beside the ends of flaps.
     */
    @ParameterizedTest
    @CsvSource({
        "s8036, 1.5e6, 0, 0.4, 0.05",
        "s8036, 1.5e6, 20, 0.4, 0.05",
        "s8036, 1.5e6, 40, 0.4, 0.06",
        "s8036, 1.5e6, 60, 0.4, 0.06",
        "naca2415, 1e6, 0, 0.5, 0.05",
        "naca2415, 1e6, 35, 0.5, 0.7",
        "clark-y-b, 8e5, 45, 0.5, 0.2",
        "naca0009, 8e5, 35, 0.5, 0.2",
        "trainer-semi, 1.2e6, 30, 0.3, 0.2"
    })
    void liftGoesThroughTheStallWithoutTeeth(
            String airfoil, double reynoldsPerMetre, double flaps, double end, double percent) {
        Wing wing = MeasuredWing.tapered(airfoil, 7, 0.7, Math.toRadians(1), end);
        MeasuredWing coarse = new MeasuredWing(wing, reynoldsPerMetre, 80);
        MeasuredWing fine = new MeasuredWing(wing, reynoldsPerMetre, 640);
        List<SectionCurve> coarseCurves = coarse.curves(Math.toRadians(flaps), 0, 0);
        List<SectionCurve> fineCurves = fine.curves(Math.toRadians(flaps), 0, 0);
        for (double degrees = 4; degrees <= 20; degrees += 0.25) {
            double incidence = Math.toRadians(degrees);
            double lift = StripForces.of(coarse.at(coarseCurves, incidence)).liftCoefficient();
            double continuous = StripForces.of(fine.at(fineCurves, incidence)).liftCoefficient();
            assertThat(lift).as("at " + degrees).isCloseTo(continuous, withPercentage(percent));
        }
    }
}
