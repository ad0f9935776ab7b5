package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.model.Hinge;
import throwline.model.SetUp;
import throwline.model.Surface;

/** Travels: half of the up travel and ten degrees of it stay free for rolling (common practice, no source). */
class SurfaceGroupsTest {

    private static final double DEGREE = Math.PI / 180;

    private static Surface surface(String name, double up, double down) {
        return new Surface(name, 0.1, 0.5, 0.25, up * DEGREE, down * DEGREE, Hinge.TAPED);
    }

    private static SurfaceGroups groups(double aileronUp) {
        return new SurfaceGroups(
                List.of(surface("inner", 5, 60), surface("outer", 0, 40)), List.of(surface("ailerons", aileronUp, 18)));
    }

    @Test
    void theLongestTravelOfAGroup() {
        assertThat(groups(25).flapTravel().low()).isCloseTo(-5 * DEGREE, within(1e-12));
        assertThat(groups(25).flapTravel().high()).isCloseTo(60 * DEGREE, within(1e-12));
        assertThat(new SurfaceGroups(List.of(), List.of()).flapTravel().isNothing())
                .isTrue();
    }

    @Test
    void whatStaysFreeForRolling() {
        assertThat(groups(30).aileronReserve().low()).isCloseTo(-15 * DEGREE, within(1e-12));
        assertThat(groups(16).aileronReserve().low()).isCloseTo(-6 * DEGREE, within(1e-12));
        assertThat(groups(8).aileronReserve().low()).isCloseTo(0, within(1e-12));
        assertThat(groups(30).aileronReserve().high()).isCloseTo(9 * DEGREE, within(1e-12));
    }

    /** Every surface goes as far as its own travel, in the order of the file; what does not move is not named. */
    @Test
    void setUp() {
        SetUp wanted = groups(25).setUp("wanted", 50 * DEGREE, -30 * DEGREE);
        assertThat(wanted.deflections().keySet()).containsExactly("inner", "outer", "ailerons");
        assertThat(wanted.deflection("inner")).isCloseTo(50 * DEGREE, within(1e-12));
        assertThat(wanted.deflection("outer")).isCloseTo(40 * DEGREE, within(1e-12));
        assertThat(wanted.deflection("ailerons")).isCloseTo(-25 * DEGREE, within(1e-12));
        assertThat(groups(25).setUp("clean", 0, 0).isClean()).isTrue();
    }

    @Test
    void spreadsFromEndToEndAndZero() {
        Range range = new Range(-10 * DEGREE, 30 * DEGREE);
        double[] spread = range.spread(4);
        assertThat(spread).hasSize(5);
        assertThat(spread[0]).isCloseTo(range.low(), within(1e-12));
        assertThat(spread[1]).isEqualTo(0);
        assertThat(spread[4]).isCloseTo(range.high(), within(1e-12));
        assertThat(new Range(0, 0.0005).spread(4)).containsExactly(0);
        assertThat(range.isAtLow(-9.97 * DEGREE)).isTrue();
        assertThat(range.isAtLow(-9.9 * DEGREE)).isFalse();
        assertThat(range.isAtHigh(29.97 * DEGREE)).isTrue();
        assertThat(range.isAtHigh(29.9 * DEGREE)).isFalse();
        assertThat(new Range(0, 0).isAtHigh(0)).isFalse();
        assertThat(range.clamp(40 * DEGREE)).isEqualTo(range.high());
        assertThat(range.width()).isCloseTo(40 * DEGREE, within(1e-12));
    }
}
