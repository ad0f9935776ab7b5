package throwline.liftingline;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * The lifting-line equation of Prandtl solved another way: circulation as a sine series over the angle of the span,
 * collocated (Glauert, The Elements of Aerofoil and Airscrew Theory, from memory). Linear sections of slope 2 pi, span 2 m.
 * Shares nothing with the product.
 */
final class SineSeries {

    private static final double SPAN = 2;

    private final double[] a;

    /**
     * @param chord over distance from the middle, right positive, m
     * @param angle from zero lift over distance from the middle, right positive, rad
     * @param terms of the series
     */
    SineSeries(DoubleUnaryOperator chord, DoubleUnaryOperator angle, int terms) {
        double[][] rows = new double[terms][terms];
        double[] side = new double[terms];
        for (int k = 0; k < terms; k++) {
            double t = Math.PI * (k + 1) / (terms + 1);
            double y = SPAN / 2 * Math.cos(t);
            double strip = 4 * SPAN / (2 * Math.PI * chord.applyAsDouble(y));
            for (int n = 1; n <= terms; n++) {
                rows[k][n - 1] = Math.sin(n * t) * (strip + n / Math.sin(t));
            }
            side[k] = angle.applyAsDouble(y);
        }
        a = new LUDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(side, false))
                .toArray();
    }

    /** Lift over dynamic pressure, m^2. */
    double lift() {
        return Math.PI * SPAN * SPAN * a[0];
    }

    /** Induced drag over dynamic pressure, m^2. */
    double drag() {
        double sum = 0;
        for (int n = 1; n <= a.length; n++) {
            sum += n * a[n - 1] * a[n - 1];
        }
        return Math.PI * SPAN * SPAN * sum;
    }

    /** Rolling moment over dynamic pressure, m^3, right wing down positive. */
    double rolling() {
        return -Math.PI * SPAN * SPAN * SPAN / 4 * a[1];
    }

    /** Yawing moment of the induced drag over dynamic pressure, m^3, nose right positive. */
    double yawing() {
        double sum = 0;
        for (int n = 1; n < a.length; n++) {
            sum += (2 * n + 1) * a[n - 1] * a[n];
        }
        return Math.PI * SPAN * SPAN * SPAN / 4 * sum;
    }
}
