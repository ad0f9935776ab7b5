package throwline.liftingline;

/**
 * Depth to which the wake of a wing has sunk at one place of the span, for many solutions: what every vortex does to it
 * depends on the distance behind the wing alone, which hardly changes. It is worked out at Chebyshev's places of a
 * range of distances once, and read from the polynomial through them (barycentric formula of J.-P. Berrut and L. N.
 * Trefethen, SIAM Review 46, 2004, from memory). Immutable.
 */
public final class SunkSheet {

    /** Places: the sinking to nine figures where the farthest distance is up to twice the nearest. */
    private static final int PLACES = 9;

    private final double nearest;
    private final double farthest;
    private final double y;
    private final double core;
    private final double[] places = new double[PLACES];
    private final double[][] shares = new double[PLACES][];

    /**
     * @param grid the wing
     * @param ground below it
     * @param nearest distance behind its quarter chord, m, behind the trailing edge
     * @param farthest such a distance, farther
     * @param y right of the middle, m
     * @param core as in {@link WakeSheet#downwash}, m
     */
    public SunkSheet(SpanGrid grid, Ground ground, double nearest, double farthest, double y, double core) {
        this.nearest = nearest;
        this.farthest = farthest;
        this.y = y;
        this.core = core;
        for (int k = 0; k < PLACES; k++) {
            places[k] = (nearest + farthest) / 2 + (farthest - nearest) / 2 * Math.cos(Math.PI * k / (PLACES - 1));
            shares[k] = WakeSheet.sinkShares(grid, ground, places[k], y, core);
        }
    }

    /**
     * How far a sheet has sunk; the same as {@link WakeSheet#sink}.
     *
     * @param sheet the wake of a solution of this wing above this ground
     * @param x downstream of the quarter chord, m
     */
    public double at(WakeSheet sheet, double x) {
        if (!(x >= nearest && x <= farthest)) {
            return sheet.sink(x, y, core);
        }
        double above = 0;
        double below = 0;
        for (int k = 0; k < PLACES; k++) {
            double sunk = sheet.sunk(shares[k]);
            if (x == places[k]) {
                return sunk;
            }
            double end = k == 0 || k == PLACES - 1 ? 0.5 : 1;
            double weight = (k % 2 == 0 ? end : -end) / (x - places[k]);
            above += weight * sunk;
            below += weight;
        }
        return above / below;
    }
}
