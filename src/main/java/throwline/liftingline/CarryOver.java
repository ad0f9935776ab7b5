package throwline.liftingline;

import throwline.model.Model;

/**
 * Body through which the circulation of a moved surface beside it is carried on. A trailing vortex beside a round body has an
 * image of opposite sense at the inverse point of the circle: both together reach as far across as a vortex without a body at
 * {@code y (1 - R^2/(y^2 + h^2))} (methods manual 6.8). A surface that ends at the body's side leaves no gap there; one that ends
 * far from it, or far above it, is not touched.
 *
 * @param halfWidth half the body's largest width, m, not negative
 * @param offset how far the wing lies above or below the body's axis, in proportion to a body that is round, m, not negative
 */
public record CarryOver(double halfWidth, double offset) {

    /**
     * Share of the change of the zero-lift angle that is carried on: with it lift and downwash of flaps beside a round body agree
     * with those of vortices and their images in it (methods manual 6.8).
     */
    static final double SHARE = 2.0 / 3;

    /**
     * A surface that begins further from the middle than this many half widths is not beside the body (PRACTICE): what its other
     * end, and the roll of ailerons, would lose is as much as what is carried on.
     */
    private static final double BESIDE = 2;

    /** A gap of less than this share of the way to the surface is closed: strips in it would be narrower than the wake is thick. */
    private static final double CLOSED = 0.1;

    /** A wing without a body. */
    public static CarryOver none() {
        return new CarryOver(0, 0);
    }

    /** The body of a model; its axis goes through the balance point. */
    public static CarryOver of(Model model) {
        double round = model.body().width() / model.body().height();
        return new CarryOver(model.body().width() / 2, Math.abs(model.wing().height()) * round);
    }

    /**
     * Place up to which the inner end of a surface carries on.
     *
     * @param inner its distance from the middle, m
     * @return distance from the middle, m, not beyond the inner end; 0 where it carries on to the other side
     */
    double innerEnd(double inner) {
        if (inner > BESIDE * halfWidth) {
            return inner;
        }
        double square = inner * inner + offset * offset;
        double share = square == 0 ? 0 : 1 - halfWidth * halfWidth / square;
        return share < CLOSED ? 0 : share * inner;
    }
}
