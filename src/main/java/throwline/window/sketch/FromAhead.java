package throwline.window.sketch;

import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Wheels;
import throwline.window.sketch.Sketch.Kind;
import throwline.window.sketch.Sketch.Part;

/** A model from ahead: metres to the right of the middle on the page, and below the balance point. */
final class FromAhead {

    private static final double BESIDE = 16;

    /** How far a leg leans outwards, as drawn; the file does not tell it. */
    private static final double LEAN = Math.toRadians(35);

    private final Model model;

    FromAhead(Model model) {
        this.model = model;
    }

    private static Point2D at(double right, double below) {
        return new Point2D.Double(right, below);
    }

    private Sketch with(Measured measured) {
        List<Part> parts = new ArrayList<>();
        double rise = model.wing().semiSpan() * Math.sin(model.wing().dihedral());
        double reach = model.wing().semiSpan() * Math.cos(model.wing().dihedral());
        double y = -model.wing().height();
        Path2D wing = new Path2D.Double();
        wing.moveTo(-reach, y - rise);
        wing.lineTo(0, y);
        wing.lineTo(reach, y - rise);
        Body body = model.body();
        parts.add(new Part(
                new Rectangle2D.Double(-body.width() / 2, -body.height() / 2, body.width(), body.height()), Kind.SKIN));
        parts.add(new Part(wing, Kind.ROD));
        double tail = y - model.tail().height();
        double half = model.tail().span() / 2;
        parts.add(Part.line(Kind.ROD, at(-half, tail), at(half, tail)));
        model.propeller().ifPresent(propeller -> {
            double r = propeller.diameter() / 2;
            parts.add(new Part(new Ellipse2D.Double(-r, -propeller.height() - r, 2 * r, 2 * r), Kind.GHOST));
        });
        model.wheels().ifPresent(wheels -> {
            for (int side : List.of(-1, 1)) {
                parts.add(leg(wheels, side));
                Point2D foot = foot(wheels, side);
                double r = wheels.diameter() / 2;
                parts.add(new Part(
                        new Rectangle2D.Double(
                                foot.getX() - wheels.width() / 2, foot.getY() - r, wheels.width(), 2 * r),
                        Kind.SURFACE));
            }
        });
        return new Sketch(Sketch.View.AHEAD, "", parts, List.of(measured));
    }

    private Point2D hip(int side) {
        return at(side * model.body().width() / 2, model.body().height() / 2);
    }

    private Point2D foot(Wheels wheels, int side) {
        Point2D hip = hip(side);
        return at(
                hip.getX() + side * wheels.legLength() * Math.sin(LEAN),
                hip.getY() + wheels.legLength() * Math.cos(LEAN));
    }

    private Part leg(Wheels wheels, int side) {
        Point2D hip = hip(side);
        AffineTransform to = AffineTransform.getTranslateInstance(hip.getX(), hip.getY());
        to.rotate(-side * LEAN);
        return new Part(
                new Path2D.Double(
                        new Rectangle2D.Double(-wheels.legWidth() / 2, 0, wheels.legWidth(), wheels.legLength()), to),
                Kind.SKIN);
    }

    Sketch dihedral() {
        return with(new Measured.Angle(
                at(0, -model.wing().height()),
                0,
                -model.wing().dihedral(),
                model.wing().semiSpan(),
                true));
    }

    Optional<Sketch> wheelWidth() {
        return model.wheels().map(wheels -> {
            Point2D foot = foot(wheels, 1);
            double below = foot.getY() + wheels.diameter() / 2;
            return with(new Measured.Length(
                    at(foot.getX() - wheels.width() / 2, below),
                    at(foot.getX() + wheels.width() / 2, below),
                    BESIDE,
                    0,
                    true));
        });
    }

    Optional<Sketch> legLength() {
        return model.wheels().map(wheels -> with(new Measured.Length(hip(1), foot(wheels, 1), -BESIDE, 0, true)));
    }

    /** The width of a leg, in the middle of its length. */
    Optional<Sketch> legWidth() {
        return model.wheels().map(wheels -> {
            Point2D hip = hip(1);
            Point2D foot = foot(wheels, 1);
            double x = (hip.getX() + foot.getX()) / 2;
            double y = (hip.getY() + foot.getY()) / 2;
            double half = wheels.legWidth() / 2;
            Point2D inner = at(x - half * Math.cos(LEAN), y + half * Math.sin(LEAN));
            return with(
                    new Measured.Length(inner, at(x + half * Math.cos(LEAN), y - half * Math.sin(LEAN)), 0, 0, true));
        });
    }
}
