package throwline.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import throwline.model.Assumption;
import throwline.section.AirfoilLibrary;
import throwline.units.Unit;

/** Reads a model file. Never throws for anything that a file may hold. */
public final class ModelFile {

    /** Most set-ups times packs of one model, and of all models that are compared at once. */
    public static final int MOST_FLOWN = 64;

    /** Most set-ups times packs times surfaces of the wing, likewise. */
    public static final int MOST_MOVED = 240;

    /** The format that is read. */
    static final int VERSION = 1;

    private static final KeyTable TABLE = KeyTable.withFlights();

    private ModelFile() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param library the airfoils that it may name
     * @return the model, or all problems
     */
    public static ReadModel read(Path file, AirfoilLibrary library) {
        return read(file, library, List.of());
    }

    /**
     * Reads a file that its reader wants to see in other units.
     *
     * @param file the file
     * @param library the airfoils that it may name
     * @param shown of length, speed or weight, instead of those that the file asks for
     * @return the model, or all problems
     */
    public static ReadModel read(Path file, AirfoilLibrary library, List<Unit> shown) {
        try {
            return parse(SourceText.read(file), file.toString(), library, shown);
        } catch (UnreadableFile e) {
            return new ReadModel.Faulty(List.of(e.problem(file.toString())));
        }
    }

    /**
     * Reads a stream, such as standard input.
     *
     * @param in read to its end or to the largest size of a model file; left open
     * @param shownAs what problems call it
     * @param library the airfoils that it may name
     * @param shown of length, speed or weight, instead of those that the file asks for
     * @return the model, or all problems
     * @throws IOException where the stream cannot be read
     */
    public static ReadModel read(InputStream in, String shownAs, AirfoilLibrary library, List<Unit> shown)
            throws IOException {
        try {
            return parse(SourceText.read(in), shownAs, library, shown);
        } catch (UnreadableFile e) {
            return new ReadModel.Faulty(List.of(e.problem(shownAs)));
        }
    }

    /** Reads a text that stands in no file. */
    static ReadModel read(String text, String shownAs, AirfoilLibrary library) {
        try {
            return parse(text, shownAs, library, List.of());
        } catch (UnreadableFile e) {
            return new ReadModel.Faulty(List.of(e.problem(shownAs)));
        }
    }

    /** Why a value was assumed as it was, in a sentence; empty where nothing needs to be said. */
    public static String reason(Assumption assumption) {
        return TABLE.find(assumption.path()).map(KeyRow::reason).orElse("");
    }

    private static ReadModel parse(String text, String shownAs, AirfoilLibrary library, List<Unit> shown)
            throws UnreadableFile {
        new CommentedGroups(TABLE).check(text);
        Problems problems = new Problems(shownAs);
        KeyCheck keys = new KeyCheck(TABLE, problems);
        Branch root = keys.check(YamlTree.parse(text));
        Movables movables = new Movables(root);
        new WingCheck(root, problems).check();
        new DriveCheck(root, problems).check();
        new SetUpCheck(root, movables, problems).check();
        new SizeCheck(problems).check(root);
        AirfoilCheck airfoils = new AirfoilCheck(library, problems);
        airfoils.check(root);
        return problems.isEmpty()
                ? new ModelBuilder(root, movables, keys, shown, text)
                        .build()
                        .with(keys.readAs())
                        .with(airfoils.notes())
                : new ReadModel.Faulty(problems.list());
    }
}
