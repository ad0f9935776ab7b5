package throwline.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import throwline.model.Assumption;
import throwline.section.AirfoilLibrary;
import throwline.units.Dimension;
import throwline.words.Words;

/** Writes new model files: from an interview, or empty. */
public final class NewModelFile {

    private static final String[] MIDDLE = {"wing", "sections", "1"};
    private static final String[] TIP = {"wing", "sections", "2"};

    private final Words words;
    private final AirfoilLibrary library;
    private final KeyTable table = KeyTable.load();

    /**
     * A writer.
     *
     * @param words the sentences
     * @param library the airfoils
     */
    public NewModelFile(Words words, AirfoilLibrary library) {
        this.words = words;
        this.library = library;
    }

    /** The empty form: every key, blank where a value is required. */
    public String empty() {
        Draft draft = new Draft();
        draft.at("throwline").give(String.valueOf(ModelFile.VERSION));
        draft.at(MIDDLE).at("at").give("0 mm");
        draft.at(MIDDLE).at("airfoil");
        draft.at(TIP).at("at");
        for (String surface : List.of("flaps", "ailerons")) {
            draft.at("wing", "surfaces", surface, "from");
        }
        draft.at("packs", "small", "weight");
        draft.at("packs", "large", "weight");
        setUps(draft, false, true, true);
        return new DraftWriter(table, words, Map.of())
                .write(draft, List.of(words.say("input.new.header.empty"), words.say("input.new.header.sign")));
    }

    /**
     * The file that an interview gives.
     *
     * @param interview with all questions answered
     */
    public String from(Interview interview) {
        Draft draft = draft(interview);
        List<String> header = List.of(
                words.say("input.new.header", interview.text("name")),
                words.say("input.new.header.assumed"),
                words.say("input.new.header.sign"),
                words.say("input.new.header.cruise", cruise(interview)));
        String first = new DraftWriter(table, words, Map.of()).write(draft, header);
        return new DraftWriter(table, words, assumed(first)).write(draft, header);
    }

