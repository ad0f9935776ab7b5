package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.study.SetUpResult.SpeedPoint;

/** A sweep read with more drag, against the balance of a parabolic polar solved directly: {@code tan g = f CD(CL)/CL}. */
class SweptFlightTest {

    private static final double WEIGHT = 3.05 * 9.80665;
    private static final double RHO_AREA = 1.17 * 0.492;

    /** Bisection for the path at which lift and drag carry the weight. */
    private static double angle(double speed, double factor) {
        double low = 1e-4;
        double high = Math.PI / 2 - 1e-4;
        double pressure = RHO_AREA * speed * speed / 2;
        for (int i = 0; i < 100; i++) {
            double angle = (low + high) / 2;
            double lift = WEIGHT * Math.cos(angle) / pressure;
            double drag = factor * (0.1813 + 0.0617 * lift * lift);
            if (pressure * drag > WEIGHT * Math.sin(angle)) {
                low = angle;
            } else {
                high = angle;
            }
        }
        return low;
    }

    @ParameterizedTest
    @CsvSource({"9.5, 1.2", "11.5, 0.8", "11.5, 1.3", "14, 1.2", "16, 1.25", "17, 1.2", "17, 0.7"})
    void flies_the_polar_with_more_drag(double speed, double factor) {
        List<SpeedPoint> sweep = new ArrayList<>();
        for (double v = 8.8; v < 25; v += 0.4) {
            double angle = angle(v, 1);
            if (angle < Math.toRadians(85)) {
                sweep.add(new SpeedPoint(v, angle, v * Math.sin(angle), 1, 1, 0));
            }
        }
        SweptFlight swept = new SweptFlight(8.84, 11.5, sweep, Double.NaN, 0, Map.of());
        assertThat(swept.descentAngle(speed, factor)).isCloseTo(angle(speed, factor), Offset.offset(2e-3));
        assertThat(swept.descentAngle(speed, 1)).isCloseTo(angle(speed, 1), Offset.offset(1e-4));
    }
}
