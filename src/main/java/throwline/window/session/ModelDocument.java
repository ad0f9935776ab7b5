package throwline.window.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import throwline.input.ModelText;
import throwline.input.Problem;
import throwline.input.ReadModel;
import throwline.section.AirfoilLibrary;

/** A model file that is open: its text with all changes, what the text describes, and what the disk has of it. */
public final class ModelDocument {

    private final String title;
    private final AirfoilLibrary airfoils;
    private final TextHistory history;
    private Optional<Path> place;
    private Disk.Text onDisk;
    private Optional<String> saved;
    private ReadModel reading;
    private ModelText text;
    private ReadModel.Project good;

    private ModelDocument(
            String title,
            Optional<Path> place,
            Disk.Text onDisk,
            Optional<String> saved,
            ReadModel.Project good,
            AirfoilLibrary airfoils) {
        this.title = title;
        this.place = place;
        this.onDisk = onDisk;
        this.saved = saved;
        this.airfoils = airfoils;
        this.good = good;
        history = new TextHistory(onDisk.model());
        reading = good;
        text = new ModelText(history.text());
    }

    /** What came of opening a text. */
    public sealed interface Opened permits Good, Bad {}

    /** A model. */
    public record Good(ModelDocument document) implements Opened {}

    /** No model: all that is wrong with it. */
    public record Bad(List<Problem> problems) implements Opened {
        public Bad {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Opens a text.
     *
     * @param title what problems call it
     * @param place its file; empty where it has none yet
     * @param letters what is in the file, or would be
     * @param airfoils that it may name
     */
    static Opened open(String title, Optional<Path> place, Disk.Text letters, AirfoilLibrary airfoils) {
        ReadModel read = new ModelText(letters.model()).read(title, airfoils);
        if (read instanceof ReadModel.Faulty faulty) {
            return new Bad(faulty.problems());
        }
        Optional<String> saved = place.map(file -> letters.model());
        return new Good(new ModelDocument(title, place, letters, saved, (ReadModel.Project) read, airfoils));
    }

    /** What problems call it. */
    public String title() {
        return place.map(Path::toString).orElse(title);
    }

    /** Its file; empty where it has none yet. */
    public Optional<Path> place() {
        return place;
    }

    /** The name of its file; where it has none yet, one that is made of the model's name. */
    public String fileName() {
        return place.flatMap(file -> Optional.ofNullable(file.getFileName()))
                .map(Path::toString)
                .orElseGet(() -> new FileName(good.model().name()).proposal());
    }

    /** Its text as it stands. */
    public ModelText text() {
        if (!text.text().equals(history.text())) {
            text = new ModelText(history.text());
        }
        return text;
    }

    /** The airfoils that it may name. */
    public AirfoilLibrary airfoils() {
        return airfoils;
    }

    /** The last text of it that could be read. */
    public ReadModel.Project good() {
        return good;
    }

    /** What is wrong with the text as it stands. */
    public List<Problem> problems() {
        return reading instanceof ReadModel.Faulty faulty ? faulty.problems() : List.of();
    }

    /** True where the disk does not have what the text says. */
    public boolean isUnsaved() {
        return !saved.equals(Optional.of(history.text()));
    }

    /** True where there is something to take back. */
    public boolean canUndo() {
        return history.canUndo();
    }

    /** True where there is something to make again. */
    public boolean canRedo() {
        return history.canRedo();
    }

    /** Makes a change, whatever may be wrong with it; the last good model stays. */
    void change(ModelText other) {
        history.change(other.text());
        read();
    }

    /**
     * Makes a change only where the text can still be read.
     *
     * @return what is wrong with it; none where it was made
     */
    List<Problem> changeIfGood(ModelText other) {
        ReadModel read = other.read(title(), airfoils);
        if (read instanceof ReadModel.Faulty faulty) {
            return faulty.problems();
        }
        history.change(other.text());
        reading = read;
        good = (ReadModel.Project) read;
        return List.of();
    }

    void undo() {
        history.undo();
        read();
    }

    void redo() {
        history.redo();
        read();
    }

    private void read() {
        reading = text().read(title(), airfoils);
        if (reading instanceof ReadModel.Project project) {
            good = project;
        }
    }

    /** What a file of it would hold, to the letter. */
    String letters() {
        return onDisk.of(history.text());
    }

    /** The disk has it now. */
    void saved(Path file) {
        place = Optional.of(file);
        onDisk = new Disk.Text(letters());
        saved = Optional.of(history.text());
    }

    /** What the disk had when it was last read or written. */
    String lettersOnDisk() {
        return onDisk.letters();
    }

    /** Takes what another program has put on the disk; a step that can be taken back. */
    void reload(Disk.Text other) {
        onDisk = other;
        saved = Optional.of(other.model());
        history.change(other.model());
        read();
    }

    /** Keeps what stands here, knowing that the disk has something else. */
    void keepMine(String lettersOfOther) {
        onDisk = new Disk.Text(lettersOfOther);
        saved = Optional.of(onDisk.model());
    }
}
