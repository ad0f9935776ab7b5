package throwline.report.chart;

import java.awt.geom.Path2D;
import throwline.model.Model;
import throwline.model.Surface;

/** Outlines of a model from above, nose up the page: metres to the right of the middle and behind the leading edge there. */
public final class PlanShape {

    private final PlanOutline outline;

    /** The outlines of a model. */
    public PlanShape(Model model) {
        outline = new PlanOutline(model);
    }

    /** The wing from tip to tip. */
    public Path2D wing() {
        return SectionShape.path(outline.wing());
    }

    /** A surface on one side: 1 right, -1 left. */
    public Path2D surface(Surface surface, int side) {
        return SectionShape.path(outline.surface(surface, side));
    }

    /** The tail with its elevator. */
    public Path2D tail() {
        return SectionShape.path(outline.tail());
    }

    /** The elevator alone. */
    public Path2D elevator() {
        return SectionShape.path(outline.elevator());
    }

    /** The body. */
    public Path2D body() {
        return SectionShape.path(outline.body());
    }
}
