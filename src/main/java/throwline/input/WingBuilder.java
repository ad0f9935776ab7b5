package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import throwline.model.AirfoilName;
import throwline.model.Elevator;
import throwline.model.Hinge;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.numerics.Interpolation;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;

/** Builds the wing, its surfaces and the elevator from a file without problems. */
final class WingBuilder {

    /** Quarter chord above the balance point over the height of the body. Common practice, no source. */
    private static final double HIGH_WING = 0.4;

    private static final double LOW_WING = -0.3;

    private final Branch root;
    private final Movables movables;
    private final Assumed assumed;

    WingBuilder(Branch root, Movables movables, Assumed assumed) {
        this.root = root;
        this.movables = movables;
        this.assumed = assumed;
    }

    Wing wing(double bodyHeight) {
        Branch wing = root.child("wing");
        double share = wing.has("height")
                ? 0
                : switch (wing.text("position")) {
                    case "high" -> HIGH_WING;
                    case "low" -> LOW_WING;
                    default -> 0;
                };
        double height = assumed.length(wing, "height", share * bodyHeight);
        List<Surface> surfaces = new ArrayList<>();
        for (Branch surface : wing.child("surfaces").children()) {
            surfaces.add(surface(surface));
        }
        return new Wing(height, wing.amount("incidence"), wing.amount("dihedral"), sections(wing), surfaces);
    }

    private List<WingSection> sections(Branch wing) {
        List<WingSection> sections = new ArrayList<>();
        String airfoil = "";
        double middle = 0;
        for (Branch section : wing.child("sections").children()) {
            double chord = section.amount("chord");
            if (sections.isEmpty()) {
                middle = chord;
            }
            if (section.has("airfoil")) {
                airfoil = section.text("airfoil");
            } else {
                assumed.note(section.child("airfoil"), airfoil);
            }
            boolean first = sections.isEmpty();
            double setBack = first ? 0 : assumed.length(section, "set back", (middle - chord) / 4);
            double washout = first ? 0 : assumed.amount(section, "washout", Dimension.ANGLE, 0);
            sections.add(new WingSection(section.amount("at"), chord, new AirfoilName(airfoil), washout, setBack));
        }
        return sections;
    }

    private Surface surface(Branch surface) {
        Movable movable = movables.find(surface.name()).orElseThrow();
        SurfaceTravel reach = reach(movable, surface, 0);
        return new Surface(
                surface.name(),
                surface.amount("from"),
                surface.amount("to"),
                surface.amount("chord"),
                reach.up(),
                reach.down(),
                hinge(surface));
    }

    /** Smallest travel that an elevator has. Common practice, no source. */
    private static final double ELEVATOR_TRAVEL = Math.toRadians(20);

    Elevator elevator() {
        Branch elevator = root.child("tail").child("elevator");
        SurfaceTravel reach = reach(movables.find(Movable.ELEVATOR).orElseThrow(), elevator, ELEVATOR_TRAVEL);
        double chord = elevator.amount("chord");
        double pivot = chord == 1
                ? assumed.amount(elevator, "pivot", Dimension.FRACTION, Elevator.USUAL_PIVOT)
                : Elevator.USUAL_PIVOT;
        return new Elevator(chord, reach.up(), reach.down(), hinge(elevator), pivot);
    }

    private static Hinge hinge(Branch owner) {
        return Hinge.valueOf(owner.text("hinge").toUpperCase(Locale.ROOT));
    }

    /** How far a surface goes, rad, both not negative. */
    private record SurfaceTravel(double up, double down) {}

    private SurfaceTravel reach(Movable movable, Branch owner, double least) {
        OptionalDouble up = movable.travelUp();
        OptionalDouble down = movable.travelDown();
        if (up.isPresent() && down.isPresent()) {
            return new SurfaceTravel(up.getAsDouble(), down.getAsDouble());
        }
        Programmed programmed = new Programmed(root, movable);
        SurfaceTravel reach = new SurfaceTravel(
                Interpolation.clamp(programmed.up(), least, Movable.MOST_UP),
                Interpolation.clamp(programmed.down(), least, movable.mostDown()));
        assumed.note(owner.child("travel"), "{up: " + degrees(reach.up()) + ", down: " + degrees(reach.down()) + "}");
        return reach;
    }

    private static String degrees(double angle) {
        return QuantityPrinter.number(Math.toDegrees(angle), 1) + " deg";
    }
}