    /** What the reader would assume for this file. */
    private Map<String, String> assumed(String text) {
        try {
            ReadModel read = ModelFile.read(
                    new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "new", library, List.of());
            return read instanceof ReadModel.Project project
                    ? project.assumed().stream().collect(Collectors.toMap(Assumption::path, Assumption::value))
                    : Map.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String cruise(Interview interview) {
        return interview.text("cruise").isEmpty() ? words.say("input.new.d.cruise") : interview.text("cruise");
    }

    private Draft draft(Interview interview) {
        Draft draft = new Draft();
        draft.at("throwline").give(String.valueOf(ModelFile.VERSION));
        give(draft, interview, "name", "name");
        packs(draft, interview);
        wing(draft, interview);
        give(draft, interview, "tail.span", "tail", "span");
        give(draft, interview, "tail.chord", "tail", "chord");
        give(draft, interview, "arm", "tail", "arm");
        give(draft, interview, "tail.position", "tail", "position");
        give(draft, interview, "length", "body", "length");
        give(draft, interview, "width", "body", "width");
        give(draft, interview, "height", "body", "height");
        if (interview.text("wheels").isEmpty()) {
            draft.at("wheels").give("none");
        }
        give(draft, interview, "wheels", "wheels", "diameter");
        if (!interview.hasPropeller()) {
            draft.at("propeller").give("none");
        }
        give(draft, interview, "propeller", "propeller", "diameter");
        give(draft, interview, "pitch", "propeller", "pitch");
        give(draft, interview, "shut", "propeller", "throttle shut");
        boolean glider = interview.text("wheels").isEmpty()
                && (!interview.hasPropeller() || interview.text("shut").equals("folded"));
        if (Answers.isImperial(interview.text("span"))) {
            draft.at("show", "length").give("in");
            draft.at("show", "speed").give("mph");
            draft.at("show", "weight").give("lb");
        }
        setUps(draft, glider, interview.hasFlaps(), interview.hasAilerons());
        flapTravel(draft, interview);
        return draft;
    }

    private static void give(Draft draft, Interview interview, String id, String... path) {
        String text = interview.text(id);
        if (!text.isEmpty()) {
            draft.at(path).give(text);
        }
    }

    private static void packs(Draft draft, Interview interview) {
        String second = interview.text("weight2");
        boolean heavier =
                Answers.amount(second, Dimension.MASS) >= Answers.amount(interview.text("weight"), Dimension.MASS);
        String first = second.isEmpty() ? "usual" : heavier ? "small" : "large";
        give(draft, interview, "weight", "packs", first, "weight");
        give(draft, interview, "balance", "packs", first, "balance");
        if (!second.isEmpty()) {
            give(draft, interview, "weight2", "packs", heavier ? "large" : "small", "weight");
            give(draft, interview, "balance2", "packs", heavier ? "large" : "small", "balance");
        }
    }

    private static void wing(Draft draft, Interview interview) {
        boolean imperial = Answers.isImperial(interview.text("span"));
        double middle = interview.metres("chord");
        give(draft, interview, "position", "wing", "position");
        draft.at(MIDDLE).at("at").give(imperial ? "0 in" : "0 mm");
        draft.at(MIDDLE).at("chord").give(interview.text("chord"));
        draft.at(MIDDLE).at("airfoil").guess(airfoil(interview.text("shape"), interview.metres("thickness") / middle));
        draft.at(TIP).at("at").give(Answers.length(interview.metres("span") / 2, imperial));
        draft.at(TIP)
                .at("chord")
                .give(interview.text("tip").isEmpty() ? interview.text("chord") : interview.text("tip"));
        draft.at(TIP).at("set back").give(Answers.length(interview.tipSetBack(interview.text("edge")), imperial));
        give(draft, interview, "flaps.from", "wing", "surfaces", "flaps", "from");
        give(draft, interview, "flaps.to", "wing", "surfaces", "flaps", "to");
        if (interview.hasAilerons()) {
            draft.at("wing", "surfaces", "ailerons", "from").give(interview.aileronsFrom());
            give(draft, interview, "ailerons.to", "wing", "surfaces", "ailerons", "to");
        }
    }

    private static String airfoil(String shape, double thickness) {
        return Lines.of("shapes.csv").stream()
                .filter(row -> row.get(0).equals(shape))
                .min(Comparator.comparingDouble(row -> Math.abs(Double.parseDouble(row.get(2)) / 100 - thickness)))
                .map(row -> row.get(1))
                .orElse("clarky");
    }

    /** Usual set-ups and sticks for the surfaces that the model has. */
    private static void setUps(Draft draft, boolean glider, boolean flaps, boolean ailerons) {
        draft.at("set-ups", "clean");
        for (List<String> row : Lines.of("typical.csv")) {
            String[] path = row.get(1).split("\\.", -1);
            String surface =
                    row.get(1).contains("ailerons") ? "ailerons" : row.get(1).contains("flaps") ? "flaps" : "";
            boolean has = surface.isEmpty() || (surface.equals("flaps") ? flaps : ailerons);
            if (row.get(0).equals(glider ? "glider" : "powered") && has) {
                draft.at(path).guess(row.get(2).replace(';', ','));
            }
        }
        draft.at("sticks", "full up", "does").guess("pull");
        if (ailerons) {
            draft.at("sticks", "rates", "does").guess("roll");
        }
    }

    /** Travel as its owner measured it; what was assumed beyond it is cut. */
    private static void flapTravel(Draft draft, Interview interview) {
        String down = interview.text("flaps.down").replaceFirst("(?i)\\s*down$", "");
        if (!interview.hasFlaps() || down.isEmpty()) {
            return;
        }
        draft.at("wing", "surfaces", "flaps", "travel").guess("{up: 0 deg, down: " + down + "}");
        double most = ((ValueReader.Value) ValueReader.deflection(down)).value() instanceof Deflection d
                ? d.angle(interview.flapChord()).orElse(Movable.MOST_DOWN)
                : Movable.MOST_DOWN;
        for (String setUp : List.of("take-off flap", "landing flap", "airbrake")) {
            Draft place = draft.at("set-ups", setUp, "flaps");
            double wanted = place.value()
                    .map(v -> Answers.amount(v.replaceFirst(" down$", ""), Dimension.ANGLE))
                    .orElse(0.0);
            if (wanted > most) {
                place.guess((int) Math.toDegrees(most) + " deg down");
            }
        }
    }
}
