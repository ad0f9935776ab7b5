package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The closed forms against the integrals they come from, done numerically by Commons Math: the bound vorticity of a thin
 * airfoil is the Fourier series of its camber slope (Houghton and Carpenter, section 4.4), here summed from coefficients
 * that are themselves integrated.
 */
class ThinAirfoilTest {

    private static final double TOLERANCE = 1e-4;

    @ParameterizedTest
    @ValueSource(doubles = {0.08, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50})
    void zeroLiftAndMomentFollowFromTheCamberSlope(double chord) {
        // A flap one radian down is a camber slope of -1 behind the hinge; theta runs from nose to trailing edge.
        double hinge = Math.acos(2 * chord - 1);
        double zeroLift = integrate(theta -> -(Math.cos(theta) - 1) / Math.PI, hinge, Math.PI);
        double moment = integrate(theta -> -(Math.cos(theta) - Math.cos(2 * theta)) / -2, hinge, Math.PI);
        assertThat(ThinAirfoil.effectiveness(chord)).isCloseTo(zeroLift, within(TOLERANCE));
        assertThat(ThinAirfoil.momentSlope(chord)).isCloseTo(moment, within(TOLERANCE));
    }

    /** Methods manual 4.1: effectiveness, lift and quarter-chord moment per radian (COMPUTED). */
    @ParameterizedTest
    @CsvSource({
        ".10, .3958, 2.487, -.540",
        ".15, .4805, 3.019, -.607",
        ".20, .5498, 3.455, -.640",
        ".25, .6090, 3.826, -.650",
        ".30, .6607, 4.152, -.642",
        ".40, .7478, 4.699, -.588",
        ".50, .8183, 5.142, -.500"
    })
    void printedTable(double chord, double effectiveness, double lift, double moment) {
        assertThat(ThinAirfoil.effectiveness(chord)).isCloseTo(effectiveness, within(0.5e-4));
        assertThat(2 * Math.PI * ThinAirfoil.effectiveness(chord)).isCloseTo(lift, within(0.6e-3));
        assertThat(ThinAirfoil.momentSlope(chord)).isCloseTo(moment, within(0.5e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.08, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50})
    void hingeMomentsFollowFromThePressureBehindTheHinge(double chord) {
        double hinge = Math.acos(2 * chord - 1);
        // Pressure difference of a flat plate at one radian: 4 cot(theta / 2).
        double byAngle = moment(chord, hinge, theta -> 4 / Math.tan(theta / 2));
        // That of a flap one radian down: thin-airfoil closed form of the pressure, from Glauert's series summed.
        double byDeflection = moment(chord, hinge, theta -> flapPressure(hinge, theta));
        assertThat(ThinAirfoil.hingeByAngle(chord)).isCloseTo(byAngle, within(TOLERANCE));
        assertThat(ThinAirfoil.hingeByDeflection(chord)).isCloseTo(byDeflection, within(TOLERANCE));
    }

    /** 4 (1 - hinge/pi) cot(theta/2) + sum of 8 sin(n hinge) sin(n theta) / (n pi), in its closed form. */
    private static double flapPressure(double hinge, double theta) {
        double sum = Math.log(Math.abs(Math.sin((theta + hinge) / 2) / Math.sin((theta - hinge) / 2)));
        return 4 * (1 - hinge / Math.PI) / Math.tan(theta / 2) + 8 / Math.PI * 0.5 * sum;
    }

    private static double moment(double chord, double hinge, UnivariateFunction pressure) {
        // Chord 1: x = (1 - cos theta) / 2, arm from the hinge, on the flap's chord squared; up-load lifts the trailing
        // edge.
        UnivariateFunction integrand = theta -> -pressure.value(theta)
                * ((1 - Math.cos(theta)) / 2 - (1 - chord))
                * Math.sin(theta)
                / 2
                / (chord * chord);
        return integrate(integrand, hinge, Math.PI);
    }

    private static double integrate(UnivariateFunction f, double from, double to) {
        // Points crowd towards the lower end, where the pressure of a flap has a logarithm.
        UnivariateFunction crowded = s -> {
            double width = to - from;
            return f.value(from + width * s * s * s) * 3 * width * s * s;
        };
        return new IterativeLegendreGaussIntegrator(30, 1e-7, 1e-7, 3, 40).integrate(2_000_000, crowded, 0, 1);
    }
}
