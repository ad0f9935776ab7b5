package throwline.section;

/** Makes section curves: the one door of this floor. */
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
}
