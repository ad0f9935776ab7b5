package throwline.liftingline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import throwline.section.CurveFamily;
import throwline.section.SectionCurve;

/** The section curves of a wing with its surfaces held, at any speed. Holds what it has made: one thread at a time. */
public final class WingCurves {

    private final SpanGrid grid;
    private final List<CurveFamily> families;
    private final int[] alike;
    private final int[] surface;
    private final Map<WingStrips.Section, CurveFamily> made;

    /**
     * @param grid the strips
     * @param families one a strip
     * @param alike the first strip, from the left, with the same section and chord; itself where there is none before
     * @param surface number of the surface on each strip; where neighbours differ a surface ends
     * @param made what was made for surfaces that are moved, and may be used again
     */
    WingCurves(
            SpanGrid grid,
            List<CurveFamily> families,
            int[] alike,
            int[] surface,
            Map<WingStrips.Section, CurveFamily> made) {
        this.grid = grid;
        this.families = List.copyOf(families);
        this.alike = alike;
        this.surface = surface;
        this.made = made;
    }

    Map<WingStrips.Section, CurveFamily> made() {
        return made;
    }

    /**
     * The curves at a speed.
     *
     * @param reynoldsPerMetre Reynolds number per metre of chord: speed over kinematic viscosity
     * @return one curve a strip, maximum lift blended across the surfaces' ends; strips that are alike share one object
     */
    public List<SectionCurve> at(double reynoldsPerMetre) {
        List<SectionCurve> curves = new ArrayList<>(grid.size());
        for (int i = 0; i < grid.size(); i++) {
            curves.add(alike[i] < i ? curves.get(alike[i]) : families.get(i).at(reynoldsPerMetre * grid.chord(i)));
        }
        return SurfaceEnds.blend(grid, curves, surface);
    }
}
