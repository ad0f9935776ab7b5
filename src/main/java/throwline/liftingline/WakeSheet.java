package throwline.liftingline;

import java.util.Arrays;

/**
 * The air behind a lifting surface, from its own circulation: bound vortices on the straight quarter-chord line, a sheet
 * of trailing vortices that leaves the trailing edge and sinks with its own downwash at the middle (NACA TR 651 finds
 * that this sinking may not be neglected and the rolling-up may).
 *
 * <p>Near the ground the mirror image of all of it below the ground is added, which takes downwash away.
 *
 * <p>Axes: x downstream along the undisturbed air, y right, z up; origin at the quarter chord in the middle.
 */
public final class WakeSheet {

    private static final int SINK_STEPS = 12;

    private final SpanGrid grid;
    private final double[] trailing;
    private final Ground ground;

    /** The wake of a solution in free air. */
    public WakeSheet(LiftingLineSolution solution) {
        this(solution, Ground.none());
    }

    /**
     * The wake of a solution.
     *
     * @param solution the solution
     * @param ground the ground below the surface
     */
    public WakeSheet(LiftingLineSolution solution, Ground ground) {
        this.ground = ground;
        grid = solution.grid();
        int n = grid.size();
        trailing = new double[n + 1];
        for (int i = 0; i < n; i++) {
            trailing[i] += solution.circulation(i);
            trailing[i + 1] -= solution.circulation(i);
        }
    }

    /**
     * Velocity that the surface and its wake add to the air, over speed.
     *
     * @param back downstream positive
     * @param right right positive
     * @param down down positive: the downwash angle, rad
     */
    public record Added(double back, double right, double down) {}

    /**
     * Downwash angle at a point.
     *
     * @param x downstream of the quarter chord, m, positive
     * @param y right of the middle, m
     * @param above height above the sheet there, m
     * @param aboveLine height above the bound line, m
     * @param core radius inside which a trailing vortex is taken as solid, m, positive
     * @return downwash over speed, rad, down positive
     */
    public double downwash(double x, double y, double above, double aboveLine, double core) {
        return downwash(x, y, everywhere(above), aboveLine, everywhere(core));
    }

    /**
     * Downwash angle behind a sheet that is neither flat nor equally thick all over; other parameters as in
     * {@link #downwash(double, double, double, double, double)}.
     *
     * @param above height above the trailing vortex of each edge there, m
     * @param core radius inside which the vortex of each edge is taken as solid, m, positive
     */
    public double downwash(double x, double y, double[] above, double aboveLine, double[] core) {
        return DominantSystem.dot(trailing, shares(grid, ground, x, y, above, aboveLine, core), 0, trailing.length);
    }

    private double[] everywhere(double value) {
        double[] values = new double[trailing.length];
        Arrays.fill(values, value);
        return values;
    }

    /** What a vortex of unit strength off each edge does to that; one division a vortex, four vortices at a time. */
    private static double[] shares(
            SpanGrid grid, Ground ground, double x, double y, double[] above, double aboveLine, double[] core) {
        double[] shares = new double[grid.size() + 1];
        addShares(shares, grid.edges(), 1 / (4 * Math.PI), x, y, above, aboveLine, core, 0);
        if (ground.isNear()) {
            double up = 2 * (ground.height() + aboveLine);
            addShares(shares, grid.edges(), -1 / (4 * Math.PI), x, y, above, aboveLine, core, up);
        }
        return shares;
    }

    private static void addShares(
            double[] shares,
            double[] edges,
            double times,
            double x,
            double y,
            double[] above,
            double aboveLine,
            double[] core,
            double up) {
        double line = aboveLine - up;
        double atLine = x * x + line * line;
        for (int k = 0; k < shares.length; k++) {
            double solid = core[k] * core[k];
            double height = above[k] - up;
            double far = atLine + solid;
            double aside = y - edges[k];
            double square = aside * aside;
            double across = square + height * height;
            double distance = Math.sqrt(x * x + across);
            double end = Math.sqrt(square + far) * far;
            double wide = distance * (across + solid);
            shares[k] += times * aside * ((distance + x) * end + x * wide) / (wide * end);
        }
    }

    /** All components of the added velocity; parameters as in {@link #downwash}. */
    public Added at(double x, double y, double above, double aboveLine, double core) {
        Added own = own(x, y, above, aboveLine, core);
        if (!ground.isNear()) {
            return own;
        }
        // The image's air at a point is that of the surface at the mirror image of the point, up and down exchanged.
        double up = 2 * (ground.height() + aboveLine);
        Added mirrored = own(x, y, above - up, aboveLine - up, core);
        return new Added(own.back() + mirrored.back(), own.right() + mirrored.right(), own.down() - mirrored.down());
    }

    private Added own(double x, double y, double above, double aboveLine, double core) {
        double height = above * above;
        double far = x * x + aboveLine * aboveLine + core * core;
        double right = 0;
        double down = 0;
        double turning = 0;
        for (int k = 0; k < trailing.length; k++) {
            double aside = y - grid.edge(k);
            double across = aside * aside + height;
            double distance = Math.sqrt(x * x + across);
            double swirl = trailing[k] * (distance + x) / (distance * (across + core * core));
            down += swirl * aside;
            right += swirl * above;
            // What a bound vortex does at its two ends, summed end by end.
            turning += trailing[k] * aside / Math.sqrt(aside * aside + far);
        }
        down += turning * x / far;
        double back = turning * aboveLine / far;
        return new Added(back / (4 * Math.PI), right / (4 * Math.PI), down / (4 * Math.PI));
    }

    /**
     * How far the sheet has sunk below the level of the trailing edge in the middle.
     *
     * @param x downstream of the quarter chord, m, behind the trailing edge
     * @param y right of the middle, m
     * @param core as in {@link #downwash}, m
     * @return m, down positive
     */
    public double sink(double x, double y, double core) {
        return sunk(sinkShares(grid, ground, x, y, core));
    }

    /** How far it has sunk, from what a vortex of unit strength off each edge does to that. */
    double sunk(double[] shares) {
        return DominantSystem.dot(trailing, shares, 0, trailing.length);
    }

    /** These shares, m; parameters as in {@link #sink}. */
    static double[] sinkShares(SpanGrid grid, Ground ground, double x, double y, double core) {
        double[] sum = new double[grid.size() + 1];
        double[] level = new double[sum.length];
        double[] cores = level.clone();
        Arrays.fill(cores, core);
        double from = 0.75 * grid.chord(grid.size() / 2);
        double step = (x - from) / SINK_STEPS;
        for (int k = 0; k < SINK_STEPS && step > 0; k++) {
            double[] there = shares(grid, ground, from + (k + 0.5) * step, y, level, 0, cores);
            for (int j = 0; j < sum.length; j++) {
                sum[j] += step * there[j];
            }
        }
        return sum;
    }
}
