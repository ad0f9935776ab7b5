package throwline.liftingline;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The strips into which the span is cut, from the left tip to the right tip; always an even number and an edge in the
 * middle.
 *
 * <p>Inside every interval between bends of the outline and ends of surfaces the edges follow the cosine rule, and each
 * control point lies at the middle angle of its strip, not at its midpoint: with midpoints the error falls with the
 * first power of the number of strips only, with middle angles with the second (shown by the convergence test).
 * Intervals share the strips in proportion to the square root of their length, at least three each.
 */
public final class SpanGrid {

    private static final int FEWEST_PER_INTERVAL = 3;

    private final Planform planform;
    private final double[] edges;
    private final double[] controls;
    private final double[] chords;
    private final double[] twists;
    private final double[] quarterChords;
    private final double[] sweeps;
    private final double[] narrowings;
    private final double area;
    private final double meanChord;

    private SpanGrid(Planform planform, double[] rightEdges, double[] rightControls) {
        this.planform = planform;
        int half = rightControls.length;
        edges = new double[2 * half + 1];
        controls = new double[2 * half];
        chords = new double[2 * half];
        twists = new double[2 * half];
        quarterChords = new double[2 * half];
        sweeps = new double[2 * half];
        narrowings = new double[2 * half];
        for (int i = 0; i <= half; i++) {
            edges[half + i] = rightEdges[i];
            edges[half - i] = -rightEdges[i];
        }
        double areaSum = 0;
        double squareSum = 0;
        for (int i = 0; i < half; i++) {
            double y = rightControls[i];
            set(half + i, y, y);
            set(half - 1 - i, -y, y);
            double width = rightEdges[i + 1] - rightEdges[i];
            areaSum += 2 * chords[half + i] * width;
            squareSum += 2 * chords[half + i] * chords[half + i] * width;
        }
        area = areaSum;
        meanChord = squareSum / areaSum;
    }

    private void set(int i, double y, double distance) {
        controls[i] = y;
        chords[i] = planform.chord(distance);
        twists[i] = planform.twist(distance);
        quarterChords[i] = planform.quarterChord(distance);
        sweeps[i] = planform.sweep(distance);
        narrowings[i] = Math.pow(Math.cos(sweeps[i]), 2);
    }

    /**
     * Cuts a surface into strips.
     *
     * @param planform its shape
     * @param surfaceEnds distances from the middle at which a hinged surface begins or ends, m, any order
     * @param strips wanted number of strips over the whole span, at least 6; the grid may have a few more
     * @return the grid
     */
    public static SpanGrid of(Planform planform, double[] surfaceEnds, int strips) {
        if (strips < 2 * FEWEST_PER_INTERVAL) {
            throw new IllegalArgumentException("at least 6 strips, not " + strips);
        }
        double tip = planform.semiSpan();
        double[] cuts = DoubleStream.concat(
                        DoubleStream.of(0, tip),
                        DoubleStream.concat(Arrays.stream(planform.breaks()), Arrays.stream(surfaceEnds)))
                .filter(y -> y >= 0 && y <= tip)
                .sorted()
                .toArray();
        cuts = withoutTwins(cuts, tip * 1e-6);
        int[] shares = shares(cuts, strips / 2);
        int half = Arrays.stream(shares).sum();
        double[] edges = new double[half + 1];
        double[] controls = new double[half];
        int at = 0;
        for (int k = 0; k < shares.length; k++) {
            double middle = (cuts[k] + cuts[k + 1]) / 2;
            double radius = (cuts[k + 1] - cuts[k]) / 2;
            for (int i = 0; i < shares[k]; i++) {
                edges[at] = middle - radius * Math.cos(Math.PI * i / shares[k]);
                controls[at] = middle - radius * Math.cos(Math.PI * (i + 0.5) / shares[k]);
                at++;
            }
        }
        edges[half] = tip;
        return new SpanGrid(planform, edges, controls);
    }

    private static double[] withoutTwins(double[] sorted, double closest) {
        double[] kept = new double[sorted.length];
        int n = 0;
        for (double y : sorted) {
            if (n == 0 || y - kept[n - 1] > closest) {
                kept[n++] = y;
            }
        }
        return Arrays.copyOf(kept, n);
    }

    private static int[] shares(double[] cuts, int half) {
        double roots = 0;
        for (int k = 1; k < cuts.length; k++) {
            roots += Math.sqrt(cuts[k] - cuts[k - 1]);
        }
        int[] shares = new int[cuts.length - 1];
        for (int k = 0; k < shares.length; k++) {
            double share = half * Math.sqrt(cuts[k + 1] - cuts[k]) / roots;
            shares[k] = Math.max(FEWEST_PER_INTERVAL, (int) Math.round(share));
        }
        return shares;
    }

    /** Number of strips, even. */
    public int size() {
        return controls.length;
    }

    /** The strip on the other side. */
    public int mirror(int strip) {
        return controls.length - 1 - strip;
    }

    /** The shape that was cut. */
    public Planform planform() {
        return planform;
    }

    /** Edge, m, right positive; edges 0 to {@link #size()}. */
    public double edge(int i) {
        return edges[i];
    }

    /** Control point of a strip, m, right positive. */
    public double control(int strip) {
        return controls[strip];
    }

    /** All edges, not to be changed. */
    double[] edges() {
        return edges;
    }

    /** Width of a strip, m. */
    public double width(int strip) {
        return edges[strip + 1] - edges[strip];
    }

    /** Chord at the control point, m. */
    public double chord(int strip) {
        return chords[strip];
    }

    /** Incidence against the middle, rad, nose up positive. */
    public double twist(int strip) {
        return twists[strip];
    }

    /** Quarter chord behind that at the middle, m. */
    public double quarterChord(int strip) {
        return quarterChords[strip];
    }

    /** Sweep of the quarter-chord line, rad. */
    public double sweep(int strip) {
        return sweeps[strip];
    }

    /** Square of the cosine of that sweep: what it leaves of a section's lift and moment. */
    double narrowing(int strip) {
        return narrowings[strip];
    }

    /** Sum of the strips' areas, m^2. */
    public double area() {
        return area;
    }

    /** Mean aerodynamic chord over the strips, m. */
    public double meanChord() {
        return meanChord;
    }

    /** Quarter chord of the mean aerodynamic chord behind that at the middle, m: the strips' mean, weighted by area. */
    public double meanQuarterChord() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += chords[i] * width(i) * quarterChords[i];
        }
        return sum / area;
    }

    /** Span, m. */
    public double span() {
        return 2 * planform.semiSpan();
    }

    /** Span squared over area. */
    public double aspectRatio() {
        return span() * span() / area;
    }
}
