package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values worked by hand from published formulae (COMPUTED), to their printed digits. */
class PublishedFormulaeTest {

    /** Methods manual 7.1 at 2.5 chords behind the trailing edge (formula after NACA Reports 648 and 651, MEMORY). */
    @ParameterizedTest
    @CsvSource({".01, .11, .086", ".05, .25, .19", ".15, .43, .33", ".30, .61, .47"})
    void wakeOfASection(double drag, double halfWidth, double loss) {
        assertThat(TailWake.halfWidth(drag, 2.5)).isCloseTo(halfWidth, within(0.006));
        assertThat(TailWake.centreLoss(drag, 2.5)).isCloseTo(loss, within(0.006));
    }

    /** Methods manual 11.2: roll time constant of a published 1.92 m research model. */
    @ParameterizedTest
    @CsvSource({"10, 0.234", "15, 0.156", "20, 0.117"})
    void rollTimeConstant(double speed, double seconds) {
        assertThat(RollSolver.timeConstant(0.8568, 1.225, speed, 0.773, 1.92, -0.42))
                .isCloseTo(seconds, within(0.0006));
    }

    /** Methods manual 9.3: turns. */
    @ParameterizedTest
    @CsvSource({"30, 1.0746", "45, 1.1892", "60, 1.4142"})
    void stallSpeedInATurn(double bank, double factor) {
        SteadyDescent level = new SteadyDescent(30, 1.225, 0.45);
        SteadyDescent turning = new SteadyDescent(30 / Math.cos(Math.toRadians(bank)), 1.225, 0.45);
        assertThat(turning.stallSpeed(1.2) / level.stallSpeed(1.2)).isCloseTo(factor, within(0.5e-4));
    }
}
