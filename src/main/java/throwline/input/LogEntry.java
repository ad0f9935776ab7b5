package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.input.ProposedColumns.Proposed;
import throwline.logs.Channel;
import throwline.model.Model;
import throwline.model.Stick;
import throwline.notes.LogSource.Span;

/**
 * A flight with its log, as an entry of a file of flights.
 *
 * @param file name of the log
 * @param date of the flight, year-month-day
 * @param pack flown with
 * @param temperature as told; empty where not
 * @param columns proposal; none for formats without columns
 * @param meanings set-up by position of the switch
 * @param spans set-ups by time
 */
public record LogEntry(
        String file,
        String date,
        String pack,
        String temperature,
        List<Proposed> columns,
        Map<Double, String> meanings,
        List<Span> spans) {

    public LogEntry {
        columns = List.copyOf(columns);
        meanings = Map.copyOf(meanings);
        spans = List.copyOf(spans);
    }

    /** The entry as it would be written. */
    public String text(Model model) {
        return "  " + String.join("\n  ", lines(model)) + "\n";
    }

    /**
     * The file of flights with this one behind its others.
     *
     * @return empty where the file is laid out so that nothing can be added without touching the rest
     */
    public Optional<String> appended(Model model, String before, String modelFile) {
        return new FlightLines(model, lines(model)).appended(before, modelFile);
    }

    private List<String> lines(Model model) {
        List<String> lines = new ArrayList<>();
        lines.add("- date: " + date);
        lines.add("  pack: " + FlightEntry.quoted(pack));
        if (!temperature.isEmpty()) {
            lines.add("  air: {temperature: " + temperature + "}");
        }
        List<String> flown = Stream.concat(
                        meanings.entrySet().stream()
                                .sorted(Map.Entry.comparingByKey())
                                .map(Map.Entry::getValue),
                        spans.stream().map(Span::setUp))
                .distinct()
                .toList();
        if (!flown.isEmpty()) {
            lines.add("  set-ups:");
        }
        model.setUps().stream()
                .filter(setUp -> flown.contains(setUp.name()))
                .forEach(setUp ->
                        lines.add("    " + FlightEntry.quoted(setUp.name()) + ": " + FlightEntry.asFlown(setUp)));
        lines.add("  log:");
        lines.add("    file: " + FlightEntry.quoted(file));
        if (!columns.isEmpty()) {
            lines.add("    columns:");
        }
        for (Proposed column : columns) {
            List<String> parts = new ArrayList<>();
            parts.add("column: \"" + column.name().replace("\\", "\\\\").replace("\"", "\\\"") + "\"");
            if (!column.unit().isEmpty()) {
                parts.add("unit: " + column.unit());
            }
            parts.addAll(more(column, model));
            lines.add("      " + column.channel().key() + ": {" + String.join(", ", parts) + "}");
        }
        if (!spans.isEmpty()) {
            lines.add("    set-ups:");
        }
        for (Span span : spans) {
            lines.add("      - {from: " + LogInterview.shown(span.from()) + ", to: " + LogInterview.shown(span.to())
                    + ", set-up: " + FlightEntry.quoted(span.setUp()) + "}");
        }
        return lines;
    }

    private List<String> more(Proposed column, Model model) {
        return switch (column.channel()) {
            case THROTTLE ->
                column.most() > 101
                        ? List.of("shut: " + number(column.least()), "full: " + number(column.most()))
                        : List.of("shut: 0", "full: 100");
            case ROLL_STICK -> {
                List<String> parts = new ArrayList<>(List.of("full: 100"));
                model.sticks().stream()
                        .filter(s -> s instanceof Stick.Roll)
                        .findFirst()
                        .ifPresent(s -> parts.add("stick: " + FlightEntry.quoted(s.name())));
                yield parts;
            }
            case SWITCH -> {
                List<String> pairs = meanings.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(e -> number(e.getKey()) + " = " + e.getValue())
                        .map(FlightEntry::quoted)
                        .toList();
                yield pairs.isEmpty() ? List.of() : List.of("means: [" + String.join(", ", pairs) + "]");
            }
            default -> List.of();
        };
    }

    /** Whether a channel or times tell set-ups. */
    public boolean tellsSetUps() {
        return !spans.isEmpty()
                || (columns.stream().anyMatch(c -> c.channel() == Channel.SWITCH) && !meanings.isEmpty());
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.valueOf((long) value)
                : String.format(Locale.ROOT, "%.3f", value).replaceFirst("0+$", "");
    }
}
