package throwline.liftingline;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Nearness of a solution to the stall.
 *
 * <p>A single strip beside the end of a surface is never taken for a stall: the lifting line's upwash there grows without
 * limit as strips get narrower. Margins are therefore averaged over one local chord.
 *
 * @param margin smallest angle left before the stall anywhere, averaged over one local chord, rad; zero at the onset
 * @param strip where that is: of the strips within half a chord of the least average the one with the least angle left
 * @param stalledShare share of the area whose sections are past their stall angle
 */
public record StallReading(double margin, int strip, double stalledShare) {

    /** Margins that differ by less, rad, are the same: mirrored strips must not be told apart by rounding. */
    private static final double SAME = 1e-9;

    /** Reading of a solution. */
    public static StallReading of(LiftingLineSolution solution) {
        SpanGrid grid = solution.grid();
        double[] margins = margins(solution);
        double least = Double.POSITIVE_INFINITY;
        int where = 0;
        double stalled = 0;
        for (int i = 0; i < grid.size(); i++) {
            double margin = average(grid, margins, i);
            if (margin < least + SAME) {
                where = i;
            }
            least = Math.min(least, margin);
            if (margins[i] < 0) {
                stalled += grid.chord(i) * grid.width(i);
            }
        }
        return new StallReading(least, nearest(grid, margins, where), stalled / grid.area());
    }

    /** Of the strips that an average is made of, the one nearest to its stall: an average over both sides of a surface's
     * end says little about which of the two lets go. */
    private static int nearest(SpanGrid grid, double[] margins, int middle) {
        double reach = grid.chord(middle) / 2;
        int nearest = middle;
        for (int j = 0; j < grid.size(); j++) {
            boolean inside = Math.abs(grid.control(j) - grid.control(middle)) < reach;
            if (inside && margins[j] < margins[nearest] - SAME) {
                nearest = j;
            }
        }
        return nearest;
    }

    /**
     * Smallest angle left among some strips, averaged as for {@link #margin}, rad; infinite among none. The margin in front of
     * the ailerons less that of the rest says whether the model may drop a wing.
     *
     * @param solution the solution
     * @param wanted picks strips
     */
    public static double leastMargin(LiftingLineSolution solution, IntPredicate wanted) {
        SpanGrid grid = solution.grid();
        double[] margins = margins(solution);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < grid.size(); i++) {
            if (wanted.test(i)) {
                least = Math.min(least, average(grid, margins, i));
            }
        }
        return least;
    }

    private static double[] margins(LiftingLineSolution solution) {
        double[] margins = new double[solution.grid().size()];
        Arrays.setAll(margins, solution::margin);
        return margins;
    }

    /** Angle left at a strip, averaged over the part of the span within half a local chord of it, rad. */
    static double average(SpanGrid grid, double[] margins, int strip) {
        double y = grid.control(strip);
        double reach = grid.chord(strip) / 2;
        int first = strip;
        while (first > 0 && grid.edge(first) > y - reach) {
            first--;
        }
        double sum = 0;
        double width = 0;
        for (int j = first; j < grid.size() && grid.edge(j) < y + reach; j++) {
            double inside = Math.min(y + reach, grid.edge(j + 1)) - Math.max(y - reach, grid.edge(j));
            sum += inside * margins[j];
            width += inside;
        }
        return sum / width;
    }
}
