package throwline.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        form(draft);
        return new DraftWriter(table, words, Map.of())
                .write(draft, List.of(words.say("input.new.header.empty"), words.say("input.new.header.sign")));
    }

    /**
     * The short file that an interview gives: what was answered, and what must stand in a file.
     *
     * @param interview with all questions answered
     */
    public String from(Interview interview) {
        List<String> header = List.of(
                words.say("input.new.header", interview.text("name")),
                words.say("input.new.header.assumed"),
                words.say("input.new.header.short"));
        return new ShortDraft(table, words).write(draft(interview), header);
    }

    /**
     * The same with every key and its meaning.
     *
     * @param interview with all questions answered
     */
    public String full(Interview interview) {
        Draft draft = draft(interview);
        List<String> header = List.of(
                words.say("input.new.header", interview.text("name")),
                words.say("input.new.header.assumed"),
                words.say("input.new.header.sign"));
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
        drive(draft, interview);
        if (Answers.isImperial(interview.text("span"))) {
            draft.at("show", "length").give("in");
            draft.at("show", "speed").give("mph");
            draft.at("show", "weight").give("lb");
        }
        rigging(draft, interview);
        hinges(draft, interview);
        setUps(draft, interview);
        sticks(draft, interview);
        return draft;
    }

    private static void give(Draft draft, Interview interview, String id, String... path) {
        String text = interview.text(id);
        if (!text.isEmpty()) {
            draft.at(path).give(text);
        }
    }

    private static void drive(Draft draft, Interview interview) {
        if (!interview.hasPropeller()) {
            draft.at("propeller").give("none");
        }
        give(draft, interview, "propeller", "propeller", "diameter");
        give(draft, interview, "pitch", "propeller", "pitch");
        give(draft, interview, "shut", "propeller", "throttle shut");
        give(draft, interview, "kind", "propeller", "kind");
        give(draft, interview, "kv", "motor", "kv");
    }

    private static void packs(Draft draft, Interview interview) {
        String second = interview.text("weight2");
        boolean heavier =
                Answers.amount(second, Dimension.MASS) >= Answers.amount(interview.text("weight"), Dimension.MASS);
        String first = second.isEmpty() ? "usual" : heavier ? "small" : "large";
        pack(draft, interview, first, "");
        if (!second.isEmpty()) {
            pack(draft, interview, heavier ? "large" : "small", "2");
        }
    }

    private static void pack(Draft draft, Interview interview, String name, String which) {
        for (String key : List.of("weight", "balance", "cells", "capacity")) {
            give(draft, interview, key + which, "packs", name, key);
        }
    }

    private static void wing(Draft draft, Interview interview) {
        boolean imperial = Answers.isImperial(interview.text("span"));
        double middle = interview.metres("chord");
        give(draft, interview, "position", "wing", "position");
        draft.at(MIDDLE).at("at").give(imperial ? "0 in" : "0 mm");
        draft.at(MIDDLE).at("chord").give(interview.text("chord"));
        if (interview.hasCoordinates()) {
            draft.at(MIDDLE).at("airfoil").give(interview.text("coordinates"));
        } else {
            draft.at(MIDDLE)
                    .at("airfoil")
                    .guess(airfoil(interview.text("shape"), interview.metres("thickness") / middle));
        }
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
                .filter(row -> row.get(0).replace(';', ',').equals(shape))
                .min(Comparator.comparingDouble(row -> Math.abs(Double.parseDouble(row.get(2)) / 100 - thickness)))
                .map(row -> row.get(1))
                .orElse("clark-y");
    }

    /** Usual travels, set-ups and sticks, for the form that nobody answered. */
    private static void form(Draft draft) {
        draft.at("set-ups", "clean");
        UsualThrows usual = new UsualThrows(false);
        for (String path : UsualThrows.PATHS) {
            usual.at(path).ifPresent(size -> draft.at(path.split("\\.", -1)).guess(size));
        }
        draft.at("sticks", "full up", "does").guess("pull");
        draft.at("sticks", "rates", "does").guess("roll");
    }

    /** Angles of wing and tail against the body; left out where they are not known. */
    private static void rigging(Draft draft, Interview interview) {
        if (interview.text("rigging").equals(InterviewSteps.STRAIGHT)) {
            draft.at("wing", "incidence").give("0 deg");
            draft.at("tail", "incidence").give("0 deg");
        }
        give(draft, interview, "wing.incidence", "wing", "incidence");
        give(draft, interview, "tail.incidence", "tail", "incidence");
        give(draft, interview, "cruise", "tail", "elevator", "cruise");
        give(draft, interview, "cruise.speed", "tail", "elevator", "cruise speed");
    }

    /** What was measured of surfaces, their travel and the flaps' servo. */
    private static void hinges(Draft draft, Interview interview) {
        Draft surfaces = draft.at("wing", "surfaces");
        give(surfaces, interview, "flaps.chord", "flaps", "chord");
        give(surfaces, interview, "ailerons.chord", "ailerons", "chord");
        String down = bare(interview.text("flaps.down"));
        if (interview.hasFlaps() && !down.isEmpty()) {
            String up = interview.text("roll.flaps");
            surfaces.at("flaps", "travel").give(both(up.isEmpty() ? "0 deg" : up, down));
        }
        if (!interview.text("ailerons.up").isEmpty()) {
            surfaces.at("ailerons", "travel")
                    .give(both(interview.text("ailerons.up"), interview.text("ailerons.down")));
        }
        give(draft, interview, "elevator.chord", "tail", "elevator", "chord");
        if (!interview.text("elevator.travel").isEmpty()) {
            draft.at("tail", "elevator", "travel").give(bare(interview.text("elevator.travel")));
        }
        give(draft, interview, "servo", "servos", "flaps", "torque");
        give(draft, interview, "servo.arm", "servos", "flaps", "arm");
        give(draft, interview, "servo.horn", "servos", "flaps", "horn");
    }

    private static void setUps(Draft draft, Interview interview) {
        draft.at("set-ups", "clean").give("{}");
        moved(draft, interview, "takeoff", "down", "set-ups", "take-off flap", "flaps");
        moved(draft, interview, "landing", "down", "set-ups", "landing flap", "flaps");
        moved(draft, interview, "brake.flaps", "down", "set-ups", "airbrake", "flaps");
        moved(draft, interview, "brake.ailerons", "up", "set-ups", "airbrake", "ailerons");
        if (draft.at("set-ups").children().size() < 2) {
            // A file compares two set-ups at least.
            draft.at("set-ups", "landing").guess("{}");
        }
    }

    private static void sticks(Draft draft, Interview interview) {
        Optional<String> up = interview.throwOf("roll.up").map(NewModelFile::bare);
        Optional<String> down = interview.throwOf("roll.down").map(NewModelFile::bare);
        if (up.isPresent()) {
            boolean guess = interview.text("roll.up").isEmpty()
                    && interview.text("roll.down").isEmpty();
            String size = both(up.get(), down.orElse("0 deg"));
            roll(draft, "rates", size, guess);
            if (!interview.text("roll.flaps").isEmpty()) {
                roll(draft, "with flaps", size, guess);
                draft.at("sticks", "with flaps", "flaps").give(bare(interview.text("roll.flaps")));
            }
        }
        if (interview.throwOf("pull").isPresent()) {
            draft.at("sticks", "full up", "does").give("pull");
            moved(draft, interview, "pull", "up", "sticks", "full up", "elevator");
            if (!interview.text("pull.flaps").isEmpty()) {
                draft.at("sticks", "with camber", "does").give("pull");
                moved(draft, interview, "pull", "up", "sticks", "with camber", "elevator");
                moved(draft, interview, "pull.flaps", "down", "sticks", "with camber", "flaps");
            }
        }
    }

    private static void roll(Draft draft, String stick, String size, boolean guess) {
        draft.at("sticks", stick, "does").give("roll");
        Draft ailerons = draft.at("sticks", stick, "ailerons");
        if (guess) {
            ailerons.guess(size);
        } else {
            ailerons.give(size);
        }
    }

    /** A throw with its way in words, where there is to be one. */
    private static void moved(Draft draft, Interview interview, String id, String way, String... path) {
        interview.throwOf(id).ifPresent(size -> {
            String said = bare(size) + " " + way;
            if (interview.text(id).isEmpty()) {
                draft.at(path).guess(said);
            } else {
                draft.at(path).give(said);
            }
        });
    }

    /** Travel or throws both ways. */
    private static String both(String up, String down) {
        return "{up: " + bare(up) + ", down: " + bare(down) + "}";
    }

    /** A throw without a word for its way, and with a unit: a bare number is in degrees. */
    private static String bare(String said) {
        String size = said.replaceFirst("(?i)\\s*(up|down)$", "").replaceFirst("^[+-]\\s*", "");
        return size.matches("0+") ? "0 deg" : size;
    }
}
