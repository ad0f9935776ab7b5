package throwline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import throwline.input.ModelFile;
import throwline.input.Problem;
import throwline.input.ReadModel;
import throwline.section.AirfoilLibrary;

/** Reads the model files that the command line names; {@code -} is standard input. */
final class ModelReader {

    private static final String STANDARD_INPUT = "-";

    private final Context context;
    private final AirfoilLibrary library;

    ModelReader(Context context, AirfoilLibrary library) {
        this.context = context;
        this.library = library;
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
        if (name.equals(STANDARD_INPUT)) {
            try {
                return ModelFile.read(context.terminal().in(), context.words().say("cli.model.stdin"), library);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        try {
            return ModelFile.read(Path.of(name), library);
        } catch (InvalidPathException e) {
            throw new WrongInput(context.words().say("cli.model.path", name));
        }
    }
}
