package throwline.window.sketch;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.WingSection;
import throwline.report.chart.PlanShape;
import throwline.window.sketch.Sketch.Kind;
import throwline.window.sketch.Sketch.Part;

/** A model from above, nose up the page: metres to the right of the middle and behind the leading edge there. */
final class FromAbove {

    /** Radius of a balance point over the wing's chord at the middle. */
    private static final double BALANCE = 0.035;

    private static final double BESIDE = 16;

    private final Model model;

    FromAbove(Model model) {
        this.model = model;
    }

    /** The model and what it points at. */
    Sketch with(Measured... measured) {
        PlanShape shape = new PlanShape(model);
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(shape.body(), Kind.SKIN));
        parts.add(new Part(shape.wing(), Kind.SKIN));
        for (Surface surface : model.wing().surfaces()) {
            parts.add(new Part(shape.surface(surface, -1), Kind.SURFACE));
            parts.add(new Part(shape.surface(surface, 1), Kind.SURFACE));
        }
        parts.add(new Part(shape.tail(), Kind.SKIN));
        parts.add(new Part(shape.elevator(), Kind.SURFACE));
        double nose = -model.body().nose();
        model.propeller()
                .ifPresent(propeller -> parts.add(
                        Part.line(Kind.ROD, at(-propeller.diameter() / 2, nose), at(propeller.diameter() / 2, nose))));
        double r = BALANCE * model.wing().chordAt(0);
        model.packs()
                .forEach(pack ->
                        parts.add(new Part(new Ellipse2D.Double(-r, pack.balance() - r, 2 * r, 2 * r), Kind.BALANCE)));
        return new Sketch(Sketch.View.ABOVE, "", parts, List.of(measured));
    }

    private static Point2D at(double right, double behind) {
        return new Point2D.Double(right, behind);
    }

    private static Measured length(Point2D from, Point2D to, double aside) {
        return new Measured.Length(from, to, aside, 0, true);
    }

    Optional<Sketch> balance(String name) {
        return model.packs().stream()
                .filter(pack -> pack.name().equals(name))
                .findFirst()
                .map(pack -> with(length(at(0, 0), at(0, pack.balance()), -(BESIDE + 8))));
    }

    /**
     * What is measured at a station of the right half.
     *
     * @param index of the station, from 0
     * @param what is measured there
     */
    Optional<Sketch> station(int index, Station what) {
        List<WingSection> sections = model.wing().sections();
        return index < sections.size() ? Optional.of(with(what.measured(sections.get(index)))) : Optional.empty();
    }

    /** What is measured at a station of the wing. */
    enum Station {
        /** Its distance from the middle. */
        AT {
            @Override
            Measured measured(WingSection section) {
                return length(at(0, section.setBack()), at(section.at(), section.setBack()), -BESIDE);
            }
        },
        /** Its chord. */
        CHORD {
            @Override
            Measured measured(WingSection section) {
                double back = section.setBack();
                return length(at(section.at(), back), at(section.at(), back + section.chord()), -BESIDE);
            }
        },
        /** Its leading edge behind that at the middle. */
        SET_BACK {
            @Override
            Measured measured(WingSection section) {
                return length(at(section.at(), 0), at(section.at(), section.setBack()), -BESIDE);
            }
        };

        abstract Measured measured(WingSection section);
    }

    /** The inner end of a surface, or the outer one. */
    Optional<Sketch> end(String name, boolean outer) {
        return model.wing().surface(name).map(surface -> {
            double y = outer ? surface.to() : surface.from();
            double back = trailingEdge(y);
            return with(length(at(0, back), at(y, back), BESIDE));
        });
    }

    /** The chord of a surface, in the middle of its span. */
    Optional<Sketch> surfaceChord(String name) {
        return model.wing().surface(name).map(surface -> {
            double y = (surface.from() + surface.to()) / 2;
            double chord = model.wing().chordAt(y);
            double back = trailingEdge(y);
            Point2D hinge = at(y, back - surface.chordFraction() * chord);
            return with(new Measured.Length(hinge, at(y, back), 0, chord, true));
        });
    }

    private double trailingEdge(double y) {
        return model.wing().leadingEdgeAt(y) + model.wing().chordAt(y);
    }

    Sketch tailSpan() {
        Tail tail = model.tail();
        double back = tail.arm() + tail.chord();
        return with(length(at(-tail.span() / 2, back), at(tail.span() / 2, back), BESIDE));
    }

    Sketch tailChord() {
        Tail tail = model.tail();
        return with(length(at(tail.span() / 2, tail.arm()), at(tail.span() / 2, tail.arm() + tail.chord()), -BESIDE));
    }

    Sketch tailArm() {
        Tail tail = model.tail();
        double x = tail.span() / 2;
        return with(length(at(x, 0), at(x, tail.arm()), -BESIDE));
    }

    /** The chord of the elevator, at the right end of the tail. */
    Sketch elevatorChord() {
        Tail tail = model.tail();
        double back = tail.arm() + tail.chord();
        double front = back - tail.elevator().chordFraction() * tail.chord();
        double x = tail.span() / 2;
        return with(new Measured.Length(at(x, front), at(x, back), -BESIDE, tail.chord(), true));
    }

    /** Where a tail that moves as a whole pivots, at its right end. */
    Sketch pivot() {
        Tail tail = model.tail();
        double pivot = tail.arm() + tail.elevator().pivot() * tail.chord();
        double x = tail.span() / 2;
        return with(new Measured.Length(at(x, tail.arm()), at(x, pivot), -BESIDE, tail.chord(), true));
    }

    Sketch bodyLength() {
        double half = model.body().width() / 2;
        double nose = model.body().nose();
        return with(length(at(-half, -nose), at(-half, model.body().length() - nose), 2 * BESIDE));
    }

    Sketch bodyWidth() {
        double half = model.body().width() / 2;
        double y = (trailingEdge(0) + model.tail().arm()) / 2;
        return with(length(at(-half, y), at(half, y), 0));
    }

    Sketch nose() {
        double half = model.body().width() / 2;
        return with(length(at(-half, -model.body().nose()), at(-half, 0), BESIDE));
    }

    Optional<Sketch> propeller() {
        double nose = -model.body().nose();
        return model.propeller()
                .map(propeller ->
                        with(length(at(-propeller.diameter() / 2, nose), at(propeller.diameter() / 2, nose), -BESIDE)));
    }
}
