package throwline.input;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import throwline.model.Model;
import throwline.notes.FlightNotes;

/** Reads a file of flights. Never throws for anything that a file may hold. */
public final class FlightsFile {

    private static final KeyTable TABLE = KeyTable.load("/throwline/flight-keys.txt");

    private static final String ENDING = "-flights.yaml";

    private FlightsFile() {}

    /** The file of flights beside a model file: its name without ending, with "-flights.yaml". */
    public static Path beside(Path model) {
        String name = String.valueOf(model.getFileName());
        int point = name.lastIndexOf('.');
        return model.resolveSibling((point > 0 ? name.substring(0, point) : name) + ENDING);
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @param model that its notes are about
     * @return the notes, or all problems
     */
    public static ReadFlights read(Path file, Model model) {
        try {
            return parse(SourceText.read(file), file.toString(), model);
        } catch (UnreadableFile e) {
            return new ReadFlights.Faulty(List.of(e.problem(file.toString())));
        }
    }

    /** Reads the file beside a model file; no notes where there is none. */
    public static ReadFlights readBeside(Path modelFile, Model model) {
        Path file = beside(modelFile);
        return Files.exists(file) ? read(file, model) : new ReadFlights.Notes(FlightNotes.none(), "");
    }

    /**
     * Reads text.
     *
     * @param text of the file
     * @param shownAs what problems call it
     * @param model that its notes are about
     */
    public static ReadFlights read(String text, String shownAs, Model model) {
        try {
            return parse(text, shownAs, model);
        } catch (UnreadableFile e) {
            return new ReadFlights.Faulty(List.of(e.problem(shownAs)));
        }
    }

    private static ReadFlights parse(String text, String shownAs, Model model) throws UnreadableFile {
        Problems problems = new Problems(shownAs);
        Branch root = new KeyCheck(TABLE, problems).check(YamlTree.parse(text));
        if (!problems.isEmpty()) {
            return new ReadFlights.Faulty(problems.list());
        }
        FlightNotes notes = new FlightsBuilder(root, model, problems).build();
        return problems.isEmpty() ? new ReadFlights.Notes(notes, text) : new ReadFlights.Faulty(problems.list());
    }
}
