package throwline.liftingline;

import java.util.ArrayList;
import java.util.List;
import throwline.section.SectionCurve;

/**
 * Blends maximum lift across the ends of hinged surfaces. A section just inside the end of a flap is helped, or hindered,
 * by the flow of its neighbour outside: within half a chord of the end the maximum lift goes linearly from the section's
 * own value to the mean of both sides at the end. The shift of the zero-lift angle stays a step. This is our form of the
 * apparent change of maximum section lift at flap ends that NACA TR 1090 treats; its printed functions were not at hand.
 */
public final class SurfaceEnds {

    private SurfaceEnds() {}

    /**
     * Blends the curves of a wing.
     *
     * @param grid the strips
     * @param curves the sections alone, one a strip; the same object on neighbouring strips or on a strip and its mirror
     *     gives the same object back where nothing changes
     * @param surface number of the surface on each strip; where neighbours differ a surface ends
     * @return the curves to solve with
     */
    public static List<SectionCurve> blend(SpanGrid grid, List<SectionCurve> curves, int[] surface) {
        int n = grid.size();
        double[] rise = new double[n];
        int middle = n / 2;
        for (int k = 0; k < middle; k++) {
            if (!ends(surface, middle - k) && !ends(surface, middle + k)) {
                continue;
            }
            for (int i = 0; i < n; i++) {
                // An end and its mirror image together: what they give is then the same on both sides to the last bit.
                double left = rise(grid, curves, surface, middle - k, i);
                rise[i] += k == 0 ? left : left + rise(grid, curves, surface, middle + k, i);
            }
        }
        List<SectionCurve> blended = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            SectionCurve curve = curves.get(i);
            int mirror = grid.mirror(i);
            if (mirror < i && curves.get(mirror).equals(curve) && rise[mirror] == rise[i]) {
                blended.add(blended.get(mirror));
            } else {
                blended.add(rise[i] == 0 ? curve : new ShiftedStallCurve(curve, rise[i]));
            }
        }
        return List.copyOf(blended);
    }

    private static boolean ends(int[] surface, int edge) {
        return surface[edge - 1] != surface[edge];
    }

    /** What the end of a surface at an edge adds to a strip's maximum lift; nothing where no surface ends. */
    private static double rise(SpanGrid grid, List<SectionCurve> curves, int[] surface, int edge, int strip) {
        if (!ends(surface, edge)) {
            return 0;
        }
        double away = Math.abs(grid.control(strip) - grid.edge(edge));
        double reach = grid.chord(strip) / 2;
        if (away >= reach) {
            return 0;
        }
        double jump = curves.get(edge).maxLift() - curves.get(edge - 1).maxLift();
        return (strip < edge ? jump : -jump) / 2 * (1 - away / reach);
    }
}
