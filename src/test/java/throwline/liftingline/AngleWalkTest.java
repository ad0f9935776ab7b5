package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Walks along lift curves in closed form. */
class AngleWalkTest {

    private record At(double alpha, double lift, boolean converged) implements AngleWalk.Point {}

    private static AngleWalk<At> walk(DoubleUnaryOperator lift, double first, double step) {
        return AngleWalk.up(
                first,
                step,
                100,
                (alpha, before) -> new At(alpha, lift.applyAsDouble(alpha), true),
                w -> w.last().lift() < w.get(w.top()).lift());
    }

    /** A parabola's top is found from any three of its points: neither mirrored nor only near. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2001, 0.21, 0.2249, 0.2251, 0.23, 0.2499})
    void topOfAParabola(double top) {
        AngleWalk.Peak peak =
                walk(a -> 1.3 - 8 * (a - top) * (a - top), 0, 0.05).peak();
        assertThat(peak.alpha()).isCloseTo(top, within(1e-12));
        assertThat(peak.lift()).isCloseTo(1.3, within(1e-12));
    }

    @Test
    void topOfAParabolaInUnevenSteps() {
        AngleWalk.Peak peak = AngleWalk.Peak.of(onParabola(0.1), onParabola(0.17), onParabola(0.2));
        assertThat(peak.alpha()).isCloseTo(0.16, within(1e-12));
        assertThat(peak.lift()).isCloseTo(0.9, within(1e-12));
    }

    private static At onParabola(double alpha) {
        return new At(alpha, 0.9 - 3 * (alpha - 0.16) * (alpha - 0.16), true);
    }

    /** Where three points do not bend down, or the highest stands at an end, it is the highest itself. */
    @Test
    void noTopBetween() {
        assertThat(AngleWalk.Peak.of(new At(0, 0, true), new At(1, 1, true), new At(2, 2, true)))
                .isEqualTo(new AngleWalk.Peak(1, 1));
        assertThat(walk(a -> 1 - a, 0, 0.1).peak()).isEqualTo(new AngleWalk.Peak(0, 1));
    }

    /** Two tops: the first counts where lift falls by more than 0.5 % between them, the higher one where it hardly falls. */
    @ParameterizedTest
    @CsvSource({"1.19, 5", "1.196, 12"})
    void aLaterTop(double between, int degree) {
        double[] lifts = {0, 0.3, 0.6, 0.9, 1.1, 1.2, between, 1.195, 1.2, 1.21, 1.22, 1.23, 1.24, 1.2, 1.1};
        AngleWalk<At> walk = AngleWalk.up(
                0,
                1,
                lifts.length,
                (alpha, before) -> new At(alpha, lifts[(int) alpha], true),
                w -> w.size() == lifts.length);
        assertThat(walk.top()).isEqualTo(degree);
        assertThat(walk.risen()).isEqualTo(degree == 5 ? 6 : 13);
    }

    /** A quantity that falls in a straight line is nothing where that line is. */
    @Test
    void straightFall() {
        AngleWalk<At> walk = walk(a -> 1 - (a - 0.33) * (a - 0.33), 0.1, 0.1);
        double place = walk.firstFall(p -> 0.27 - p.alpha()).orElseThrow();
        assertThat(place).isCloseTo(1.7, within(1e-12));
        assertThat(walk.value(place, At::alpha)).isCloseTo(0.27, within(1e-12));
        assertThat(walk.firstFall(p -> 0.05 - p.alpha(), 1, walk.size() - 1)).isEqualTo(OptionalDouble.of(1));
        assertThat(walk.firstFall(p -> 9.0)).isEmpty();
    }

    @Test
    void endsAtOnceWherePointsAreNoSolutions() {
        AngleWalk<At> walk =
                AngleWalk.up(0, 1, 10, (alpha, before) -> new At(alpha, alpha, alpha < 3), w -> w.size() == 8);
        assertThat(walk.ended()).isFalse();
        assertThat(walk.size()).isEqualTo(4);
        assertThat(walk.top()).isEqualTo(2);
    }

    @Test
    void goesNoFurtherThanAsked() {
        AngleWalk<At> walk = AngleWalk.up(
                0,
                1,
                5,
                (alpha, before) -> new At(alpha, before.latest().map(At::lift).orElse(0.0) + 1, true),
                w -> false);
        assertThat(walk.ended()).isFalse();
        assertThat(walk.points()).extracting(At::lift).containsExactly(1.0, 2.0, 3.0, 4.0, 5.0);
    }
}
