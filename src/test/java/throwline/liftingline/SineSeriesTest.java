package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Twenty smooth wings of a seeded generator by a sine series that shares nothing with the product. */
class SineSeriesTest {

    private static final int TERMS = 200;
    private static final int STRIPS = 160;

    @Test
    void twentySmoothWingsAgreeToFiveFigures() {
        Random random = new Random(1918);
        for (int k = 0; k < 20; k++) {
            double chord = between(random, 0.15, 0.5);
            double second = between(random, -0.5, 0.1);
            double fourth = between(random, -0.2, 0.1);
            DoubleUnaryOperator chords = y -> chord * (1 + second * y * y + fourth * Math.pow(y, 4));
            double[] twist = random.doubles(5, -0.06, 0.06).toArray();
            DoubleUnaryOperator angles = y -> 0.1
                    + twist[0]
                    + twist[1] * y
                    + twist[2] * y * y
                    + twist[3] * Math.pow(y, 3)
                    + twist[4] * Math.cos(2 * y);
            check("wing " + k, new SineSeries(chords, angles, TERMS), chords, angles);
        }
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static void check(String name, SineSeries series, DoubleUnaryOperator chords, DoubleUnaryOperator angles) {
        Loads coarse = loads(chords, angles, STRIPS);
        Loads fine = loads(chords, angles, 2 * STRIPS);
        double lift = series.lift();
        assertThat(extrapolated(coarse.lift(), fine.lift()) / lift).as(name).isCloseTo(1, offset(1e-5));
        assertThat(extrapolated(coarse.drag(), fine.drag()) / series.drag())
                .as(name)
                .isCloseTo(1, offset(1e-5));
        assertThat(extrapolated(coarse.rolling(), fine.rolling()))
                .as(name)
                .isCloseTo(series.rolling(), offset(1e-5 * Math.abs(lift)));
        assertThat(extrapolated(coarse.yawing(), fine.yawing()))
                .as(name)
                .isCloseTo(series.yawing(), offset(1e-5 * series.drag()));
    }

    /** The error falls with the square of the number of strips. */
    private static double extrapolated(double coarse, double fine) {
        return fine + (fine - coarse) / 3;
    }

    private static Loads loads(DoubleUnaryOperator chords, DoubleUnaryOperator angles, int strips) {
        TheoryWing wing = new TheoryWing(
                new FreePlanform(chords), new double[0], strips, y -> LawCurve.linear(angles.applyAsDouble(y)));
        return wing.at(0).about(0, 0, 0);
    }

    /** A chord that is the same function on both sides; twist goes into the sections, so that it may differ. */
    private record FreePlanform(DoubleUnaryOperator chords) implements Planform {

        @Override
        public double semiSpan() {
            return 1;
        }

        @Override
        public double[] breaks() {
            return new double[0];
        }

        @Override
        public double chord(double y) {
            return chords.applyAsDouble(y);
        }

        @Override
        public double twist(double y) {
            return 0;
        }

        @Override
        public double quarterChord(double y) {
            return 0;
        }

        @Override
        public double sweep(double y) {
            return 0;
        }

        @Override
        public double dihedral() {
            return 0;
        }
    }
}
