package throwline.input;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.AirfoilLibrary;

/** The text of a model file with set-ups and sticks added; all else, comments too, stays as it is. */
public final class ModelCopy {

    private final String text;

    /** A copy of this text of a model file. */
    public ModelCopy(String text) {
        this.text = text;
    }

    /** The same with one more set-up; empty where the file's layout leaves no place for it. */
    public Optional<ModelCopy> with(SetUp setUp, String comment) {
        return inserted("set-ups", EntryText.of(setUp), comment);
    }

    /** The same with one more stick; empty where the file's layout leaves no place for it. */
    public Optional<ModelCopy> with(Stick stick, String comment) {
        return inserted("sticks", EntryText.of(stick), comment);
    }

    /** The text. */
    public String text() {
        return text;
    }

    /** What the text describes, read as a model file is. */
    public ReadModel read(String shownAs, AirfoilLibrary library) {
        return ModelFile.read(text, shownAs, library);
    }

    private Optional<ModelCopy> inserted(String group, String entry, String comment) {
        try {
            return InsertPlace.find(text, group).map(place -> new ModelCopy(place.insert(text, group, entry, comment)));
        } catch (YamlEngineException e) {
            return Optional.empty();
        }
    }
}
