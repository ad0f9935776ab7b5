package throwline.section;

/** Reasons for which the section method is not meant for an outline (methods manual 3.12). */
public enum NotComputed {
    /** Thinner than all that were measured but plates. */
    THIN,
    /** Thicker than all that were measured. */
    THICK,
    /** Hangs down. */
    HANGING,
    /** More camber than all that were measured. */
    CAMBERED,
    /** So sharp or blunt a nose that the highest speed is not where it should be. */
    NOSE,
    /** Panels and thin-section theory do not agree: points that are wrong, a step or a wave. */
    UNEVEN,
    /** The boundary layer finds no drag. */
    LAYER,
    /** Unlike every measured airfoil. */
    UNLIKE
}
