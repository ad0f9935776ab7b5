package throwline.section;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * Outline of an airfoil on a chord of 1: upper and lower surface over the same stations, and what thin-airfoil theory says
 * of its camber line. Immutable.
 */
public final class AirfoilShape {

    /** Stations at equal angles of the chord circle, close together at both ends. */
    private static final int STATIONS = 181;

    private final List<Corner> upper;
    private final List<Corner> lower;
    private final double[] x = new double[STATIONS];
    private final double[] camber = new double[STATIONS];
    private final double[] thickness = new double[STATIONS];

    /**
     * A corner of an outline, in chords.
     *
     * @param x from the nose backwards
     * @param y upwards
     */
    public record Corner(double x, double y) {}

    /**
     * A shape from its two surfaces.
     *
     * @param upper from nose to trailing edge, x strictly rising from about 0 to about 1
     * @param lower likewise
     */
    public AirfoilShape(List<Corner> upper, List<Corner> lower) {
        this.upper = List.copyOf(upper);
        this.lower = List.copyOf(lower);
        MonotoneCubic top = curve(upper);
        MonotoneCubic bottom = curve(lower);
        for (int i = 0; i < STATIONS; i++) {
            x[i] = 0.5 * (1 - Math.cos(theta(i)));
            double root = Math.sqrt(x[i]);
            camber[i] = 0.5 * (top.value(root) + bottom.value(root));
            thickness[i] = top.value(root) - bottom.value(root);
        }
    }

    /** The camber line of the four-digit family with its top at 40 % of the chord, and no thickness (NACA TR 460). */
    public static AirfoilShape ordinary(double camber) {
        return new AirfoilShape(line(camber), line(camber));
    }

    private static List<Corner> line(double camber) {
        double top = 0.4;
        return IntStream.rangeClosed(0, 200)
                .mapToObj(i -> {
                    double x = 0.5 * (1 - Math.cos(Math.PI * i / 200));
                    double ahead = camber / (top * top) * (2 * top * x - x * x);
                    double behind = camber / ((1 - top) * (1 - top)) * (1 - 2 * top + 2 * top * x - x * x);
                    return new Corner(x, x < top ? ahead : behind);
                })
                .toList();
    }

    /** Over the square root of x, which straightens the nose. */
    private static MonotoneCubic curve(List<Corner> surface) {
        return MonotoneCubic.through(
                surface.stream().mapToDouble(c -> Math.sqrt(Math.max(0, c.x()))).toArray(),
                surface.stream().mapToDouble(Corner::y).toArray());
    }

    private static double theta(int i) {
        return Math.PI * i / (STATIONS - 1);
    }

    /** Corners from nose to trailing edge over the top, as given. */
    public List<Corner> upper() {
        return upper;
    }

    /** Corners from nose to trailing edge along the bottom, as given. */
    public List<Corner> lower() {
        return lower;
    }

    /** Largest thickness over chord. */
    public double thickness() {
        return Arrays.stream(thickness).max().orElse(0);
    }

    /** Largest camber over chord, negative where the section hangs down. */
    public double camber() {
        double up = Arrays.stream(camber).max().orElse(0);
        double down = Arrays.stream(camber).min().orElse(0);
        return up >= -down ? up : down;
    }

    /** Zero-lift angle of the camber line by thin-airfoil theory (Houghton and Carpenter, section 4.4), rad. */
    public double zeroLiftAngle() {
        return -slopeIntegral(theta -> Math.cos(theta) - 1) / Math.PI;
    }

    /** Quarter-chord moment coefficient of the camber line, nose up positive; same source. */
    public double moment() {
        return -0.5 * slopeIntegral(theta -> Math.cos(theta) - Math.cos(2 * theta));
    }

    /** Integral over the chord circle of the camber line's slope times a weight, chord by chord. */
    private double slopeIntegral(DoubleUnaryOperator weight) {
        double sum = 0;
        for (int i = 1; i < STATIONS; i++) {
            double slope = (camber[i] - camber[i - 1]) / (x[i] - x[i - 1]);
            double middle = 0.5 * (theta(i) + theta(i - 1));
            sum += slope * weight.applyAsDouble(middle) * Math.PI / (STATIONS - 1);
        }
        return sum;
    }
}
