package throwline.liftingline;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One decomposition and solve of a full matrix of 80 rows by Commons Math: what the solver's times are compared with. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LibraryBenchmark {

    private RealMatrix matrix = new Array2DRowRealMatrix(1, 1);
    private RealVector side = new ArrayRealVector(1);

    /** Makes a matrix like those of the solver. */
    @Setup
    public void prepare() {
        SpanGrid grid = SpanGrid.of(TheoryPlanform.tapered(8, 0.6), LiftingLineBenchmark.ENDS, 80);
        double[][] full = new InfluenceMatrix(grid, Ground.none(), ChordCorrection.of(grid)).full();
        int n = 80;
        double[][] rows = new double[n][n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                rows[i][j] = (i == j ? 1 : 0) + Math.PI * grid.chord(i) * full[i][j];
            }
            right[i] = grid.chord(i);
        }
        matrix = new Array2DRowRealMatrix(rows, false);
        side = new ArrayRealVector(right, false);
    }

    /** One decomposition and solve. */
    @Benchmark
    public RealVector eightyRows() {
        return new LUDecomposition(matrix).getSolver().solve(side);
    }
}
