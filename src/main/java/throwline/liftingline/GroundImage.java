package throwline.liftingline;

/**
 * The image of the bound vortex below the ground, for unit circulation over speed on every strip. It takes speed from the
 * air at the lifting line, and turns it up at the three-quarter chord.
 */
final class GroundImage {

    private final double[][] loss;
    private final double[][] upwash;

    private GroundImage(int n) {
        loss = new double[n][n];
        upwash = new double[n][n];
    }

    /** No image. */
    static GroundImage none() {
        return new GroundImage(0);
    }

    /** The image below a surface where its ground asks for it, of all strips. */
    static GroundImage of(SpanGrid grid, Ground ground) {
        if (!ground.isNear() || !ground.boundImages()) {
            return none();
        }
        int n = grid.size();
        GroundImage image = new GroundImage(n);
        double apart = 2 * ground.height();
        for (int i = 0; i < n; i++) {
            double back = grid.chord(i) / 2;
            double distance = Math.hypot(apart, back);
            for (int j = 0; j < n; j++) {
                double left = grid.control(i) - grid.edge(j);
                double right = grid.control(i) - grid.edge(j + 1);
                image.loss[i][j] = segment(left, right, apart) / apart;
                image.upwash[i][j] = segment(left, right, distance) * back / (distance * distance);
            }
        }
        return image;
    }

    /** The same for loads that are alike on both sides: right half only. */
    GroundImage folded() {
        GroundImage half = new GroundImage(loss.length / 2);
        fold(loss, half.loss);
        fold(upwash, half.upwash);
        return half;
    }

    private static void fold(double[][] whole, double[][] half) {
        int m = half.length;
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                half[i][j] = whole[m + i][m + j] + whole[m + i][m - 1 - j];
            }
        }
    }

    /** True where there is an image. */
    boolean acts() {
        return loss.length > 0;
    }

    /** All rows of {@link #loss(int)}. */
    double[][] loss() {
        return loss;
    }

    /** All rows of {@link #upwash(int)}. */
    double[][] upwash() {
        return upwash;
    }

    /** Speed over the reference speed that each strip takes from a strip, 1/m. */
    double[] loss(int strip) {
        return loss[strip];
    }

    /** Angle by which each strip turns the air at a strip up, rad/m. */
    double[] upwash(int strip) {
        return upwash[strip];
    }

    /** Biot-Savart factor of a straight segment at a distance from its line, without the 1/distance. */
    private static double segment(double left, double right, double distance) {
        double far = distance * distance;
        return (left / Math.sqrt(left * left + far) - right / Math.sqrt(right * right + far)) / (4 * Math.PI);
    }
}
