package throwline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import throwline.input.ModelFile;
import throwline.input.Problem;
import throwline.input.ReadModel;
import throwline.section.AirfoilLibrary;
import throwline.units.Unit;

/** Reads the model files that the command line names; {@code -} is standard input. */
final class ModelReader {

    /** What names standard input. */
    static final String STANDARD_INPUT = "-";

    private final Context context;
    private final Function<String, AirfoilLibrary> libraries;
    private final List<Unit> shown;

    ModelReader(Context context, AirfoilLibrary library) {
        this(context, name -> library, List.of());
    }

    /**
     * A reader.
     *
     * @param context words and terminal
     * @param libraries the airfoils that a model file of this name may name
     * @param shown units to show instead of those that the files ask for
     */
    ModelReader(Context context, Function<String, AirfoilLibrary> libraries, List<Unit> shown) {
        this.context = context;
        this.libraries = libraries;
        this.shown = List.copyOf(shown);
    }

    /**
     * All models.
     *
     * @throws WrongInput with all problems of all files, where there is one
     */
    List<ReadModel.Project> read(List<String> names) {
        if (names.stream().filter(STANDARD_INPUT::equals).count() > 1) {
            throw new WrongInput(context.words().say("cli.model.twice"));
        }
        List<ReadModel.Project> projects = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (String name : names) {
            ReadModel read = readOne(name);
            if (read instanceof ReadModel.Project project) {
                projects.add(project);
            } else if (read instanceof ReadModel.Faulty faulty) {
                for (Problem problem : faulty.problems()) {
                    problems.add(problem.say(context.words()));
                }
            }
        }
        if (!problems.isEmpty()) {
            throw new WrongInput(String.join("\n", problems));
        }
        return projects;
    }

    /** One model. */
    ReadModel.Project read(String name) {
        return read(List.of(name)).get(0);
    }

    private ReadModel readOne(String name) {
        if (name.isBlank()) {
            throw new WrongInput(context.words().say("cli.path.blank"));
        }
        if (name.equals(STANDARD_INPUT)) {
            try {
                return ModelFile.read(
                        context.terminal().in(), context.words().say("cli.model.stdin"), libraries.apply(name), shown);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        try {
            return ModelFile.read(Path.of(name), libraries.apply(name), shown);
        } catch (InvalidPathException e) {
            throw new WrongInput(context.words().say("cli.model.path", name));
        }
    }
}
