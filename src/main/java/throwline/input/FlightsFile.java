package throwline.input;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import throwline.logs.FlightLog;
import throwline.model.Model;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;
import throwline.words.Message;

/** Reads a file of flights. Never throws for anything that a file may hold. */
public final class FlightsFile {

    /** Begins the keys of a model file, and of flights in one. */
    private static final Pattern MODEL = Pattern.compile("(?m)^throwline\\s*:");

    private static final Pattern INSIDE = Pattern.compile("(?m)^flights\\s*:");

    private static final String ENDING = "-flights.yaml";

    private FlightsFile() {}

    /** The file of flights beside a model file: its name without ending, with "-flights.yaml". */
    public static Path beside(Path model) {
        String name = String.valueOf(model.getFileName());
        int point = name.lastIndexOf('.');
        return model.resolveSibling((point > 0 ? name.substring(0, point) : name) + ENDING);
    }

    /** Files in which the flights of a model are kept: the one beside it, the model file itself, none; both are one too many. */
    public static List<Path> kept(Path model) {
        List<Path> kept = new ArrayList<>();
        if (Files.exists(beside(model))) {
            kept.add(beside(model));
        }
        try {
            if (INSIDE.matcher(SourceText.read(model)).find()) {
                kept.add(model);
            }
        } catch (UnreadableFile e) {
            // whoever reads the model says why
        }
        return kept;
    }

    /**
     * Reads a file of flights, or those in a model file.
     *
     * @param file the file
     * @param model that its notes are about
     * @return the notes, or all problems
     */
    public static ReadFlights read(Path file, Model model) {
        try {
            ReadFlights read = parse(SourceText.read(file), file.toString(), model);
            return read instanceof ReadFlights.Notes notes ? withLogs(notes, file) : read;
        } catch (UnreadableFile e) {
            return new ReadFlights.Faulty(List.of(e.problem(file.toString())));
        }
    }

    /** The logs of flights that count, from files beside the notes. */
    static ReadFlights withLogs(ReadFlights.Notes notes, Path file) {
        Map<String, FlightLog> logs = new LinkedHashMap<>();
        Map<Long, String> sums = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (FlownDay day : notes.notes().counted()) {
            if (day.log().isEmpty()) {
                continue;
            }
            Path log = file.resolveSibling(day.log().get().file());
            ReadLog read = LogFile.read(log, day.log().get());
            if (read instanceof ReadLog.Faulty faulty) {
                problems.addAll(faulty.problems());
            } else if (read instanceof ReadLog.Log good) {
                String twin = sums.putIfAbsent(good.sum(), good.log().name());
                if (twin != null) {
                    Message note = Message.of("input.log.twin", UnknownKey.shown(twin));
                    problems.add(new Problem(log.toString(), 0, 0, "", note));
                }
                logs.put(day.name(), good.log());
            }
        }
        return problems.isEmpty()
                ? new ReadFlights.Notes(notes.notes(), notes.text(), logs)
                : new ReadFlights.Faulty(problems);
    }

    /** Reads the file beside a model file; no notes where there is none. */
    public static ReadFlights readBeside(Path modelFile, Model model) {
        Path file = beside(modelFile);
        return Files.exists(file) ? read(file, model) : new ReadFlights.Notes(FlightNotes.none(), "", Map.of());
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

    private static KeyTable table(String text) {
        return MODEL.matcher(text).find() ? KeyTable.withFlights() : KeyTable.load(KeyTable.FLIGHTS);
    }

    private static ReadFlights parse(String text, String shownAs, Model model) throws UnreadableFile {
        Problems problems = new Problems(shownAs);
        Branch root = new KeyCheck(table(text), problems).check(YamlTree.parse(text));
        if (!problems.isEmpty()) {
            return new ReadFlights.Faulty(problems.list());
        }
        FlightNotes notes = new FlightsBuilder(root, model, problems).build();
        return problems.isEmpty()
                ? new ReadFlights.Notes(notes, text, Map.of())
                : new ReadFlights.Faulty(problems.list());
    }
}
