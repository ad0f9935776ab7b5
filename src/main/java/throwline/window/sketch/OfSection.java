package throwline.window.sketch;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import throwline.report.chart.SectionShape;
import throwline.section.Airfoil;
import throwline.window.session.Movable;
import throwline.window.sketch.Sketch.Kind;
import throwline.window.sketch.Sketch.Part;

/** A section with its surface where throws are measured, nose to the left at the origin: metres. */
final class OfSection {

    private final Movable movable;
    private final SectionShape shape;
    private final boolean whole;
    private final double chord;

    /**
     * @param airfoil of the section
     * @param movable its surface
     * @param whole true where the section turns as a whole
     */
    OfSection(Airfoil airfoil, Movable movable, boolean whole) {
        this.movable = movable;
        this.whole = whole;
        chord = movable.chord() / (1 - movable.hinge());
        shape = new SectionShape(airfoil, whole ? 1 : movable.hinge());
    }

    private Point2D hinge() {
        Point2D front = whole ? new Point2D.Double() : shape.hinge();
        return new Point2D.Double(movable.hinge() * chord, front.getY() * chord);
    }

    private double neutral() {
        Point2D hinge = hinge();
        return Math.atan2(-hinge.getY(), chord - hinge.getX());
    }

    private double radius() {
        return hinge().distance(chord, 0);
    }

    private Path2D scaled(Path2D path) {
        return new Path2D.Double(path, AffineTransform.getScaleInstance(chord, chord));
    }

    private Path2D turned(double angle) {
        if (whole) {
            AffineTransform turn = AffineTransform.getRotateInstance(angle, hinge().getX(), hinge().getY());
            return new Path2D.Double(scaled(shape.front()), turn);
        }
        return scaled(shape.surface(angle));
    }

    /**
     * The surface at neutral, and at angles that are measured from there.
     *
     * @param angles rad, trailing edge down positive
     */
    Sketch at(List<Double> angles) {
        List<Part> parts = new ArrayList<>();
        if (!whole) {
            parts.add(new Part(scaled(shape.front()), Kind.SKIN));
        }
        parts.add(new Part(turned(0), Kind.GHOST));
        List<Measured> measured = new ArrayList<>();
        for (double angle : angles) {
            parts.add(new Part(turned(angle), Kind.SURFACE));
            measured.add(new Measured.Angle(hinge(), neutral(), neutral() + angle, radius(), true));
        }
        return new Sketch(Sketch.View.SECTION, movable.name(), parts, measured);
    }

    /**
     * Movement of the trailing edge by hand.
     *
     * @param distance from end to end, m, less than the chord behind the hinge
     */
    Sketch play(double distance) {
        double half = Math.asin(Math.min(1, distance / 2 / radius()));
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(scaled(shape.front()), Kind.SKIN));
        if (!whole) {
            parts.add(new Part(turned(-half), Kind.GHOST));
            parts.add(new Part(turned(half), Kind.SURFACE));
        }
        return new Sketch(
                Sketch.View.SECTION,
                movable.name(),
                parts,
                List.of(new Measured.Length(edge(-half), edge(half), 0, 0, true)));
    }

    private Point2D edge(double angle) {
        Point2D hinge = hinge();
        double turned = neutral() + angle;
        return new Point2D.Double(
                hinge.getX() + radius() * Math.cos(turned), hinge.getY() + radius() * Math.sin(turned));
    }
}
