package throwline.liftingline;

/**
 * Downwash velocity at every control point for unit circulation over speed on every strip, per metre: entry {@code (i,
 * j)} times circulation over speed (m) of strip {@code j} is the downwash angle at strip {@code i}.
 *
 * <p>Each strip carries a horseshoe: two trailing vortices straight downstream from its edges. The bound vortices lie on
 * one straight line and induce nothing on it; a swept planform keeps this straight-line matrix, because swept bound
 * vortices in the matrix would destroy its diagonal dominance (see the package's notes). Ground adds the images of the
 * trailing vortices. Because each control point lies inside its own strip, every row is positive on the diagonal, not
 * positive elsewhere, and its sum is not negative; the chord correction only adds to that.
 */
public final class InfluenceMatrix {

    private final SpanGrid grid;
    private final Ground ground;
    private final ChordCorrection correction;
    private final double[][] wake;
    private final double[][] full;
    private final double[][] symmetric;
    private final Columns wakeColumns;
    private final Columns fullColumns;
    private final Columns symmetricColumns;
    private final GroundImage image;

    /**
     * The matrix of one surface.
     *
     * @param grid its strips
     * @param ground the ground below it
     * @param correction the chord correction
     */
    public InfluenceMatrix(SpanGrid grid, Ground ground, ChordCorrection correction) {
        this(grid, ground, correction, EndPlates.none());
    }

    /**
     * The matrix of one surface with plates at its ends.
     *
     * @param grid its strips
     * @param ground the ground below it
     * @param correction the chord correction
     * @param plates what stands at its ends
     */
    public InfluenceMatrix(SpanGrid grid, Ground ground, ChordCorrection correction, EndPlates plates) {
        this.grid = grid;
        this.ground = ground;
        this.correction = correction;
        int n = grid.size();
        wake = new double[n][n];
        image = GroundImage.of(grid, ground);
        double apart = 2 * ground.height();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double toLeft = grid.control(i) - grid.edge(j);
                double toRight = grid.control(i) - grid.edge(j + 1);
                double downwash = 1 / toLeft - 1 / toRight;
                if (ground.isNear()) {
                    downwash -=
                            toLeft / (toLeft * toLeft + apart * apart) - toRight / (toRight * toRight + apart * apart);
                }
                wake[i][j] = downwash / (4 * Math.PI * plates.widening());
            }
        }
        full = makeFull();
        symmetric = makeSymmetric();
        wakeColumns = new Columns(wake);
        fullColumns = new Columns(full);
        symmetricColumns = new Columns(symmetric);
    }

    /** The strips. */
    public SpanGrid grid() {
        return grid;
    }

    /** The ground. */
    public Ground ground() {
        return ground;
    }

    /** The image of the bound vortices below the ground. */
    GroundImage image() {
        return image;
    }

    /** Downwash angle at every strip from the wake alone, without the chord correction: what tilts the lift. */
    double[] wakeAngles(double[] circulation) {
        double[] angles = new double[circulation.length];
        wakeColumns.times(circulation, angles);
        return angles;
    }

    /** {@link #full} for products. */
    Columns fullColumns() {
        return fullColumns;
    }

    /** {@link #symmetric} for products. */
    Columns symmetricColumns() {
        return symmetricColumns;
    }

    /** The matrix that the sections feel, chord correction included, row by row; not to be changed. */
    double[][] full() {
        return full;
    }

    /** The same for loads that are alike on both sides: right half only, row by row; not to be changed. */
    double[][] symmetric() {
        return symmetric;
    }

    private double[][] makeFull() {
        int n = grid.size();
        double[][] matrix = new double[n][];
        for (int i = 0; i < n; i++) {
            matrix[i] = wake[i].clone();
            matrix[i][i] += own(i);
            matrix[i][grid.mirror(i)] += other(i);
        }
        return matrix;
    }

    private double[][] makeSymmetric() {
        int m = grid.size() / 2;
        double[][] matrix = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                matrix[i][j] = full[m + i][m + j] + full[m + i][m - 1 - j];
            }
        }
        return matrix;
    }

    private double own(int strip) {
        return (correction.even() + correction.odd() - 2) / (2 * Math.PI * grid.chord(strip));
    }

    private double other(int strip) {
        return (correction.even() - correction.odd()) / (2 * Math.PI * grid.chord(strip));
    }
}
