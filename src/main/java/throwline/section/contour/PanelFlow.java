package throwline.section.contour;

import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import throwline.numerics.Interpolation;

/**
 * Flow without friction round a contour at any angle of attack: straight panels of constant sources and doublets, no
 * potential of disturbance inside (L. Morino, C.-C. Kuo, AIAA Journal 12, 1974), the potential's jump carried off the
 * trailing edge along its bisector. Speeds are over that of the air far away, lengths in chords. Immutable.
 */
public final class PanelFlow {

    private final PanelNodes nodes;
    private final double[][] sources;
    private final double[] wake;
    private final DecompositionSolver solver;
    private final double[] along;
    private final double[] across;
    private final double jumpAlong;
    private final double jumpAcross;

    /** The flow round a contour. */
    public PanelFlow(Contour contour) {
        this(PanelNodes.of(contour));
    }

    /** The flow round these panels. */
    public PanelFlow(PanelNodes nodes) {
        this.nodes = nodes;
        int n = nodes.panels();
        RealMatrix doublets = MatrixUtils.createRealMatrix(n, n);
        sources = new double[n][n];
        wake = new double[n];
        double[] edge = nodes.edgeJump();
        for (int i = 0; i < n; i++) {
            double x = nodes.middleX(i);
            double y = nodes.middleY(i);
            wake[i] = nodes.wakeDoublet(x, y);
            for (int j = 0; j < n; j++) {
                double own = i == j ? 0.5 : nodes.doublet(j, x, y);
                doublets.setEntry(i, j, own + wake[i] * edge[j]);
                sources[i][j] = nodes.source(j, x, y);
            }
        }
        solver = new LUDecomposition(doublets).getSolver();
        double[] first = potential(1, 0);
        double[] second = potential(0, 1);
        jumpAlong = dot(edge, first);
        jumpAcross = dot(edge, second);
        along = speeds(first, 1, 0);
        across = speeds(second, 0, 1);
    }

    private double[] potential(double u, double v) {
        int n = nodes.panels();
        double[] right = new double[n];
        for (int j = 0; j < n; j++) {
            double out = -(u * nodes.normalX(j) + v * nodes.normalY(j));
            for (int i = 0; i < n; i++) {
                right[i] += sources[i][j] * out;
            }
        }
        return solver.solve(new ArrayRealVector(right, false)).toArray();
    }

    /** Speed along the outline at the nodes, positive towards the upper trailing edge. */
    private double[] speeds(double[] potential, double u, double v) {
        int n = nodes.panels();
        double[] speed = new double[n + 1];
        for (int i = 1; i < n; i++) {
            double here = potential[i] + u * nodes.middleX(i) + v * nodes.middleY(i);
            double before = potential[i - 1] + u * nodes.middleX(i - 1) + v * nodes.middleY(i - 1);
            speed[i] = (here - before) / (0.5 * (nodes.length(i) + nodes.length(i - 1)));
        }
        double top = speed[n - 1] + (speed[n - 1] - speed[n - 2]) * nodes.length(n - 1) / nodes.length(n - 2);
        double bottom = speed[1] + (speed[1] - speed[2]) * nodes.length(0) / nodes.length(1);
        speed[n] = 0.5 * (top - bottom);
        speed[0] = -speed[n];
        return speed;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** The panels. */
    public PanelNodes nodes() {
        return nodes;
    }

    /** Lift coefficient at an angle of attack in rad. */
    public double lift(double alpha) {
        return 2 * (jumpAlong * Math.cos(alpha) + jumpAcross * Math.sin(alpha));
    }

    /** Angle of attack without lift, rad. */
    public double zeroLiftAngle() {
        return -Math.atan2(jumpAlong, jumpAcross);
    }

    /** Lift's rise with angle at zero lift, per rad. */
    public double liftSlope() {
        return 2 * Math.hypot(jumpAlong, jumpAcross);
    }

    /** Angle of attack at a lift coefficient, rad. */
    public double angleOf(double lift) {
        return zeroLiftAngle() + Math.asin(Interpolation.clamp(lift / liftSlope(), -1, 1));
    }

    /** Speeds along the outline at the nodes, from the trailing edge along the bottom to the nose and over the top. */
    public double[] speeds(double alpha) {
        double[] speed = new double[along.length];
        Arrays.setAll(speed, i -> along[i] * Math.cos(alpha) + across[i] * Math.sin(alpha));
        return speed;
    }

    /** Moment coefficient about the quarter chord, nose up positive. */
    public double moment(double alpha) {
        double[] speed = speeds(alpha);
        double sum = 0;
        for (int i = 0; i < nodes.panels(); i++) {
            double square = (speed[i] * speed[i] + speed[i] * speed[i + 1] + speed[i + 1] * speed[i + 1]) / 3;
            double push = (1 - square) * nodes.length(i);
            sum += push * ((nodes.middleX(i) - 0.25) * nodes.normalY(i) - nodes.middleY(i) * nodes.normalX(i));
        }
        return sum;
    }

    /** Largest square of the speed over the upper surface's front. */
    public double peak(double alpha) {
        return Arrays.stream(speeds(alpha), nodes.panels() / 2, along.length)
                .map(v -> v * v)
                .max()
                .orElse(0);
    }

    /** Lift coefficient at which the square of the highest speed reaches a value; empty angles up to 30 degrees are NaN. */
    public double liftAtPeak(double square) {
        double low = zeroLiftAngle();
        double step = Math.toRadians(0.5);
        double most = low + Math.toRadians(40);
        double angle = low;
        while (peak(angle) < square && angle < most) {
            angle += step;
        }
        double above = angle;
        double below = angle - step;
        for (int i = 0; i < 30; i++) {
            double middle = 0.5 * (above + below);
            if (peak(middle) < square) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return lift(above);
    }
}
