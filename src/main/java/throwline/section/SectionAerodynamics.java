package throwline.section;

/** Maker of section curves: the entry point of this package. */
public interface SectionAerodynamics {

    /**
     * The curve of one section.
     *
     * @param place the airfoil, or the two between which the section lies
     * @param surface its hinged surface
     * @param reynolds Reynolds number on the section's chord; any positive value, outside the data the basis says so
     * @return the curve
     */
    SectionCurve curve(SectionPlace place, SurfaceState surface, double reynolds);

    /**
     * The curves of one section with its surface held, for a search over speeds.
     *
     * @param place as in {@link #curve}
     * @param surface its hinged surface
     * @return the curves of {@link #curve}, lift to within 0.001 below the stall; drag to within a thousandth but for the
     *     corners of its tables, at most 3 %
     */
    default CurveFamily family(SectionPlace place, SurfaceState surface) {
        return reynolds -> curve(place, surface, reynolds);
    }
}
