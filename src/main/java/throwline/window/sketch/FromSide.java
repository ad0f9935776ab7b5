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
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.model.Tail;
import throwline.model.Wheels;
import throwline.model.Wing;
import throwline.report.chart.SectionShape;
import throwline.section.Airfoil;
import throwline.window.sketch.Sketch.Kind;
import throwline.window.sketch.Sketch.Part;

/**
 * A model from its left, nose to the left: metres behind the wing's leading edge at the middle, and below the balance
 * point. The file does not tell the shape of the body, so it is drawn as plainly as it is known, around the balance point.
 */
final class FromSide {

    private static final double BESIDE = 16;
    private static final double QUARTER = 0.25;

    /** The ends of a body over its largest height, as drawn. */
    private static final double BLUNT = 0.7;

    private static final double ROUND = 0.35;
    private static final double TAIL_END = 0.3;

    /** Radius of a balance point over the wing's chord. */
    private static final double BALANCE = 0.035;

    private final Model model;
    private final Airfoil wingAirfoil;
    private final Airfoil tailAirfoil;

    FromSide(Model model, Airfoil wingAirfoil, Airfoil tailAirfoil) {
        this.model = model;
        this.wingAirfoil = wingAirfoil;
        this.tailAirfoil = tailAirfoil;
    }

    private static Point2D at(double behind, double below) {
        return new Point2D.Double(behind, below);
    }

    private Sketch with(Measured measured, Part... more) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(body(), Kind.SKIN));
        parts.add(new Part(
                section(wingAirfoil, rootChord(), wingQuarter(), model.wing().incidence()), Kind.SKIN));
        Tail tail = model.tail();
        if (tail.fins() > 0) {
            parts.add(new Part(
                    new Rectangle2D.Double(
                            tail.arm(), tailQuarter().getY() - tail.fins() / 2, tail.chord(), tail.fins()),
                    Kind.GHOST));
        }
        parts.add(new Part(section(tailAirfoil, tail.chord(), tailQuarter(), tail.incidence()), Kind.SKIN));
        model.wheels().ifPresent(wheels -> parts.add(new Part(wheel(wheels), Kind.SKIN)));
        model.propeller().ifPresent(propeller -> {
            Point2D hub = hub(propeller);
            double half = propeller.diameter() / 2;
            double lean = propeller.downThrust();
            Point2D along = at(half * Math.sin(lean), -half * Math.cos(lean));
            parts.add(Part.line(
                    Kind.ROD,
                    at(hub.getX() + along.getX(), hub.getY() + along.getY()),
                    at(hub.getX() - along.getX(), hub.getY() - along.getY())));
        });
        double r = BALANCE * rootChord();
        Point2D balance = balance();
        parts.add(new Part(new Ellipse2D.Double(balance.getX() - r, balance.getY() - r, 2 * r, 2 * r), Kind.BALANCE));
        parts.addAll(List.of(more));
        return new Sketch(Sketch.View.SIDE, "", parts, List.of(measured));
    }

    private double rootChord() {
        return model.wing().chordAt(0);
    }

    private Point2D balance() {
        Pack pack = model.packs().get(0);
        return at(pack.balance(), 0);
    }

    private Point2D wingQuarter() {
        Wing wing = model.wing();
        return at(QUARTER * rootChord(), -wing.height());
    }

    private Point2D tailQuarter() {
        Tail tail = model.tail();
        return at(tail.arm() + QUARTER * tail.chord(), -model.wing().height() - tail.height());
    }

    private Point2D hub(Propeller propeller) {
        return at(-model.body().nose(), -propeller.height());
    }

    private Path2D body() {
        Body body = model.body();
        double half = body.height() / 2;
        double front = (body.boxy() ? BLUNT : ROUND) * half;
        double nose = -body.nose();
        double end = body.length() - body.nose();
        double shoulder = nose + Math.min(0.6 * body.nose(), 2 * body.height());
        double waist = Math.max(shoulder, Math.min(rootChord(), end));
        Path2D path = new Path2D.Double();
        path.moveTo(nose, -front);
        path.lineTo(shoulder, -half);
        path.lineTo(waist, -half);
        path.lineTo(end, -TAIL_END * half);
        path.lineTo(end, TAIL_END * half);
        path.lineTo(waist, half);
        path.lineTo(shoulder, half);
        path.lineTo(nose, front);
        path.closePath();
        return path;
    }

    /** A section that is turned nose up about its quarter chord. */
    private static Path2D section(Airfoil airfoil, double chord, Point2D quarter, double noseUp) {
        AffineTransform to = AffineTransform.getTranslateInstance(quarter.getX(), quarter.getY());
        to.rotate(noseUp);
        to.scale(chord, chord);
        to.translate(-QUARTER, 0);
        return new Path2D.Double(new SectionShape(airfoil, 1).front(), to);
    }

    private Ellipse2D wheel(Wheels wheels) {
        double r = wheels.diameter() / 2;
        double x = balance().getX() - QUARTER * rootChord();
        double y = model.body().height() / 2 + wheels.legLength();
        return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }

    Sketch wingHeight() {
        Point2D quarter = wingQuarter();
        return with(
                new Measured.Length(at(quarter.getX(), 0), quarter, -BESIDE, 0, true),
                level(balance(), quarter.getX()));
    }

    private static Part level(Point2D from, double x) {
        return Part.line(Kind.LINE, from, at(x, from.getY()));
    }

    /** An angle nose up, rad, seen from ahead of the quarter chord. */
    private static Measured noseUp(Point2D quarter, double angle, double radius) {
        return new Measured.Angle(quarter, Math.PI, Math.PI + angle, radius, true);
    }

    Sketch wingIncidence() {
        return with(noseUp(wingQuarter(), model.wing().incidence(), rootChord()));
    }

    Sketch tailIncidence() {
        return with(noseUp(
                tailQuarter(), model.tail().incidence(), 1.5 * model.tail().chord()));
    }

    Sketch tailHeight() {
        Point2D wing = wingQuarter();
        Point2D tail = tailQuarter();
        return with(
                new Measured.Length(at(tail.getX(), wing.getY()), tail, -BESIDE, 0, true), level(wing, tail.getX()));
    }

    Sketch fins() {
        Tail tail = model.tail();
        double x = tail.arm() + tail.chord();
        double y = tailQuarter().getY();
        return with(new Measured.Length(at(x, y - tail.fins() / 2), at(x, y + tail.fins() / 2), -BESIDE, 0, true));
    }

    Sketch bodyHeight() {
        double half = model.body().height() / 2;
        double x = rootChord();
        return with(new Measured.Length(at(x, -half), at(x, half), 0, 0, true));
    }

    Optional<Sketch> wheelDiameter() {
        return model.wheels().map(this::wheel).map(circle -> {
            double x = circle.getMaxX();
            return with(new Measured.Length(at(x, circle.getMinY()), at(x, circle.getMaxY()), -BESIDE, 0, true));
        });
    }

    Optional<Sketch> propellerHeight() {
        return model.propeller().map(propeller -> {
            Point2D hub = hub(propeller);
            return with(new Measured.Length(at(hub.getX(), 0), hub, -BESIDE, 0, true), level(balance(), hub.getX()));
        });
    }

    Optional<Sketch> downThrust() {
        return model.propeller()
                .map(propeller -> with(new Measured.Angle(
                        hub(propeller), Math.PI, Math.PI - propeller.downThrust(), propeller.diameter() / 2, true)));
    }
}
