package throwline.liftingline;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * A flat plate of span 1 as a lattice of horseshoe vortices: bound vortex at a quarter of every panel, no flow through it at
 * three quarters, straight quarter-chord line, places over the span by equal angles. Shares nothing with the lifting line:
 * it is where the factors of the chord correction come from (methods manual 19.2).
 */
final class VortexLattice {

    private static final int ALONG_CHORD = 4;
    private static final int ALONG_SPAN = 32;
    private static final Vector3D FAR = new Vector3D(1e4, 0, 0);

    private final double aspect;
    private final boolean elliptic;
    private final int panels = ALONG_CHORD * ALONG_SPAN;
    private final Vector3D[] left = new Vector3D[panels];
    private final Vector3D[] right = new Vector3D[panels];
    private final Vector3D[] control = new Vector3D[panels];
    private final DecompositionSolver solver;

    VortexLattice(double aspect, boolean elliptic) {
        this.aspect = aspect;
        this.elliptic = elliptic;
        for (int j = 0; j < ALONG_SPAN; j++) {
            double inner = place(j);
            double outer = place(j + 1);
            double middle = place(j + 0.5);
            for (int i = 0; i < ALONG_CHORD; i++) {
                int panel = j * ALONG_CHORD + i;
                left[panel] = new Vector3D(chord(inner) * back(i + 0.25), inner, 0);
                right[panel] = new Vector3D(chord(outer) * back(i + 0.25), outer, 0);
                control[panel] = new Vector3D(chord(middle) * back(i + 0.75), middle, 0);
            }
        }
        double[][] wash = new double[panels][panels];
        for (int i = 0; i < panels; i++) {
            for (int k = 0; k < panels; k++) {
                wash[i][k] = segment(control[i], left[k], right[k])
                        + segment(control[i], right[k], right[k].add(FAR))
                        + segment(control[i], left[k].add(FAR), left[k]);
            }
        }
        solver = new LUDecomposition(new Array2DRowRealMatrix(wash, false)).getSolver();
    }

    private static double place(double number) {
        return -0.5 * Math.cos(Math.PI * number / ALONG_SPAN);
    }

    private static double back(double panel) {
        return panel / ALONG_CHORD - 0.25;
    }

    private double chord(double y) {
        return elliptic ? 4 / (Math.PI * aspect) * Math.sqrt(Math.max(0, 1 - 4 * y * y)) : 1 / aspect;
    }

    /** Upward velocity of a straight vortex of unit strength (Biot and Savart). */
    private static double segment(Vector3D at, Vector3D from, Vector3D to) {
        Vector3D a = at.subtract(from);
        Vector3D b = at.subtract(to);
        Vector3D across = a.crossProduct(b);
        double size = across.getNormSq();
        if (size < 1e-18) {
            return 0;
        }
        double along = to.subtract(from).dotProduct(a.normalize().subtract(b.normalize()));
        return across.getZ() / size * along / (4 * Math.PI);
    }

    /** Lift slope, per rad. */
    double liftSlope() {
        RealVector circulation = solver.solve(new ArrayRealVector(panels, -1));
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            sum += circulation.getEntry(i) * (right[i].getY() - left[i].getY());
        }
        return Math.abs(2 * aspect * sum);
    }

    /** Rolling moment coefficient over the tips' helix angle in a steady roll, negative. */
    double rollDamping() {
        RealVector angle = new ArrayRealVector(panels);
        for (int i = 0; i < panels; i++) {
            angle.setEntry(i, -2 * control[i].getY());
        }
        RealVector circulation = solver.solve(angle);
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            double middle = (left[i].getY() + right[i].getY()) / 2;
            sum += circulation.getEntry(i) * (right[i].getY() - left[i].getY()) * middle;
        }
        return -Math.abs(2 * aspect * sum);
    }
}
