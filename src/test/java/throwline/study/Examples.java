package throwline.study;

import java.nio.file.Path;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.section.SectionAerodynamics;

/** The invented examples, read as a user's files are. */
final class Examples {

    static final AirfoilLibrary AIRFOILS = new PackedAirfoils();

    private Examples() {}

    static Model read(String name) {
        ReadModel read = ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS);
        if (read instanceof ReadModel.Project project) {
            return project.model();
        }
        throw new AssertionError(read.toString());
    }

    static Comparison compare(Model model, SectionAerodynamics sections) {
        return new ComparisonStudy(sections, Bands.load()).compare(model, AIRFOILS, model.packs());
    }

    static Comparison compare(String name) {
        return compare(read(name), new MeasuredSections());
    }

    static double value(Headline headline) {
        if (headline instanceof Headline.Known known) {
            return known.value();
        }
        throw new AssertionError(((Headline.Unknown) headline).why());
    }
}
