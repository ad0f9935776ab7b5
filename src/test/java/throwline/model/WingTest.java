package throwline.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;

class WingTest {

    private static final AirfoilName AIRFOIL = new AirfoilName("any");

    /** Two panels with sweep and taper against numerical integration by Commons Math. */
    @Test
    void meanChordAndItsLeadingEdgeAreIntegralsOverTheSpan() {
        Wing wing = new Wing(
                0,
                0,
                0,
                List.of(
                        new WingSection(0, 0.225, AIRFOIL, 0, 0),
                        new WingSection(0.7, 0.215, AIRFOIL, 0, 0.01),
                        new WingSection(1.3, 0.14, AIRFOIL, 0, 0.05)),
                List.of());
        double area = integral(wing, y -> wing.chordAt(y));
        assertThat(wing.area()).isCloseTo(2 * area, within(1e-9));
        assertThat(wing.meanAerodynamicChord())
                .isCloseTo(integral(wing, y -> wing.chordAt(y) * wing.chordAt(y)) / area, within(1e-9));
        assertThat(wing.meanLeadingEdge())
                .isCloseTo(integral(wing, y -> wing.leadingEdgeAt(y) * wing.chordAt(y)) / area, within(1e-9));
    }

    private static double integral(Wing wing, UnivariateFunction function) {
        double sum = 0;
        for (int i = 1; i < wing.sections().size(); i++) {
            sum += new RombergIntegrator(1e-12, 1e-14, 3, 32)
                    .integrate(
                            10_000,
                            function,
                            wing.sections().get(i - 1).at(),
                            wing.sections().get(i).at());
        }
        return sum;
    }
}
