package throwline.study;

/**
 * Something that the owner of a model does not know exactly.
 *
 * @param kind what it is
 * @param name of the surface or airfoil; empty where there is only one
 * @param size how far off it may be nine times out of ten: a share, m or rad
 */
record InputUncertainty(Kind kind, String name, double size) {

    /** Kinds of unknown input. */
    enum Kind {
        /** Weight of the model, share. */
        WEIGHT,
        /** Balance point, m. */
        BALANCE,
        /** Incidence of the tail against the wing, rad. */
        TAIL_INCIDENCE,
        /** Where a surface stands and how far the stick moves it, rad. */
        THROW,
        /** Most lift of an airfoil that was never measured, share. */
        AIRFOIL_LIFT,
        /** Its zero-lift angle, rad. */
        AIRFOIL_ANGLE,
        /** Its drag, share. */
        AIRFOIL_DRAG;

        boolean isAirfoil() {
            return this == AIRFOIL_LIFT || this == AIRFOIL_ANGLE || this == AIRFOIL_DRAG;
        }
    }
}
