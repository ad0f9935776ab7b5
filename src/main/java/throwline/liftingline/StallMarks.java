package throwline.liftingline;

/**
 * The three marks of a wing's stall, in rising order of incidence where the wing stalls gently; onset and checked maximum
 * may come in either order.
 *
 * @param onset where the margin, averaged over one local chord, first reaches zero
 * @param strip where along the span that is
 * @param checkedMaximum the largest lift when the sections' real, falling curves are read at the solved angles
 * @param plateau where half of the area is past its stall angle; its lift is that of the hull curves
 */
public record StallMarks(Mark onset, int strip, Mark checkedMaximum, Mark plateau) {

    /**
     * One mark.
     *
     * @param incidence of the chord at the middle, rad
     * @param lift lift coefficient there
     */
    public record Mark(double incidence, double lift) {}

    /** Low end of the largest lift: the smaller of onset and checked maximum. */
    public double low() {
        return Math.min(onset.lift(), checkedMaximum.lift());
    }

    /** High end of the largest lift: the plateau, not less than the checked maximum. */
    public double high() {
        return Math.max(plateau.lift(), checkedMaximum.lift());
    }
}
