package throwline.report.chart;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import throwline.section.Airfoil;

/** Outline of a section with a hinged surface, on a chord of 1 with the nose at the origin, y down the page. */
public final class SectionShape {

    private final SectionOutline outline;

    /**
     * The outline of an airfoil of which thickness and camber are known.
     *
     * @param airfoil the airfoil
     * @param hinge place of the hinge over chord
     */
    public SectionShape(Airfoil airfoil, double hinge) {
        outline = new SectionOutline(airfoil.thickness(), airfoil.camber(), hinge);
    }

    /** What stays where it is. */
    public Path2D front() {
        return path(outline.front());
    }

    /** The hinged surface, rad, trailing edge down positive. */
    public Path2D surface(double deflection) {
        return path(outline.surface(deflection));
    }

    /** The hinge line. */
    public Point2D hinge() {
        return new Point2D.Double(outline.hinge(), -outline.camberLine(outline.hinge()));
    }

    static Path2D path(List<Place> places) {
        Path2D path = new Path2D.Double();
        path.moveTo(places.get(0).x(), places.get(0).y());
        places.forEach(place -> path.lineTo(place.x(), place.y()));
        path.closePath();
        return path;
    }
}
