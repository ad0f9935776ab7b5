package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.words.Message;

/**
 * The answers of {@code throwline learn}: what a flyer noticed, set-up by set-up, only what was flown. An empty answer means
 * "not measured"; "back" takes the answer before back. Answers are checked by the table of keys as they come.
 */
public final class FlightInterview extends StepwiseQuestions {

    private static final KeyTable TABLE = KeyTable.load("/throwline/flight-keys.txt");

    private static final String NOT_MEASURED = "input.learn.d.not-measured";

    private static final List<String> GOING = List.of("into the wind", "with the wind", "both ways", "unknown");
    private static final String AIRSPEED = "airspeed sensor";

    /** Answer to "which set-up" that ends the questions. */
    static final String ALL = "that was all";

    private final Model model;
    private final String today;

    /**
     * A question and what fills the gap of its sentence.
     *
     * @param question the question; its sentence is {@code input.learn.q.ID}
     * @param about set-up or stick that it is about; empty for none
     */
    public record Asked(Question question, String about) {

        /** Key of the sentence. */
        public String sentence() {
            return "input.learn.q." + question.id();
        }
    }

    /**
     * @param model that was flown
     * @param today date that an empty answer to the first question means, year-month-day
     */
    public FlightInterview(Model model, String today) {
        this.model = model;
        this.today = today;
    }

    @Override
    boolean isSkip(String said) {
        return said.isEmpty() || List.of("notmeasured", "unknown", "?", "none").contains(NearestName.key(said));
    }

    @Override
    Optional<Message> wrong(Step step, String said) {
        if (!step.asked().question().choices().isEmpty()) {
            return wrongChoice(step.asked().question(), said);
        }
        KeyRow key = TABLE.all().stream()
                .filter(k -> k.path().equals(step.key()))
                .findFirst()
                .orElseThrow();
        if (step.key().endsWith("ground speed")) {
            key = TABLE.all().stream()
                    .filter(k -> k.path().endsWith("airspeed"))
                    .findFirst()
                    .orElseThrow();
        }
        return ValueReader.read(key, said) instanceof ValueReader.Wrong wrong
                ? Optional.of(wrong.note())
                : wrongTrim(step, said);
    }

    /** A trim needs its way, and the trailing edge must be able to go there. */
    private Optional<Message> wrongTrim(Step step, String said) {
        Optional<WrittenDeflection> trim =
                step.key().endsWith("trimmed by") ? Answers.deflection(said) : Optional.empty();
        if (trim.isEmpty()) {
            return Optional.empty();
        }
        if (trim.get().sense() == WrittenDeflection.Sense.UNSAID && trim.get().size() > 0) {
            return Optional.of(Message.of("input.flights.sense"));
        }
        return trim.get().signed(model.tail().throwChord()).isEmpty()
                ? Optional.of(Message.of("input.flights.throw"))
                : Optional.empty();
    }

    /** Set-ups that were flown, in the order in which they were told. */
    List<String> flown() {
        List<String> flown = new ArrayList<>();
        for (int i = 1; isAnswered("setup" + i); i++) {
            if (!said("setup" + i).equals(ALL)) {
                flown.add(said("setup" + i));
            }
        }
        return flown;
    }

    /** Roll sticks that work in a set-up. */
    List<String> sticks(String setUp) {
        SetUp named = setUp(setUp);
        return model.sticks().stream()
                .filter(s -> s instanceof Stick.Roll && s.worksIn(named))
                .map(Stick::name)
                .toList();
    }

    /** The set-up of this name. */
    SetUp setUp(String name) {
        return model.setUps().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    Model model() {
        return model;
    }

    /** True where nothing at all was measured. */
    public boolean isEmpty() {
        return answers().entrySet().stream()
                .filter(e -> e.getKey().contains("/") || e.getKey().equals("weight"))
                .allMatch(e -> e.getValue().isEmpty());
    }

    @Override
    Optional<Step> step() {
        for (Step step : day()) {
            if (!isAnswered(step.place())) {
                return Optional.of(step);
            }
        }
        for (int i = 1; ; i++) {
            String place = "setup" + i;
            List<String> left = Stream.concat(
                            model.setUps().stream().map(SetUp::name).filter(name -> !flown().contains(name)),
                            Stream.of(ALL))
                    .toList();
            if (!isAnswered(place)) {
                return left.size() == 1
                        ? Optional.empty()
                        : Optional.of(new Step(
                                place,
                                new Asked(
                                        new Question(
                                                i == 1 ? "setup" : "setup.next",
                                                left,
                                                i == 1 ? "" : "input.learn.d.all",
                                                ALL),
                                        ""),
                                ""));
            }
            if (said(place).equals(ALL)) {
                return Optional.empty();
            }
            for (Step step : about(said(place))) {
                if (!isAnswered(step.place())) {
                    return Optional.of(step);
                }
            }
        }
    }

    private List<Step> day() {
        List<Step> steps = new ArrayList<>();
        steps.add(step("date", "flights.[].date", List.of(), "input.new.d.usual", today, "date", ""));
        List<String> packs = model.packs().stream().map(Pack::name).toList();
        if (packs.size() > 1) {
            steps.add(step("pack", "", packs, "", "", "pack", ""));
        }
        steps.add(measured("weight", "flights.[].weight", "weight", ""));
        steps.add(measured("temperature", "flights.[].air.temperature", "temperature", ""));
        steps.add(measured("wind", "flights.[].wind.speed", "wind", ""));
        if (!said("wind").isEmpty()) {
            steps.add(step(
                    "wind.told",
                    "",
                    List.of("feel", "flag", "anemometer", "forecast"),
                    "input.new.d.usual",
                    "feel",
                    "wind.told",
                    ""));
        }
        return steps;
    }

    private List<Step> about(String setUp) {
        List<Step> steps = new ArrayList<>();
        String at = setUp + "/";
        steps.add(measured("stall", "flights.[].noticed.[].ground speed", at + "stall", setUp));
        if (!said(at + "stall").isEmpty()) {
            List<String> ways =
                    Stream.concat(Stream.of(AIRSPEED), GOING.stream()).toList();
            steps.add(step("stall.going", "", ways, "", "", at + "stall.going", setUp));
        }
        steps.add(measured("glide", "flights.[].noticed.[].time", at + "glide", setUp));
        if (!said(at + "glide").isEmpty()) {
            steps.add(step(
                    "glide.height",
                    "flights.[].noticed.[].height",
                    List.of(),
                    "input.new.d.usual",
                    "30 m",
                    at + "glide.height",
                    setUp));
            steps.add(step(
                    "glide.told",
                    "",
                    List.of("barometer", "landmarks", "eye"),
                    "input.new.d.usual",
                    "eye",
                    at + "glide.told",
                    setUp));
        }
        steps.add(measured("trim", "flights.[].noticed.[].trimmed by", at + "trim", setUp));
        for (String stick : sticks(setUp)) {
            steps.add(measured("roll", "flights.[].noticed.[].time", at + "roll/" + stick, stick));
        }
        steps.add(measured("float", "flights.[].noticed.[].distance", at + "float", setUp));
        return steps;
    }

    private static Step measured(String id, String key, String place, String about) {
        return step(id, key, List.of(), NOT_MEASURED, "", place, about);
    }

    private static Step step(
            String id, String key, List<String> choices, String fallback, String usual, String place, String about) {
        return new Step(place, new Asked(new Question(id, choices, fallback, usual), about), key);
    }
}
