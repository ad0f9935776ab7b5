package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.input.NamedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;

/** Single values of sections; every row is an airfoil, a surface, a Reynolds number and a quantity. */
final class SectionCase implements CaseKind {

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    SectionCase(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        NamedAirfoils airfoils = new NamedAirfoils(library, file.path().resolveSibling("."));
        List<Check> checks = new ArrayList<>();
        for (CaseRow row : file.rows()) {
            Airfoil airfoil = airfoils.find(new AirfoilName(row.text("airfoil")))
                    .orElseThrow(() -> row.wrong("airfoil", "case.airfoil"));
            SectionCurve curve = sections.curve(SectionPlace.of(airfoil), surface(row), row.number("Reynolds number"));
            checks.add(Check.of(row, read(row, curve)));
        }
        return CaseResult.of(file, checks, List.of());
    }

    private static SurfaceState surface(CaseRow row) throws UnreadableCase {
        if (!row.has("surface chord")) {
            return SurfaceState.none();
        }
        try {
            Hinge hinge = Hinge.valueOf(row.text("hinge").toUpperCase(Locale.ROOT));
            return new SurfaceState(row.angle("surface [deg]"), row.number("surface chord"), hinge);
        } catch (IllegalArgumentException e) {
            throw row.wrong("hinge", "case.hinge");
        }
    }

    private static double read(CaseRow row, SectionCurve curve) throws UnreadableCase {
        return switch (row.text("quantity")) {
            case "lift" -> curve.lift(row.angle("angle [deg]"));
            case "drag" -> curve.drag(row.angle("angle [deg]"));
            case "moment" -> curve.moment(row.angle("angle [deg]"));
            case "hinge moment" -> curve.hinge(row.angle("angle [deg]"));
            case "maximum lift" -> curve.maxLift();
            case "stall angle" -> Math.toDegrees(curve.stallAngle());
            case "recovery angle" -> Math.toDegrees(curve.recoveryAngle().orElse(Double.NaN));
            default -> throw row.wrong("quantity", "case.quantity");
        };
    }
}
