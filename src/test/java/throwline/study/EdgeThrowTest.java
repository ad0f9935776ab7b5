package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Degrees to millimetres against values worked by hand (COMPUTED, methods manual 14.3): chord 60 mm, half of the last printed digit. */
class EdgeThrowTest {

    private final EdgeThrow edge = new EdgeThrow(0.060);

    @ParameterizedTest
    @CsvSource({"15, 15.5, 15.7", "25, 25.4, 26.0", "45, 42.4, 45.9", "60, 52.0, 60.0", "75, 58.0, 73.1"})
    void table(double degrees, double vertical, double straight) {
        assertThat(1000 * edge.height(Math.toRadians(degrees))).isCloseTo(vertical, within(0.05));
        assertThat(1000 * edge.distance(Math.toRadians(degrees))).isCloseTo(straight, within(0.05));
        assertThat(edge.distance(Math.toRadians(-degrees))).isEqualTo(-edge.distance(Math.toRadians(degrees)));
    }

    @Test
    void an_angle_of_a_distance() {
        assertThat(edge.angleOf(edge.distance(0.7))).isCloseTo(0.7, within(1e-12));
    }
}
