package throwline.correction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Weights of sets of wrong sources without an update for each. A wrong source adds to the readings' variances {@code S} along
 * a few columns {@code W} only, so that with {@code A = S^-1}, {@code G = W^T A W} and {@code D} what is added
 * {@code e^T S'^-1 e = e^T A e - v^T (D^-1 + G)^-1 v}, {@code v = W^T A e}, and {@code det S' = det S det D det(D^-1 + G)}
 * (matrix inversion and determinant lemmas, textbook).
 */
final class Screening {

    private final Sources sources;
    private final double[] added;
    private final double[] shifts;
    private final RealMatrix g;
    private final double[] v;
    private final double square;
    private final double logDeterminant;
    private final int[][] columns;

    /**
     * @param straight the readings
     * @param expected standard deviation that each was expected to have
     * @param sources what they came from
     */
    Screening(Linearised straight, double[] expected, Sources sources) {
        this.sources = sources;
        int rows = expected.length;
        List<double[]> all = new ArrayList<>();
        List<Double> more = new ArrayList<>();
        List<Double> shifted = new ArrayList<>();
        columns = new int[sources.size()][];
        for (int s = 0; s < columns.length; s++) {
            int first = all.size();
            for (int i : sources.readings(s)) {
                double[] unit = new double[rows];
                unit[i] = 1;
                all.add(unit);
                more.add(Math.pow(Sources.wrongNoise(expected[i]), 2) - Math.pow(straight.noise()[i], 2));
                shifted.add(0.0);
            }
            int factor = sources.factor(s);
            if (factor >= 0) {
                all.add(Arrays.stream(straight.slopes())
                        .mapToDouble(slope -> slope[factor])
                        .toArray());
                more.add(Math.pow(sources.wrongSd(factor), 2) - Math.pow(straight.sds()[factor], 2));
                shifted.add(sources.shift(factor));
            }
            columns[s] = IntStream.range(first, all.size()).toArray();
        }
        added = more.stream().mapToDouble(d -> d).toArray();
        shifts = shifted.stream().mapToDouble(d -> d).toArray();
        Linearised.Update none = straight.update();
        RealMatrix w = new Array2DRowRealMatrix(all.toArray(double[][]::new), false).transpose();
        RealMatrix solved = none.cholesky().getSolver().solve(w);
        g = w.transpose().multiply(solved);
        v = solved.transpose().operate(straight.misses());
        square = none.square();
        logDeterminant = none.logDeterminant();
    }

    /** Those of some sets whose weight is no less than the greatest by more than this, as a logarithm. */
    List<Hypothesis> likely(List<Hypothesis> hypotheses, double negligible) {
        double[] weights = hypotheses.stream().mapToDouble(this::weight).toArray();
        double best = Arrays.stream(weights).max().orElseThrow();
        List<Hypothesis> likely = new ArrayList<>();
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] > best - negligible) {
                likely.add(hypotheses.get(k));
            }
        }
        return likely;
    }

    /** Logarithm of the weight of a set. */
    double weight(Hypothesis hypothesis) {
        int[] taken = hypothesis.wrong().stream()
                .flatMapToInt(s -> Arrays.stream(columns[s]))
                .toArray();
        int n = taken.length;
        if (n == 0) {
            return -square / 2 - logDeterminant / 2;
        }
        double left = square;
        double[] along = new double[n];
        for (int a = 0; a < n; a++) {
            along[a] = v[taken[a]];
        }
        for (int c : taken) {
            if (shifts[c] != 0) {
                left -= 2 * shifts[c] * v[c];
                for (int d : taken) {
                    left += shifts[c] * shifts[d] * g.getEntry(c, d);
                }
                for (int a = 0; a < n; a++) {
                    along[a] -= shifts[c] * g.getEntry(taken[a], c);
                }
            }
        }
        double[][] m = new double[n][n];
        double determinant = logDeterminant;
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                m[a][b] = g.getEntry(taken[a], taken[b]);
            }
            m[a][a] += 1 / added[taken[a]];
            determinant += Math.log(added[taken[a]]);
        }
        CholeskyDecomposition root = new CholeskyDecomposition(new Array2DRowRealMatrix(m, false), 1e-8, 1e-14);
        double[] solved =
                root.getSolver().solve(new ArrayRealVector(along, false)).toArray();
        for (int a = 0; a < n; a++) {
            left -= along[a] * solved[a];
            determinant += 2 * Math.log(root.getL().getEntry(a, a));
        }
        return -left / 2 - determinant / 2 + sources.odds(hypothesis);
    }
}
