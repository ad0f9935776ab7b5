package throwline.sizing;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import throwline.numerics.Interpolation;

/**
 * Range of a deflection, trailing edge down positive.
 *
 * @param low furthest up, rad, not positive
 * @param high furthest down, rad, not negative
 */
public record Range(double low, double high) {

    /** Nearer than this to an end, a surface stands at it, rad. */
    private static final double AT_END = Math.toRadians(0.05);

    /** The nearest angle inside. */
    public double clamp(double angle) {
        return Interpolation.clamp(angle, low, high);
    }

    /** From end to end, rad. */
    public double width() {
        return high - low;
    }

    /** True where nothing can move. */
    public boolean isNothing() {
        return width() < AT_END;
    }

    /** True where an angle stands at the lower end and that end is not zero. */
    boolean isAtLow(double angle) {
        return low < -AT_END && angle < low + AT_END;
    }

    /** True where an angle stands at the upper end and that end is not zero. */
    boolean isAtHigh(double angle) {
        return high > AT_END && angle > high - AT_END;
    }

    /** So many angles from end to end, both included, and zero; one angle where nothing can move. */
    double[] spread(int count) {
        if (isNothing()) {
            return new double[] {0};
        }
        return DoubleStream.concat(
                        IntStream.range(0, count).mapToDouble(i -> low + width() * i / (count - 1)), DoubleStream.of(0))
                .map(a -> Math.abs(a) < AT_END ? 0 : a)
                .sorted()
                .distinct()
                .toArray();
    }
}
