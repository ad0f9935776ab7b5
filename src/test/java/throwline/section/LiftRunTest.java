package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;

/** Invented runs of straight lines and parabolas, whose peaks, ends and continuations stand in closed form. */
class LiftRunTest {

    private static final double DEGREE = Math.PI / 180;

    private static Point point(double degrees, double lift) {
        return new Point(degrees * DEGREE, lift, Double.NaN, Double.NaN);
    }

    /** Pairs of degrees and lift. */
    private static PolarRun polar(double... pairs) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(point(pairs[i], pairs[i + 1]));
        }
        return new PolarRun(Kind.LIFT_UP, 100_000, 0, 0.2, "invented", "PRACTICE", points);
    }

    private static LiftRun run(double... pairs) {
        return LiftRun.of(polar(pairs));
    }

    /** A tenth for each degree up to ten. */
    private static double[] lineTo(double... more) {
        double[] pairs = new double[2 * 11 + more.length];
        for (int i = 0; i <= 10; i++) {
            pairs[2 * i] = i;
            pairs[2 * i + 1] = 0.1 * i;
        }
        System.arraycopy(more, 0, pairs, 22, more.length);
        return pairs;
    }

    private static void isAt(Point point, double degrees, double lift) {
        assertThat(point.alpha()).isCloseTo(degrees * DEGREE, within(1e-9));
        assertThat(point.lift()).isCloseTo(lift, within(1e-9));
    }

    /** Points in any order and twice at one angle make one rising row. */
    @Test
    void risingRow() {
        LiftRun run = run(2, 0.2, 0, 0, 1, 0.1, 1, 0.15);
        assertThat(run.points()).extracting(Point::lift).containsExactly(0.0, 0.1, 0.2);
        assertThat(run.measuredFrom()).isZero();
        assertThat(run.measuredTo()).isCloseTo(2 * DEGREE, within(1e-12));
        assertThat(run.reynolds()).isEqualTo(100_000);
    }

    /** A fall of more than 0.03 ends the rise, less is scatter; a bubble that lift makes good within eight degrees is no stall. */
    @Test
    void firstPeak() {
        isAt(run(lineTo(11, 0.9, 12, 1.05)).peak(), 10, 1);
        isAt(run(lineTo(11, 0.98, 12, 1.05)).peak(), 12, 1.05);
        isAt(run(lineTo(11, 0.9, 17, 1.12)).peak(), 17, 1.12);
        isAt(run(lineTo(11, 0.9, 19, 1.12)).peak(), 10, 1);
        isAt(run(lineTo(11, 0.9, 17, 1.09)).peak(), 10, 1);
        // So far below a stall no fall is one.
        isAt(run(0, 0.3, 1, 0.2, 2, 0.35, 20, 1).peak(), 20, 1);
    }

    /** On a sharp top the stall is the peak; on a flat one a degree past where lift is 0.99 of it. */
    @Test
    void stall() {
        isAt(run(lineTo(11, 0.9, 12, 0.8)).stall(), 10, 1);
        double begins = 10 * 0.99 * 1.005;
        isAt(run(lineTo(15, 1.005, 17, 0.9)).stall(), begins + 1, 1 + 0.001 * (begins + 1 - 10));
        isAt(run(0, 1, 5, 1.005, 8, 0.8).stall(), 1, 1.001);
    }

    @ParameterizedTest
    @CsvSource({"11, 0.9, true", "10.8, 1.0, false", "10.2, 1.02, false", "12, 1.01, true", "11.5, 1.06, false"})
    void reachesItsPeak(double degrees, double lift, boolean reaches) {
        assertThat(run(lineTo(degrees, lift)).reachesPeak()).isEqualTo(reaches);
    }

    /** A top so flat that nothing falls for 0.9 degrees past the highest point is passed, however steep it was before. */
    @Test
    void passesAFlatTop() {
        assertThat(run(lineTo(10.95, 0.999)).reachesPeak()).isTrue();
        assertThat(run(lineTo(10.85, 0.999)).reachesPeak()).isFalse();
    }

    /**
     * Rounded off by a parabola that leaves with the last slope and ends level: half of slope times length higher, which is
     * 0.02; from there two per cent a degree down.
     */
    @Test
    void roundedOff() {
        LiftRun run = run(lineTo()).roundedOff();
        double length = 0.04 / 0.1;
        isAt(run.peak(), 10 + length, 1.02);
        Point half = run.points().get(12);
        isAt(half, 10 + length / 2, 1 + 0.1 * length / 2 * 0.75);
        isAt(run.last(), 10 + length + 6, 1.02 * (1 - 0.02 * 6));
        assertThat(run.measuredTo()).isCloseTo(10 * DEGREE, within(1e-12));
        // A slow rise is rounded off over two degrees at most.
        isAt(run(0, 0.5, 10, 0.6).roundedOff().peak(), 12, 0.6 + 0.01);
        isAt(run(9, 0.5, 10.5, 0.5).roundedOff().last(), 17.5, 0.5 - 0.02 * 0.5 * 6);
    }

    /** A run that ends at its peak falls by two per cent of it a degree for six degrees; one that goes on is left as it is. */
    @Test
    void withFall() {
        LiftRun run = run(lineTo()).withFall();
        assertThat(run.points()).hasSize(15);
        isAt(run.last(), 16, 0.88);
        isAt(run.points().get(11), 11.5, 0.97);
        LiftRun gone = run(lineTo(13.5, 0.8));
        assertThat(gone.withFall()).isSameAs(gone);
        LiftRun near = run(lineTo(12.5, 0.9));
        isAt(near.withFall().last(), 18.5, 0.9 - 0.02 * 6);
    }

    /** A parabola cut off goes on as the same parabola moved, from where both are equally far below their peaks. */
    @Test
    void continuedLikeAnother() {
        double[] whole = new double[2 * 19];
        for (int i = 0; i <= 18; i++) {
            whole[2 * i] = i;
            whole[2 * i + 1] = 1.2 - 0.008 * (12 - i) * (12 - i);
        }
        double[] cut = new double[2 * 9];
        for (int i = 0; i <= 8; i++) {
            cut[2 * i] = i + 1.5;
            cut[2 * i + 1] = whole[2 * i + 1] + 0.1;
        }
        LiftRun on = run(cut).continuedLike(run(whole), 0.1);
        isAt(on.peak(), 13.5, 1.3);
        isAt(on.points().get(9), 10.5, 1.2 - 0.008 * 9 + 0.1);
        isAt(on.points().get(18), 19.5, 1.3 - 0.008 * 36);
        assertThat(on.measuredTo()).isCloseTo(9.5 * DEGREE, within(1e-12));
        // Already higher than expected: five thousandths more.
        assertThat(run(cut).continuedLike(run(whole), -0.5).peak().lift())
                .isCloseTo(run(cut).last().lift() + 0.005, within(1e-9));
    }

    /** A straight run set half a degree off passes zero at zero once both sides are averaged; its slope stays. */
    @Test
    void mirrored() {
        double[] pairs = new double[2 * 21];
        for (int i = 0; i <= 20; i++) {
            pairs[2 * i] = i - 10;
            pairs[2 * i + 1] = 0.1 * (i - 10 - 0.5);
        }
        LiftRun run = run(pairs).mirrored();
        int size = run.points().size();
        assertThat(size).isEqualTo(21);
        for (int i = 0; i < size; i++) {
            Point point = run.points().get(i);
            Point other = run.points().get(size - 1 - i);
            assertThat(point.alpha()).isCloseTo(-other.alpha(), within(1e-12));
            assertThat(point.lift()).isCloseTo(-other.lift(), within(1e-12));
            if (Math.abs(point.alpha()) < 5.9 * DEGREE) {
                assertThat(point.lift()).isCloseTo(0.1 * point.alpha() / DEGREE, within(1e-9));
            }
        }
        // Near the end of the other side the upper side stands alone.
        isAt(run.last(), 10, 0.95);
        isAt(run.points().get(18), 8, 0.75 + 0.05 * 0.5);
        assertThat(run.measuredFrom()).isCloseTo(-10 * DEGREE, within(1e-12));
        LiftRun upper = run(0, 0.02, 5, 0.52, 10, 1).mirrored();
        isAt(upper.last(), 10, 1);
        isAt(upper.points().get(0), -10, -1);
    }

    /** Peak, stall and zero lift of a run by itself: the crossing of a straight line. */
    @Test
    void figuresOfARun() {
        RunFigures figures = RunFigures.of(polar(-4, -0.3, -2, -0.05, 0, 0.15, 5, 0.7, 10, 1.2, 12, 1.0));
        assertThat(figures.maxLift()).isEqualTo(1.2);
        assertThat(figures.stallAngle()).isCloseTo(10 * DEGREE, within(1e-12));
        assertThat(figures.reachesPeak()).isTrue();
        assertThat(figures.zeroLiftAngle().orElseThrow()).isCloseTo(-1.5 * DEGREE, within(1e-12));
        assertThat(RunFigures.of(polar(0, 0.2, 5, 0.7)).zeroLiftAngle()).isEmpty();
        assertThat(RunFigures.of(polar(0, -0.1, 1, 0, 5, 0.4)).zeroLiftAngle().orElseThrow())
                .isCloseTo(DEGREE, within(1e-12));
    }
}
