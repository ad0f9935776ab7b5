package throwline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.input.ModelCopy;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.AirfoilLibrary;
import throwline.study.FindResult;

/** Model with what was found put in, as a copy of its file. The file itself is never touched, no file is overwritten. */
final class FoundModel {

    private final Context context;
    private final String name;
    private final ReadModel.Project project;
    private final FindResult result;
    private final AirfoilLibrary library;

    /**
     * @param context of the command
     * @param name of the file that is copied
     * @param project as read from it
     * @param result what was found
     * @param library airfoils that the file may name
     */
    FoundModel(Context context, String name, ReadModel.Project project, FindResult result, AirfoilLibrary library) {
        this.context = context;
        this.name = name;
        this.project = project;
        this.result = result;
        this.library = library;
    }

    /** True where nothing was found that a model file could hold. */
    boolean isEmpty() {
        return result.proposed().isEmpty() && result.sticks().isEmpty();
    }

    /**
     * Writes the copy.
     *
     * @return what was written, in a sentence
     * @throws WrongInput where the place is taken or the file's layout leaves no place for what was found
     */
    String write(Path place) {
        if (isEmpty()) {
            return say("cli.find.write.nothing");
        }
        new NewFile(place, context.words()).write(copy().text());
        List<String> names = new ArrayList<>();
        result.proposed().forEach(s -> names.add(s.name()));
        result.sticks().forEach(s -> names.add(s.name()));
        return say("cli.find.written", place, String.join(", ", names));
    }

    /**
     * The model that the copy describes.
     *
     * @throws WrongInput where the file's layout leaves no place for what was found
     */
    Model model() {
        return ((ReadModel.Project) copy().read(name, library)).model();
    }

    private ModelCopy copy() {
        String comment = say(result.isMet() ? "cli.find.write.comment" : "cli.find.write.comment.nearest");
        Optional<ModelCopy> copy = Optional.of(new ModelCopy(project.text()));
        for (SetUp setUp : result.proposed()) {
            copy = copy.flatMap(c -> c.with(setUp, comment));
        }
        for (Stick stick : result.sticks()) {
            copy = copy.flatMap(c -> c.with(stick, comment));
        }
        return copy.filter(c -> c.read(name, library) instanceof ReadModel.Project)
                .orElseThrow(() -> new WrongInput(say("cli.find.write.layout", name)));
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
