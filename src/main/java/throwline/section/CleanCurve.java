package throwline.section;

/**
 * An airfoil's measured curve at one Reynolds number and one measured deflection, ready for a method to move.
 *
 * @param lift lift and moment on the nodes
 * @param drag drag over lift and on the nodes
 * @param basis what it rests on
 */
record CleanCurve(LiftStation lift, DragStation drag, Basis basis) {

    /** This curve and another of a different deflection; weight 0 gives this. */
    CleanCurve blend(CleanCurve other, double weight) {
        double reynolds = lift.reynolds();
        Basis between = weight > 0 && weight < 1 ? Basis.BETWEEN : Basis.MEASURED;
        return new CleanCurve(
                lift.blend(other.lift, weight, reynolds),
                drag.blend(other.drag, weight, reynolds),
                basis.weaker(other.basis).weaker(between));
    }
}
