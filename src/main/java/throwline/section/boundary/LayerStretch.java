package throwline.section.boundary;

/**
 * Stretch of a surface along which the boundary layer is of one kind.
 *
 * @param layer its kind
 * @param from its front end, share of the chord behind the nose
 * @param to its rear end
 */
public record LayerStretch(Kind layer, double from, double to) {

    /** Kinds of boundary layer. */
    public enum Kind {
        /** Smooth, with little friction. */
        LAMINAR,
        /** Off the surface and back on it again, turbulent. */
        BUBBLE,
        /** Mixed up, with more friction, and slow to leave the surface. */
        TURBULENT,
        /** Off the surface for good. */
        SEPARATED
    }
}
