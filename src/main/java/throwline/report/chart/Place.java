package throwline.report.chart;

/**
 * Place in a panel: values of its axes, of which an infinite one means an edge of the panel, moved by points of the page.
 *
 * @param x value across; negative infinity is the left edge, positive infinity the right one
 * @param y value up; negative infinity is the lower edge, positive infinity the upper one
 * @param right points to the right of there
 * @param below points down the page from there
 */
record Place(double x, double y, double right, double below) {

    /** Edge on the right or at the top; its negative is the other one. */
    static final double EDGE = Double.POSITIVE_INFINITY;

    static Place of(double x, double y) {
        return new Place(x, y, 0, 0);
    }

    /** Place of a pair x, y. */
    static Place of(double[] xy) {
        return of(xy[0], xy[1]);
    }

    Place moved(double byRight, double byBelow) {
        return new Place(x, y, right + byRight, below + byBelow);
    }
}
