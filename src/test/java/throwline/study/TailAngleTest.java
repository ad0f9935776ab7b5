package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** A linear tail in closed form: the elevator falls by 0.6 of an angle of the tail. */
class TailAngleTest {

    private static final double DEGREE = Math.PI / 180;
    private static final double SLOPE = -0.6;

    private static DoubleFunction<Optional<Double>> flownBut(double from, double to) {
        return angle -> angle > from && angle < to ? Optional.empty() : Optional.of(SLOPE * angle);
    }

    @Test
    void the_root_of_a_line() {
        TailAngle found = TailAngle.of(flownBut(1, 0), 1.5 * DEGREE);
        assertThat(found.angle().orElseThrow()).isCloseTo(-2.5 * DEGREE, within(1e-5));
        assertThat(found.lost()).isFalse();
    }

    /** A flight lost between two that were found, and one lost at the end of a step: not found, and said so. */
    @Test
    void a_flight_lost_on_the_way_is_no_fault() {
        for (DoubleFunction<Optional<Double>> elevator : List.of(
                flownBut(-3.9 * DEGREE, -0.1 * DEGREE), flownBut(-4.1 * DEGREE, -2 * DEGREE), flownBut(-9, 9))) {
            assertThat(TailAngle.of(elevator, 1.5 * DEGREE)).isEqualTo(new TailAngle(Optional.empty(), true));
        }
    }

    @Test
    void a_reading_that_no_angle_gives_is_not_a_lost_flight() {
        assertThat(TailAngle.of(flownBut(1, 0), 6 * DEGREE)).isEqualTo(new TailAngle(Optional.empty(), false));
    }

    /** Squares over the slope: 3 and 4 make 5, and 5 over 0.5 makes 10. */
    @Test
    void errors_add_by_squares() {
        Optional<Double> slope = Optional.of(-0.5);
        assertThat(TailAngle.doubt(slope, List.of(Optional.of(3.0), Optional.of(4.0)), 2))
                .isCloseTo(10, within(1e-12));
        assertThat(TailAngle.doubt(slope, List.of(Optional.of(0.3), Optional.of(0.4)), 2))
                .isCloseTo(1, within(1e-12));
    }

    /** What is not known is never taken as nothing, and never makes a known error smaller. */
    @Test
    void an_error_that_is_not_known_is_that_of_an_unknown_angle() {
        Optional<Double> slope = Optional.of(-0.5);
        assertThat(TailAngle.doubt(slope, List.of(Optional.of(0.3), Optional.empty()), 2))
                .isEqualTo(2);
        assertThat(TailAngle.doubt(slope, List.of(Optional.of(3.0), Optional.empty()), 2))
                .isEqualTo(6);
        assertThat(TailAngle.doubt(Optional.empty(), List.of(Optional.of(0.3)), 2))
                .isEqualTo(2);
        assertThat(TailAngle.doubt(Optional.of(0.0), List.of(Optional.of(0.3)), 2))
                .isEqualTo(2);
    }
}
