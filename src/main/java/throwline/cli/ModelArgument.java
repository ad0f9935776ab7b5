package throwline.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import throwline.input.NamedAirfoils;
import throwline.input.ReadModel;
import throwline.section.AirfoilLibrary;

/** Model file that a command is about, and the units that its answer is shown in. */
final class ModelArgument {

    @Parameters(paramLabel = "MODEL", description = "${bundle:cli.model}")
    private String file = "";

    @Mixin
    private ShownUnits shown = new ShownUnits();

    /** The file as it was named. */
    String file() {
        return file;
    }

    /** The airfoils that the file may name. */
    NamedAirfoils airfoils() {
        return new Airfoils().besides(file);
    }

    /**
     * The model.
     *
     * @throws WrongInput with all problems of the file, where there is one
     */
    ReadModel.Project read(Context context, AirfoilLibrary library) {
        return new ModelReader(context, name -> library, shown.units(context)).read(file);
    }

    /** The name of the file without its folder. */
    String fileName(ReadModel.Project project) {
        return CompareFiles.fileName(file, project);
    }
}
