package throwline.report.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.report.Page;
import throwline.units.Display;
import throwline.units.Unit;
import throwline.words.Words;

/** Field, float, radii, sink and gusts in the units that go with the lengths that are asked for. One foot is 0.3048 m. */
class FarValuesTest {

    private static String shown(Value value, Unit... units) {
        Page page = Page.of(80, true, false, Display.metric().with(List.of(units)));
        return new Figures(page, Words.load()).show(value).replace('\u00a0', ' ');
    }

    @Test
    void distancesFollowTheLength() {
        assertThat(shown(Value.distance(30.48))).isEqualTo("30 m");
        assertThat(shown(Value.distance(30.48), Unit.INCH)).isEqualTo("100 ft");
        assertThat(shown(Value.of(12.192, Value.Kind.RADIUS), Unit.FOOT)).isEqualTo("40 ft");
        assertThat(shown(Value.of(0.6096, Value.Kind.HEIGHT), Unit.INCH)).isEqualTo("2.0 ft");
        assertThat(shown(new Value.Change(-3.048, Value.Kind.DISTANCE), Unit.INCH))
                .isEqualTo("-10");
    }

    /** Whatever airspeeds are shown in, and with the same slope in either unit. */
    @Test
    void sinkAndGustsHaveUnitsOfTheirOwn() {
        Value sink = Value.of(3.048, Value.Kind.VERTICAL_SPEED);
        assertThat(shown(sink, Unit.KILOMETRE_PER_HOUR)).isEqualTo("3.0 m/s");
        assertThat(shown(sink, Unit.INCH, Unit.MILE_PER_HOUR)).isEqualTo("10.0 ft/s");
        Value far = Value.of(5, Value.Kind.GLIDE);
        assertThat(shown(Value.of(1, Value.Kind.GLIDE)) + " in " + shown(far)).isEqualTo("10 m in 50 m");
        assertThat(shown(Value.of(1, Value.Kind.GLIDE), Unit.INCH) + " in " + shown(far, Unit.INCH))
                .isEqualTo("30 ft in 150 ft");
    }
}
