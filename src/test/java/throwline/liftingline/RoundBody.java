package throwline.liftingline;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A wing of span 2 and constant chord through the middle of a long round body, flaps beside it moved, everything else along the
 * air: horseshoe vortices outside the body and their images at the inverse points of its circle, which leave no flow through it
 * (circle theorem). Section slope 2 pi. Shares nothing with the lifting line (methods manual 6.8).
 */
final class RoundBody {

    private static final int PER_INTERVAL = 60;

    private final double radius;
    private final double[] edges;
    private final double[] circulation;

    /**
     * @param radius of the body, half the span being 1
     * @param from inner end of the flaps, not inside the body
     * @param to outer end
     * @param shift of the flaps' zero-lift angle, rad
     */
    RoundBody(double chord, double radius, double from, double to, double shift) {
        this.radius = radius;
        double[] cuts = from > radius ? new double[] {radius, from, to, 1} : new double[] {radius, to, 1};
        int n = PER_INTERVAL * (cuts.length - 1);
        edges = new double[n + 1];
        double[] controls = new double[n];
        for (int i = 0; i < n; i++) {
            int k = i / PER_INTERVAL;
            double angle = Math.PI * (i % PER_INTERVAL) / PER_INTERVAL;
            double half = (cuts[k + 1] - cuts[k]) / 2;
            edges[i] = cuts[k] + half - half * Math.cos(angle);
            controls[i] = cuts[k] + half - half * Math.cos(angle + Math.PI / (2.0 * PER_INTERVAL));
        }
        edges[n] = 1;
        double[][] equations = new double[n][n];
        double[] flap = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double wash = wash(controls[i], edges[j]) - wash(controls[i], edges[j + 1]);
                equations[i][j] = Math.PI * chord * wash + (i == j ? 1 : 0);
            }
            flap[i] = controls[i] > from && controls[i] < to ? Math.PI * chord * shift : 0;
        }
        circulation = new LUDecomposition(new Array2DRowRealMatrix(equations, false))
                .getSolver()
                .solve(new ArrayRealVector(flap, false))
                .toArray();
    }

    /** Downwash at the line of a pair of trailing vortices of unit strength and of its image. */
    private double wash(double y, double edge) {
        return pair(y, edge) - (radius > 0 ? pair(y, radius * radius / edge) : 0);
    }

    private static double pair(double y, double edge) {
        return (1 / (y - edge) - 1 / (y + edge)) / (4 * Math.PI);
    }

    /** Lift of wing and body over dynamic pressure: circulation times the way between a vortex and its image. */
    double lift() {
        double sum = 0;
        for (int i = 0; i < circulation.length; i++) {
            sum += 4 * circulation[i] * (reach(edges[i + 1]) - reach(edges[i]));
        }
        return sum;
    }

    private double reach(double edge) {
        return edge - (edge == 0 ? 0 : radius * radius / edge);
    }

    /** Downwash behind the body, which ends there: its images have met on the axis, the circulation goes through. */
    double downwash(double x, double y, double core) {
        double[] strengths = Arrays.copyOf(circulation, edges.length);
        for (int k = 1; k < edges.length; k++) {
            strengths[k] -= circulation[k - 1];
        }
        strengths[0] = 0;
        double sum = 0;
        for (int k = 1; k < edges.length; k++) {
            sum += strengths[k] * (vortex(x, y - edges[k], core) - vortex(x, y + edges[k], core));
        }
        return sum;
    }

    private static double vortex(double x, double aside, double core) {
        double far = x * x + core * core;
        double distance = Math.hypot(x, aside);
        double swirl = (1 + x / distance) / (aside * aside + core * core);
        return aside * (swirl + x / (far * Math.sqrt(aside * aside + far))) / (4 * Math.PI);
    }
}
