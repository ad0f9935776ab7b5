package throwline.section.boundary;

/**
 * Boundary layer of one surface from the stagnation point to the trailing edge; lengths along the surface in chords.
 *
 * @param laminarSeparation where the laminar layer leaves the wall; where it does not, that of transition
 * @param transition where the flow turns turbulent
 * @param reattachment where a bubble closes; that of transition where there is none
 * @param separation where the turbulent layer leaves the wall for good; the end of the march where it does not
 * @param thickness momentum thickness at the end of the march
 * @param shape displacement over momentum thickness there
 * @param speed there
 */
public record LayerPath(
        double laminarSeparation,
        double transition,
        double reattachment,
        double separation,
        double thickness,
        double shape,
        double speed) {

    static LayerPath attached(double transition) {
        return bubble(transition, transition, transition);
    }

    static LayerPath bubble(double from, double transition, double to) {
        return new LayerPath(from, transition, to, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    LayerPath ending(double endThickness, double endShape, double endSpeed, double endSeparation) {
        return new LayerPath(
                laminarSeparation, transition, reattachment, endSeparation, endThickness, endShape, endSpeed);
    }

    /** Momentum thickness far behind (H. B. Squire, A. D. Young, ARC R&amp;M 1838, 1937). */
    double wakeThickness() {
        return thickness * Math.pow(speed, 0.5 * (Math.min(shape, 2.8) + 5));
    }
}
