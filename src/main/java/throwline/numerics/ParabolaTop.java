package throwline.numerics;

import java.util.Optional;

/**
 * Top of a parabola.
 *
 * @param x where it is
 * @param y how high it is
 */
public record ParabolaTop(double x, double y) {

    /**
     * The top of the parabola through three points; empty where it has none.
     *
     * @param x three places, strictly rising
     * @param y as many values
     */
    public static Optional<ParabolaTop> through(double[] x, double[] y) {
        double before = (y[1] - y[0]) / (x[1] - x[0]);
        double after = (y[2] - y[1]) / (x[2] - x[1]);
        double bend = (after - before) / (x[2] - x[0]);
        if (!(bend < 0)) {
            return Optional.empty();
        }
        double top = (x[0] + x[1]) / 2 - before / (2 * bend);
        double off = top - x[1];
        return Optional.of(new ParabolaTop(top, y[1] - bend * off * off));
    }
}
