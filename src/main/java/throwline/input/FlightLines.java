package throwline.input;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import throwline.model.Model;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;

/**
 * Lines of one flight, put behind those that a file of flights has; nothing else in it changes.
 *
 * @param model that was flown
 * @param lines from "- date" on, without indent
 */
record FlightLines(Model model, List<String> lines) {

    private static final Pattern ITEM = Pattern.compile("( *)- .*");

    FlightLines {
        lines = List.copyOf(lines);
    }

    /**
     * The file with the flight behind its others.
     *
     * @param before text of the file; empty for a new one
     * @param modelFile name of the model file
     * @return empty where the file is laid out so that nothing can be added without touching the rest
     */
    Optional<String> appended(String before, String modelFile) {
        if (before.isBlank()) {
            String text =
                    "throwline flights: 1\nmodel: " + FlightEntry.quoted(modelFile) + "\nflights:\n" + entry("  ");
            return isBehind(FlightNotes.none(), text, modelFile) ? Optional.of(text) : Optional.empty();
        }
        if (!(FlightsFile.read(before, modelFile, model) instanceof ReadFlights.Notes notes)) {
            return Optional.empty();
        }
        String text = before + (before.endsWith("\n") ? "" : "\n") + entry(indent(before));
        return isBehind(notes.notes(), text, modelFile) ? Optional.of(text) : Optional.empty();
    }

    /** Whether the new text holds the flights of the old one and one more. */
    private boolean isBehind(FlightNotes before, String text, String modelFile) {
        if (!(FlightsFile.read(text, modelFile, model) instanceof ReadFlights.Notes after)) {
            return false;
        }
        List<FlownDay> days = after.notes().days();
        List<String> old = before.days().stream().map(FlownDay::name).toList();
        return days.size() == old.size() + 1
                && days.subList(0, old.size()).stream()
                        .map(FlownDay::name)
                        .toList()
                        .equals(old);
    }

    /** How far the entries of the list stand in. */
    private static String indent(String text) {
        boolean in = false;
        for (String line : text.lines().toList()) {
            var item = ITEM.matcher(line);
            if (in && item.matches()) {
                return item.group(1);
            }
            in |= line.startsWith("flights:");
        }
        return "  ";
    }

    private String entry(String indent) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(indent).append(line).append('\n'));
        return text.toString();
    }
}
