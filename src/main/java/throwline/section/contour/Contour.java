package throwline.section.contour;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import throwline.section.AirfoilShape;
import throwline.section.AirfoilShape.Corner;

/**
 * Closed outline of a section on a chord of 1: two dense polygons from the nose at (0, 0) to one trailing edge at (1, 0),
 * or where a surface has taken it. The outline is a cubic spline in arc length through the corners. Immutable.
 */
public final class Contour {

    /** Points of a surface: between two the outline leaves their chord by less than 1e-6. */
    private static final int DENSE = 1000;

    /** A trailing edge of some thickness is closed from here on (PRACTICE). */
    private static final double CLOSED_FROM = 0.4;

    /** Thinner trailing edges than this, here, make the two surfaces' equations alike (PRACTICE). */
    private static final double THIN_AT = 0.94;

    private static final double THINNEST = 0.0065;

    private final List<Corner> upper;
    private final List<Corner> lower;

    private Contour(List<Corner> upper, List<Corner> lower) {
        this.upper = List.copyOf(upper);
        this.lower = List.copyOf(lower);
    }

    /** The outline of a shape with its trailing edge closed. */
    public static Contour of(AirfoilShape shape) {
        List<Corner> loop = new ArrayList<>();
        for (int i = shape.upper().size() - 1; i >= 0; i--) {
            add(loop, shape.upper().get(i));
        }
        shape.lower().forEach(corner -> add(loop, corner));
        return splined(loop).closed();
    }

    /**
     * An outline given by a formula.
     *
     * @param upper from the nose at (0, 0) to the trailing edge at (1, 0), dense
     * @param lower likewise
     */
    public static Contour ofDense(List<Corner> upper, List<Corner> lower) {
        return new Contour(upper, lower);
    }

    private static void add(List<Corner> loop, Corner corner) {
        if (loop.isEmpty() || distance(loop.get(loop.size() - 1), corner) > 1e-9) {
            loop.add(corner);
        }
    }

    private static double distance(Corner a, Corner b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    private static Contour splined(List<Corner> loop) {
        double[] s = new double[loop.size()];
        for (int i = 1; i < s.length; i++) {
            s[i] = s[i - 1] + distance(loop.get(i), loop.get(i - 1));
        }
        SplineInterpolator splines = new SplineInterpolator();
        PolynomialSplineFunction x =
                splines.interpolate(s, loop.stream().mapToDouble(Corner::x).toArray());
        PolynomialSplineFunction y =
                splines.interpolate(s, loop.stream().mapToDouble(Corner::y).toArray());
        double end = s[s.length - 1];
        Corner edge = new Corner(0.5 * (x.value(0) + x.value(end)), 0.5 * (y.value(0) + y.value(end)));
        double nose = farthest(x, y, s, edge);
        Corner front = new Corner(x.value(nose), y.value(nose));
        return new Contour(side(x, y, nose, 0, front, edge), side(x, y, nose, end, front, edge));
    }

    /** Arc length of the point farthest from the trailing edge, found in finer and finer steps. */
    private static double farthest(PolynomialSplineFunction x, PolynomialSplineFunction y, double[] s, Corner edge) {
        double low = s[0];
        double high = s[s.length - 1];
        double best = low;
        for (int round = 0; round < 5; round++) {
            double step = (high - low) / DENSE;
            double most = 0;
            for (int i = 0; i <= DENSE; i++) {
                double at = Math.min(low + i * step, s[s.length - 1]);
                double away = Math.hypot(x.value(at) - edge.x(), y.value(at) - edge.y());
                if (away > most) {
                    most = away;
                    best = at;
                }
            }
            low = Math.max(s[0], best - 2 * step);
            high = Math.min(s[s.length - 1], best + 2 * step);
        }
        return best;
    }

    private static List<Corner> side(
            PolynomialSplineFunction x,
            PolynomialSplineFunction y,
            double nose,
            double end,
            Corner front,
            Corner edge) {
        double chord = distance(front, edge);
        double cos = (edge.x() - front.x()) / chord;
        double sin = (edge.y() - front.y()) / chord;
        List<Corner> side = new ArrayList<>(DENSE + 1);
        for (int i = 0; i <= DENSE; i++) {
            double at = nose + (end - nose) * 0.5 * (1 - Math.cos(Math.PI * i / DENSE));
            double dx = (x.value(at) - front.x()) / chord;
            double dy = (y.value(at) - front.y()) / chord;
            side.add(new Corner(dx * cos + dy * sin, dy * cos - dx * sin));
        }
        return side;
    }

    private Contour closed() {
        Contour shut = new Contour(shut(upper), shut(lower));
        double missing = Math.max(0, THINNEST - shut.thicknessAt(THIN_AT));
        return new Contour(filled(shut.upper, 0.5 * missing), filled(shut.lower, -0.5 * missing));
    }

    /** Moved at the back so that it ends at (1, 0). */
    private static List<Corner> shut(List<Corner> side) {
        Corner end = side.get(side.size() - 1);
        return side.stream()
                .map(c -> {
                    double share = Math.max(0, (c.x() - CLOSED_FROM) / (end.x() - CLOSED_FROM));
                    return new Corner(c.x() + share * (1 - end.x()), c.y() - share * end.y());
                })
                .toList();
    }

    private static List<Corner> filled(List<Corner> side, double bulge) {
        return side.stream()
                .map(c -> new Corner(c.x(), c.y() + bulge * fill(c.x())))
                .toList();
    }

    private static double fill(double x) {
        return x <= 0 ? 0 : Math.pow(x / THIN_AT, 8) * (1 - x) / (1 - THIN_AT);
    }

    /**
     * This contour with a surface moved.
     *
     * @param chordFraction chord behind the hinge
     * @param deflection rad, trailing edge down positive, small enough that the bend stays open (40 degrees)
     */
    public Contour deflected(double chordFraction, double deflection) {
        double hinge = 1 - chordFraction;
        HingedContour bend = new HingedContour(hinge, meanAt(hinge), deflection);
        return deflection == 0 ? this : new Contour(bend.turned(upper, 1), bend.turned(lower, -1));
    }

    /** Thickness at a station of the chord. */
    public double thicknessAt(double x) {
        return heightAt(upper, x) - heightAt(lower, x);
    }

    /** Height of the mean line at a station of the chord. */
    public double meanAt(double x) {
        return 0.5 * (heightAt(upper, x) + heightAt(lower, x));
    }

    private static double heightAt(List<Corner> side, double x) {
        int i = side.size() - 1;
        while (i > 1 && side.get(i - 1).x() > x) {
            i--;
        }
        Corner a = side.get(i - 1);
        Corner b = side.get(i);
        return a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
    }

    /** From the nose to the trailing edge over the top. */
    public List<Corner> upper() {
        return upper;
    }

    /** From the nose to the trailing edge along the bottom. */
    public List<Corner> lower() {
        return lower;
    }

    /** Largest thickness. */
    public double thickness() {
        double most = 0;
        for (int i = 1; i < 100; i++) {
            most = Math.max(most, thicknessAt(i / 100.0));
        }
        return most;
    }
}
