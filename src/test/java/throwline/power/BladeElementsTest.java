package throwline.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Blade elements against a second program for the same equations (COMPUTED, methods manual 20.1) and against momentum
 * theory.
 */
class BladeElementsTest {

    private static final double INCH = 0.0254;
    private static final double TURNS = 100;

    private static BladeElements inches(double diameter, double pitch, int blades) {
        return new BladeElements(diameter * INCH, pitch * INCH, blades, BladeElements.USUAL_CHORD);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "blade-elements.csv", useHeadersInDisplayName = true)
    void table(double diameter, double pitch, int blades, double advance, double thrust, double power) {
        Coefficients c = inches(diameter, pitch, blades).at(advance, TURNS);
        assertThat(c.thrust()).isCloseTo(thrust, within(0.01 * Math.abs(thrust) + 0.00006));
        assertThat(c.power()).isCloseTo(power, within(0.01 * Math.abs(power) + 0.00006));
    }

    /**
     * One station, 14 x 7 at 6000 rpm, at three quarters of the radius (COMPUTED by the second program, which
     * takes the Reynolds number from the final speed of the air and not from the first).
     */
    @ParameterizedTest
    @CsvSource({"0, 7.212, 9.269, 180569, 0.9552, 82.79", "0.3, 10.626, 5.855, 183462, 0.8951, 84.12"})
    void station(double advance, double flow, double alpha, double reynolds, double tip, double air) {
        BladeElements blades = inches(14, 7, 2);
        BladeElements.Element e = blades.element(0.75, 2 * Math.PI * TURNS, advance * TURNS * blades.diameter());
        assertThat(Math.toDegrees(e.flow())).isCloseTo(flow, within(0.01));
        assertThat(Math.toDegrees(e.alpha())).isCloseTo(alpha, within(0.01));
        assertThat(e.reynolds()).isCloseTo(reynolds, within(0.015 * reynolds));
        assertThat(e.tipFactor()).isCloseTo(tip, within(0.001));
        assertThat(e.air()).isCloseTo(air, within(0.05));
    }

    /** 14 x 7 at 6000 rpm on the bench: 20.14 N and 268.7 W at sea level (COMPUTED by the second program). */
    @Test
    void bench() {
        BladeElements blades = inches(14, 7, 2);
        Coefficients c = blades.at(0, TURNS);
        double scale = 1.225 * TURNS * TURNS * Math.pow(blades.diameter(), 4);
        assertThat(c.thrust() * scale).isCloseTo(20.14, within(0.2));
        assertThat(c.power() * scale * TURNS * blades.diameter()).isCloseTo(268.7, within(2.7));
    }

    /** No disc pulls harder at rest than one without losses (momentum theory): T^3 = 2 rho A P^2. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.7, 0.9})
    void neverAboveTheIdealDisc(double pitchRatio) {
        BladeElements blades = new BladeElements(0.3, 0.3 * pitchRatio, 2, BladeElements.USUAL_CHORD);
        Coefficients c = blades.at(0, TURNS);
        double merit = Math.pow(c.thrust(), 1.5) / c.power() * Math.sqrt(2 / Math.PI);
        assertThat(merit).isBetween(0.3, 0.8);
    }

    /**
     * Energy: what leaves the shaft is at least what pulls the model and what the disc's own jet carries away (momentum
     * theory of the actuator disc), so that efficiency stays below that of the ideal disc.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.3, 0.4, 0.5, 0.55})
    void energy(double advance) {
        BladeElements blades = inches(14, 7, 2);
        Coefficients c = blades.at(advance, TURNS);
        double speed = advance * TURNS * blades.diameter();
        double thrust = c.thrust() * 1.225 * TURNS * TURNS * Math.pow(blades.diameter(), 4);
        double shaft = c.power() * 1.225 * Math.pow(TURNS, 3) * Math.pow(blades.diameter(), 5);
        Slipstream jet = new Slipstream(speed, blades.diameter() / 2, 1.225, thrust, 0);
        assertThat(shaft).isGreaterThan(thrust * (speed + jet.induced()));
        assertThat(c.efficiency(advance)).isLessThan(0.85);
    }

    /** Three blades against two: thrust at rest 1.35 times, power 1.49 times (COMPUTED by the second program). */
    @Test
    void threeBlades() {
        Coefficients two = inches(14, 7, 2).at(0, TURNS);
        Coefficients three = inches(14, 7, 3).at(0, TURNS);
        assertThat(three.thrust() / two.thrust()).isCloseTo(1.35, within(0.02));
        assertThat(three.power() / two.power()).isCloseTo(1.49, within(0.02));
    }

    /** Held still, D/(q A) of a 14 x 7 is 0.094 with flat plates of 1.1 (COMPUTED, plates PRACTICE). */
    @Test
    void stopped() {
        BladeElements blades = inches(14, 7, 2);
        double disc = Math.PI * Math.pow(blades.diameter() / 2, 2);
        assertThat(blades.stoppedDrag(1.1) / disc).isCloseTo(0.094, within(0.002));
    }

    /** Side area of a 14 x 7: 31.3 cm2 before the mean over a turn, 2 / pi (COMPUTED). */
    @Test
    void sideArea() {
        assertThat(inches(14, 7, 2).sideArea()).isCloseTo(31.3e-4 * 2 / Math.PI, within(0.3e-4));
    }
}
