package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Lifting-line theory, correction off: WING-CASES U2, F1, N1 (COMPUTED there by two independent methods). */
class WingCasesTest {

    @Test
    void rectangularWingOfAspectRatioSix() {
        TheoryWing wing = new TheoryWing(TheoryPlanform.tapered(6, 1), new double[0], 80, y -> LawCurve.linear(0));
        assertThat(wing.at(0.1).liftCoefficient() / 0.1).isCloseTo(4.53042, withPercentage(0.2));
    }

    @Test
    void partSpanFlap() {
        double shift = Math.toRadians(5);
        TheoryWing wing = new TheoryWing(
                TheoryPlanform.tapered(6, 1),
                new double[] {0.1, 0.55},
                80,
                y -> LawCurve.linear(Math.abs(y) > 0.1 && Math.abs(y) < 0.55 ? shift : 0));
        assertThat(wing.at(0).liftCoefficient()).isCloseTo(0.198390, withPercentage(0.5));
        assertThat(wing.at(0).inducedDragCoefficient()).isCloseTo(0.0039062, withPercentage(1));
    }

    @Test
    void saturatingSectionLaw() {
        TheoryWing wing = new TheoryWing(TheoryPlanform.tapered(6, 1), new double[0], 80, y -> LawCurve.tanh(1.2));
        assertThat(wing.at(Math.toRadians(20)).liftCoefficient()).isCloseTo(1.048294, withPercentage(0.5));
    }
}
