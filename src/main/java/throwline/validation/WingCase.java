package throwline.validation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import throwline.input.NamedAirfoils;
import throwline.liftingline.StallMarks;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;

/**
 * Wings of straight taper alone in the tunnel; every row is a wing, a Reynolds number and a quantity. Surfaces are given by
 * their place over half the span, chord fraction and deflection.
 */
final class WingCase implements CaseKind {

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    WingCase(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        NamedAirfoils airfoils = new NamedAirfoils(library, file.path().resolveSibling("."));
        List<Check> checks = new ArrayList<>();
        List<Pair> pairs = new ArrayList<>();
        for (CaseRow row : file.rows()) {
            Check check = Check.of(row, read(row, reading(row, airfoils)));
            checks.add(check);
            Counted.of(row.text("wing"), row, check).ifPresent(pairs::add);
        }
        return CaseResult.of(file, checks, pairs);
    }

    private WingReading reading(CaseRow row, NamedAirfoils airfoils) throws UnreadableCase {
        AirfoilName name = new AirfoilName(row.text("airfoil"));
        if (airfoils.find(name).isEmpty()) {
            throw row.wrong("airfoil", "case.airfoil");
        }
        double taper = row.number("taper", 1);
        double root = 4 / (row.number("aspect ratio") * (1 + taper));
        List<WingSection> stations = List.of(
                new WingSection(0, root, name, 0, 0),
                new WingSection(1, root * taper, name, 0, root * (1 - taper) / 4));
        List<Surface> surfaces = new ArrayList<>();
        Map<String, Double> deflections = new HashMap<>();
        if (row.has("flap chord")) {
            surfaces.add(new Surface(
                    "flap",
                    row.number("flap from", 0),
                    row.number("flap to", 1),
                    row.number("flap chord"),
                    Math.PI,
                    Math.PI,
                    Hinge.TAPED));
            deflections.put("flap", row.angle("flap [deg]"));
        }
        Wing wing = new Wing(0, 0, 0, stations, surfaces);
        double reynoldsPerMetre = row.number("Reynolds number") / wing.meanAerodynamicChord();
        double difference = Math.toRadians(row.number("difference [deg]", 0));
        return new WingReading(wing, airfoils, sections, new SetUp("", deflections, 0), difference, reynoldsPerMetre);
    }

    private static double read(CaseRow row, WingReading wing) throws UnreadableCase {
        return switch (row.text("quantity")) {
            case "largest lift" -> wing.largestLift();
            case "angle of largest lift" ->
                wing.marks()
                        .map(StallMarks::checkedMaximum)
                        .map(m -> Math.toDegrees(m.incidence()))
                        .orElse(Double.NaN);
            case "glide ratio at largest lift" ->
                wing.marks()
                        .map(StallMarks::checkedMaximum)
                        .map(m -> wing.at(m.incidence()))
                        .map(f -> f.liftCoefficient() / f.dragCoefficient())
                        .orElse(Double.NaN);
            case "least drag" -> wing.leastDrag();
            case "lift" -> wing.at(row.angle("angle [deg]")).liftCoefficient();
            case "drag" -> wing.at(row.angle("angle [deg]")).dragCoefficient();
            case "rolling moment" -> wing.at(row.angle("angle [deg]")).rollingCoefficient();
            case "roll damping" -> wing.rollDamping(row.angle("angle [deg]"));
            default -> throw row.wrong("quantity", "case.quantity");
        };
    }
}
