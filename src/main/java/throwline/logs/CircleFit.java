package throwline.logs;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/**
 * Circle through ground velocities: its centre is the wind, its radius the airspeed. Started by least squares of
 * {@code vx^2 + vy^2 = 2 a vx + 2 b vy + c} (I. Kasa, MEMORY), finished by Gauss-Newton on the distances from the circle (W.
 * Gander, G. H. Golub, R. Strebel, BIT 34, 1994, MEMORY). Methods manual 22.3.
 *
 * @param east of the centre, m/s
 * @param north of the centre, m/s
 * @param radius m/s
 * @param scatter root mean square of the distances from it, m/s; infinite where no circle was found
 */
public record CircleFit(double east, double north, double radius, double scatter) {

    private static final int ROUNDS = 30;
    private static final double SETTLED = 1e-9;

    /**
     * The circle.
     *
     * @param x eastward velocities, m/s, at least three that do not lie on a line
     * @param y northward velocities, m/s
     */
    public static CircleFit of(double[] x, double[] y) {
        double[] start = algebraic(x, y);
        double a = start[0];
        double b = start[1];
        double r = start[2];
        boolean settled = false;
        for (int round = 0; round < ROUNDS && !settled; round++) {
            double[][] normal = new double[3][3];
            double[] right = new double[3];
            for (int i = 0; i < x.length; i++) {
                double apart = Math.hypot(x[i] - a, y[i] - b);
                double[] slope = {-(x[i] - a) / apart, -(y[i] - b) / apart, -1};
                add(normal, right, slope, -(apart - r));
            }
            double[] step = solve(normal, right);
            a += step[0];
            b += step[1];
            r += step[2];
            settled = Math.abs(step[0]) + Math.abs(step[1]) + Math.abs(step[2]) < SETTLED * r;
        }
        if (!settled) {
            return new CircleFit(a, b, r, Double.POSITIVE_INFINITY);
        }
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += Math.pow(Math.hypot(x[i] - a, y[i] - b) - r, 2);
        }
        return new CircleFit(a, b, r, Math.sqrt(sum / x.length));
    }

    private static double[] algebraic(double[] x, double[] y) {
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (int i = 0; i < x.length; i++) {
            add(normal, right, new double[] {2 * x[i], 2 * y[i], 1}, x[i] * x[i] + y[i] * y[i]);
        }
        double[] found = solve(normal, right);
        return new double[] {found[0], found[1], Math.sqrt(found[2] + found[0] * found[0] + found[1] * found[1])};
    }

    private static void add(double[][] normal, double[] right, double[] slope, double value) {
        for (int j = 0; j < 3; j++) {
            right[j] += slope[j] * value;
            for (int k = 0; k < 3; k++) {
                normal[j][k] += slope[j] * slope[k];
            }
        }
    }

    private static double[] solve(double[][] normal, double[] right) {
        return new CholeskyDecomposition(new Array2DRowRealMatrix(normal, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    /**
     * The radius without the lag of the receiver: a first-order lag shrinks the circle by {@code sqrt(1 + (turn lag)^2)}.
     *
     * @param turn turn rate, rad/s
     * @param lag s
     */
    public double unlagged(double turn, double lag) {
        return radius * Math.hypot(1, turn * lag);
    }
}
