package throwline.validation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.input.ModelFile;
import throwline.input.NamedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.words.Message;

/**
 * A complete aircraft: a model file, and rows with what was measured or published of it.
 *
 * <p>Head: {@code model}, the model file; {@code flap gain}, factor on what a surface that is down adds to maximum lift
 * (slotted flaps); {@code wing largest lift} with {@code wing largest lift moved} and {@code moved set-up}, where a tunnel
 * told the wing's maximum lift; {@code plate drag}, drag of a plate across the stream over its area.
 */
final class AircraftCase implements CaseKind {

    /** Maximum lift of a wing over that of its sections, to begin the search for the section's (COMPUTED for a rectangular wing of aspect ratio 6; methods manual 6.5). */
    private static final double WING_SHARE = 0.94;

    private static final int PASSES = 4;

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    AircraftCase(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        Path folder = file.path().toAbsolutePath().getParent();
        if (folder == null) {
            throw new UnreadableCase(Message.of("case.unreadable", file.path().toString()));
        }
        NamedAirfoils airfoils = new NamedAirfoils(library, folder);
        Model model = model(file, folder, airfoils);
        AircraftReading reading =
                new AircraftReading(model, airfoils, sections(file, model, airfoils), number(file, "plate drag", 0));
        List<Check> checks = new ArrayList<>();
        List<Pair> pairs = new ArrayList<>();
        for (CaseRow row : file.rows()) {
            Check check = Check.of(row, reading.read(row), place(row));
            checks.add(check);
            Counted.of(file.name(), row, check).ifPresent(pairs::add);
        }
        return CaseResult.of(file, checks, pairs);
    }

    private static Model model(CaseFile file, Path folder, NamedAirfoils airfoils) throws UnreadableCase {
        Path path = folder.resolve(file.required("model"));
        if (ModelFile.read(path, airfoils) instanceof ReadModel.Project project) {
            return project.model();
        }
        throw new UnreadableCase(Message.of("case.model", file.path().toString(), path.toString()));
    }

    /** A row that differs from others by its angle only. */
    private static Optional<Check.Place> place(CaseRow row) throws UnreadableCase {
        if (!row.has("angle [deg]") || row.has("to [deg]") || row.has("elevator to [deg]") || row.has("throw [deg]")) {
            return Optional.empty();
        }
        String series = row.text("quantity") + " " + row.text("set-up") + " " + row.text("elevator [deg]");
        return Optional.of(new Check.Place(series.strip(), "angle", row.number("angle [deg]")));
    }

    private SectionAerodynamics sections(CaseFile file, Model model, NamedAirfoils airfoils) throws UnreadableCase {
        double gain = number(file, "flap gain", 1);
        double clean = number(file, "wing largest lift", Double.NaN);
        if (Double.isNaN(clean)) {
            return gain == 1 ? sections : new RaisedStall(sections, 0, 0, gain);
        }
        double moved = number(file, "wing largest lift moved", clean);
        String name = file.required("moved set-up");
        SetUp setUp = model.setUps().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        new UnreadableCase(Message.of("case.head", file.path().toString(), "moved set-up")));
        RaisedStall raised = new RaisedStall(sections, 0, 0, 1);
        for (int pass = 0; pass < PASSES; pass++) {
            double missing = clean - largestLift(model, airfoils, raised, model.reference());
            raised = new RaisedStall(sections, raised.clean() + missing / WING_SHARE, raised.moved(), 1);
        }
        for (int pass = 0; pass < PASSES; pass++) {
            double missing = moved - largestLift(model, airfoils, raised, setUp);
            raised = new RaisedStall(sections, raised.clean(), raised.moved() + missing / WING_SHARE, 1);
        }
        return raised;
    }

    private static double largestLift(Model model, NamedAirfoils airfoils, SectionAerodynamics sections, SetUp setUp) {
        double speed = 10;
        return WingReading.of(model, airfoils, sections, setUp, speed).largestLift();
    }

    private static double number(CaseFile file, String key, double otherwise) throws UnreadableCase {
        String text = file.optional(key);
        try {
            return text.isEmpty() ? otherwise : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new UnreadableCase(Message.of("case.head", file.path().toString(), key));
        }
    }
}
