package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static throwline.study.FlightQuantity.APPROACH_GLIDE_RATIO;
import static throwline.study.FlightQuantity.APPROACH_SPEED;
import static throwline.study.FlightQuantity.SINK_RATE;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.section.MeasuredSections;

/** The glide ratio when coming in, against the trigonometry of right-angled triangles. */
class ApproachGlideRatioTest {

    private static final double EXACT = 1e-12;

    /** Cotangents of 45, 30 and 60 degrees are 1, the root of 3 and its inverse. */
    @ParameterizedTest
    @CsvSource({"45, 1", "30, 1.7320508075688772", "60, 0.5773502691896258"})
    void triangles(double degrees, double ratio) {
        double angle = Math.toRadians(degrees);
        Headline.Known steep = new Headline.Known(angle, angle, Math.PI / 2, Headline.Basis.ASSUMED, 0.8);
        Headline.Known found = (Headline.Known) ratio(steep);
        assertThat(found.value()).isCloseTo(ratio, within(EXACT));
        assertThat(found.high()).isCloseTo(ratio, within(EXACT));
        assertThat(found.low()).isCloseTo(0, within(EXACT));
        assertThat(found.shared()).isEqualTo(0.8);
    }

    @Test
    void aPathThatMayBeLevelHasNone() {
        Headline.Known flat = new Headline.Known(0.02, -0.01, 0.05, Headline.Basis.ASSUMED);
        assertThat(ratio(flat)).isInstanceOf(Headline.Unknown.class);
    }

    /** Pythagoras: airspeed is the slope of a triangle whose height is the sink rate. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline"})
    void speedAndSinkRateSayTheSame(String example) {
        for (SetUpResult result : Examples.compare(Examples.read(example), new MeasuredSections())
                .packs()
                .get(0)
                .setUps()) {
            double sink = value(result, SINK_RATE);
            double ahead = Math.sqrt(Math.pow(value(result, APPROACH_SPEED), 2) - sink * sink);
            assertThat(value(result, APPROACH_GLIDE_RATIO)).isCloseTo(ahead / sink, within(1e-9));
        }
    }

    private static Headline ratio(Headline.Known angle) {
        return SetUpAnswer.ofDescent(10, angle).entrySet().stream()
                .filter(entry -> entry.getKey() == APPROACH_GLIDE_RATIO)
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    private static double value(SetUpResult result, FlightQuantity quantity) {
        return ((Headline.Known) result.number(quantity)).value();
    }
}
