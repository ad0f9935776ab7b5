package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.liftingline.LawCurve;

/** Lift laws that can be turned round in closed form. */
class CurveReadingTest {

    /** lift = m tanh(2 pi a / m), so that a = m artanh(lift / m) / (2 pi). */
    @ParameterizedTest
    @ValueSource(doubles = {-1.1, -0.3, 0, 0.2, 0.9, 1.19})
    void the_angle_of_a_lift(double lift) {
        double most = 1.2;
        double share = lift / most;
        double artanh = 0.5 * Math.log((1 + share) / (1 - share));
        assertThat(CurveReading.angleOf(LawCurve.tanh(most), lift))
                .isCloseTo(most * artanh / (2 * Math.PI), within(1e-9));
    }

    @Test
    void beyond_its_ends_the_end() {
        SectionCurve curve = LawCurve.tanh(1.2);
        assertThat(CurveReading.angleOf(curve, 2)).isEqualTo(curve.stallAngle());
        assertThat(CurveReading.angleOf(curve, -2)).isEqualTo(curve.negativeStallAngle());
    }
}
