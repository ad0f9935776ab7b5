package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import throwline.model.SetUp;

/** Writes a flight behind those that a file of flights has, and changes nothing else in it. */
public final class FlightEntry {

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ./+-]*");

    private final FlightInterview told;

    /** The flight that was told of. */
    public FlightEntry(FlightInterview told) {
        this.told = told;
    }

    /**
     * The file with the flight behind its others.
     *
     * @param before text of the file; empty for a new one
     * @param modelFile name of the model file
     * @return empty where the file is laid out so that nothing can be added without touching the rest
     */
    public Optional<String> appended(String before, String modelFile) {
        return new FlightLines(told.model(), lines()).appended(before, modelFile);
    }

    /** The entry as it would be written. */
    public String text() {
        return "  " + String.join("\n  ", lines()) + "\n";
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("- date: " + told.said("date"));
        if (!told.said("pack").isEmpty()) {
            lines.add("  pack: " + quoted(told.said("pack")));
        }
        given(lines, "weight", told.said("weight"));
        if (!told.said("temperature").isEmpty()) {
            lines.add("  air: {temperature: " + told.said("temperature") + "}");
        }
        if (!told.said("wind").isEmpty()) {
            lines.add("  wind: {speed: " + told.said("wind") + ", told by: " + told.said("wind.told") + "}");
        }
        List<String> notes = new ArrayList<>();
        List<String> setUps = new ArrayList<>();
        for (String setUp : told.flown()) {
            notes.addAll(notes(setUp));
            setUps.add("    " + quoted(setUp) + ": " + asFlown(told.setUp(setUp)));
        }
        if (!setUps.isEmpty()) {
            lines.add("  set-ups:");
            lines.addAll(setUps);
        }
        if (!notes.isEmpty()) {
            lines.add("  noticed:");
            notes.forEach(note -> lines.add("    - {" + note + "}"));
        }
        return lines;
    }

    private static void given(List<String> lines, String key, String said) {
        if (!said.isEmpty()) {
            lines.add("  " + key + ": " + said);
        }
    }

    private List<String> notes(String setUp) {
        List<String> notes = new ArrayList<>();
        String at = setUp + "/";
        String in = ", set-up: " + quoted(setUp);
        String stall = told.said(at + "stall");
        if (!stall.isEmpty()) {
            String going = told.said(at + "stall.going");
            notes.add("what: stall" + in
                    + (going.startsWith("airspeed")
                            ? ", airspeed: " + stall + ", told by: airspeed"
                            : ", ground speed: " + stall + ", going: " + going + ", told by: GPS"));
        }
        String glide = told.said(at + "glide");
        if (!glide.isEmpty()) {
            notes.add("what: glide" + in + ", height: " + told.said(at + "glide.height") + ", time: " + glide
                    + ", told by: " + told.said(at + "glide.told"));
        }
        String trim = told.said(at + "trim");
        if (!trim.isEmpty()) {
            notes.add("what: trim" + in + ", trimmed by: " + trim + ", speed: approach");
        }
        for (String stick : told.sticks(setUp)) {
            String roll = told.said(at + "roll/" + stick);
            if (!roll.isEmpty()) {
                notes.add("what: roll" + in + ", stick: " + quoted(stick) + ", rolls: 1, time: " + roll);
            }
        }
        String floated = told.said(at + "float");
        if (!floated.isEmpty()) {
            notes.add("what: float" + in + ", distance: " + floated);
        }
        return notes;
    }

    /** Throws as they are in the model file now. */
    static String asFlown(SetUp setUp) {
        List<String> moved = new ArrayList<>();
        for (Map.Entry<String, Double> surface : setUp.deflections().entrySet()) {
            if (surface.getValue() != 0) {
                moved.add(quoted(surface.getKey()) + ": " + degrees(surface.getValue()));
            }
        }
        if (setUp.elevator() != 0) {
            moved.add(Movable.ELEVATOR + ": " + degrees(setUp.elevator()));
        }
        return "{" + String.join(", ", moved) + "}";
    }

    private static String degrees(double angle) {
        String size = String.format(Locale.ROOT, "%.2f", Math.toDegrees(Math.abs(angle)))
                .replaceFirst("\\.?0+$", "");
        return size + (angle < 0 ? " deg up" : " deg down");
    }

    /** Plain where that cannot be read as anything else, else in quotes. */
    static String quoted(String name) {
        return PLAIN.matcher(name).matches() && !name.endsWith(" ")
                ? name
                : "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
