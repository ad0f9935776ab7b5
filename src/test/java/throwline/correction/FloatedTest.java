package throwline.correction;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What a float should read: speed squared over path angle and gravity, a constant slowing down by {@code g tan(angle)}
 * (mechanics), over ground that comes the wind's way.
 */
class FloatedTest {

    private final DemoAeroplane demo = new DemoAeroplane();
    private final DayFactors day = DayFactors.of(demo.factors, "one", 0, 1, 0);
    private final Flying landing = demo.in("landing flap");
    private final double[] state = demo.factors.means();

    private double floated() {
        return Math.exp(new Expected(landing, day).floated().at(state));
    }

    @Test
    void floats_as_predicted_in_still_air() {
        assertThat(floated()).isCloseTo(DemoAeroplane.FLOATS, Offset.offset(1e-9));
    }

    /** At the speed of equal lift the path stays what it was, so that only the square of speed is left: here weight. */
    @Test
    void floats_with_the_square_of_speed() {
        state[demo.aeroplane.weight("small")] = Math.log(1.1);
        assertThat(floated()).isCloseTo(1.1 * DemoAeroplane.FLOATS, Offset.offset(1e-3));
    }

    @Test
    void floats_less_far_the_steeper_it_comes_down() {
        double speed = landing.predicted().approachSpeed();
        double before = landing.descentAngle(state, speed, 0);
        state[demo.factors.place(Factor.standard("drag"))] = 1;
        double after = landing.descentAngle(state, speed, 0);
        assertThat(after).isGreaterThan(1.1 * before);
        assertThat(floated()).isCloseTo(DemoAeroplane.FLOATS * before / after, Offset.offset(1e-9));
    }

    @Test
    void floats_less_far_into_the_wind() {
        state[day.wind()] = 4;
        double share = 1 - 3 / landing.predicted().approachSpeed();
        assertThat(floated()).isCloseTo(share * DemoAeroplane.FLOATS, Offset.offset(1e-9));
    }
}
