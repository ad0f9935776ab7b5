package throwline.window.sketch;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import throwline.model.Servo;
import throwline.report.chart.LinkageShape;
import throwline.window.sketch.Sketch.Kind;
import throwline.window.sketch.Sketch.Part;

/**
 * Servo, rod and horn from the side with the surface at neutral: metres behind the servo's axis. What the file leaves out
 * is drawn at a usual size and not told.
 */
final class OfLinkage {

    /** Usual sizes (common practice, no source). */
    private static final double ARM = 0.012;

    private static final double HORN = 0.015;

    /** Rod over horn. */
    private static final double ROD = 5;

    private static final double SWING = Math.toRadians(45);

    /** Radius of an axis over the arm. */
    private static final double AXIS = 0.12;

    private static final double BESIDE = 16;

    private final Servo servo;
    private final double chord;
    private final LinkageShape shape;

    /**
     * @param servo what is known of it
     * @param chord of its surface behind the hinge, m
     */
    OfLinkage(Servo servo, double chord) {
        this.servo = servo;
        this.chord = chord;
        double arm = servo.arm().orElse(ARM);
        double horn = servo.horn().orElse(HORN);
        shape = new LinkageShape(arm, horn, servo.rod().orElse(ROD * Math.max(arm, horn)), servo.lean());
    }

    private Sketch with(Measured... measured) {
        Point2D servoAxis = new Point2D.Double();
        Point2D hinge = shape.hinge();
        List<Part> parts = new ArrayList<>();
        parts.add(Part.line(Kind.LINE, servoAxis, hinge));
        parts.add(Part.line(Kind.ROD, hinge, new Point2D.Double(hinge.getX() + chord, 0)));
        parts.add(Part.line(Kind.ROD, servoAxis, shape.armHole(0)));
        parts.add(Part.line(Kind.ROD, hinge, shape.hornHole()));
        parts.add(Part.line(Kind.GHOST, shape.armHole(0), shape.hornHole()));
        double r = AXIS * shape.armHole(0).distance(servoAxis);
        for (Point2D axis : List.of(servoAxis, hinge)) {
            parts.add(new Part(new Ellipse2D.Double(axis.getX() - r, axis.getY() - r, 2 * r, 2 * r), Kind.SURFACE));
        }
        return new Sketch(Sketch.View.LINKAGE, servo.surface(), parts, List.of(measured));
    }

    Sketch arm() {
        return with(new Measured.Length(
                new Point2D.Double(), shape.armHole(0), -BESIDE, 0, servo.arm().isPresent()));
    }

    Sketch horn() {
        return with(new Measured.Length(
                shape.hinge(), shape.hornHole(), BESIDE, 0, servo.horn().isPresent()));
    }

    Sketch rod() {
        return with(new Measured.Length(
                shape.armHole(0), shape.hornHole(), -BESIDE, 0, servo.rod().isPresent()));
    }

    /** The servo's swing from its middle to each side. */
    Sketch swing() {
        OptionalDouble swing = servo.swing();
        double side = swing.orElse(SWING);
        return with(
                turned(servo.offset(), servo.offset() + side, swing.isPresent()),
                turned(servo.offset(), servo.offset() - side, swing.isPresent()));
    }

    /** How far the arm leans away from square. */
    Sketch lean() {
        return with(turned(servo.lean(), 0, true));
    }

    /** How far the arm stands from the middle of its swing. */
    Sketch offset() {
        return with(turned(servo.offset(), 0, true));
    }

    /** How far the arm yields. */
    Sketch give() {
        return with(turned(0, -servo.give(), true));
    }

    /** Between two servo angles, rad. */
    private Measured turned(double from, double to, boolean known) {
        double arm = shape.armHole(0).distance(new Point2D.Double());
        return new Measured.Angle(new Point2D.Double(), shape.direction(from), shape.direction(to), arm, known);
    }
}
