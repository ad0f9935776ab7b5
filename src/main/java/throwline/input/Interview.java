package throwline.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import throwline.units.Dimension;
import throwline.words.Message;

/**
 * The questions of {@code throwline new}: what the owner of a model can answer with a ruler and a scale. Answers are
 * checked by the table of keys as they come.
 */
public final class Interview {

    private static final List<String> SHAPES =
            List.of("flat underneath", "slightly curved", "same both sides", "thin and cambered");
    private static final List<String> EDGES = List.of("neither, both slant alike", "the front edge", "the back edge");

    /** A surface of less width, m, is a slip of the keyboard. */
    private static final double NARROWEST = 0.01;

    private final KeyTable table = KeyTable.load();
    private final Map<String, String> answers = new LinkedHashMap<>();
    private final List<Step> steps = List.of(
            Step.needed("name", "name"),
            Step.needed("span", "wing.sections.[].at"),
            Step.needed("chord", "wing.sections.[].chord"),
            Step.open("tip", "wing.sections.[].chord", "input.new.d.tip"),
            Step.choice("edge", EDGES, "input.new.d.edge")
                    .when(a -> !a.text("tip").isEmpty()),
            Step.choice("shape", SHAPES, ""),
            Step.needed("thickness", "wing.sections.[].chord"),
            Step.needed("position", "wing.position"),
            Step.needed("weight", "packs.*.weight"),
            Step.needed("balance", "packs.*.balance"),
            Step.open("weight2", "packs.*.weight", "input.new.d.none"),
            Step.needed("balance2", "packs.*.balance")
                    .when(a -> !a.text("weight2").isEmpty()),
            Step.open("flaps.from", "wing.surfaces.*.from", "input.new.d.none"),
            Step.needed("flaps.to", "wing.surfaces.*.to").when(Interview::hasFlaps),
            Step.open("flaps.down", "set-ups.*.*", "input.new.d.flaps").when(Interview::hasFlaps),
            Step.needed("ailerons.from", "wing.surfaces.*.from").when(a -> !a.hasFlaps()),
            Step.open("ailerons.from2", "wing.surfaces.*.from", "input.new.d.none")
                    .when(Interview::hasFlaps),
            Step.needed("ailerons.to", "wing.surfaces.*.to").when(Interview::hasAilerons),
            Step.needed("arm", "tail.arm"),
            Step.needed("tail.span", "tail.span"),
            Step.needed("tail.chord", "tail.chord"),
            Step.open("tail.position", "tail.position", "input.new.d.tail"),
            Step.open("cruise", "set-ups.*.*", "input.new.d.cruise"),
            Step.open("propeller", "propeller.diameter", "input.new.d.none"),
            Step.open("pitch", "propeller.pitch", "input.new.d.guess").when(Interview::hasPropeller),
            Step.open("shut", "propeller.throttle shut", "input.new.d.shut").when(Interview::hasPropeller),
            Step.open("wheels", "wheels.diameter", "input.new.d.none"),
            Step.open("length", "body.length", "input.new.d.guess"),
            Step.open("width", "body.width", "input.new.d.guess"),
            Step.open("height", "body.height", "input.new.d.guess"));

    /**
     * One step.
     *
     * @param id of the question
     * @param key path of the row that checks the answer; empty for a choice of words
     * @param choices words that answer it
     * @param fallback what an empty answer means; empty where an answer is needed
     * @param asked whether it is asked, after the answers so far
     */
    private record Step(String id, String key, List<String> choices, String fallback, Predicate<Interview> asked) {

        static Step needed(String id, String key) {
            return new Step(id, key, List.of(), "", a -> true);
        }

        static Step open(String id, String key, String fallback) {
            return new Step(id, key, List.of(), fallback, a -> true);
        }

        static Step choice(String id, List<String> choices, String fallback) {
            return new Step(id, "", choices, fallback, a -> true);
        }

        Step when(Predicate<Interview> condition) {
            return new Step(id, key, choices, fallback, condition);
        }
    }

    /** The next question; empty when all are answered. */
    public Optional<Question> next() {
        return step().map(step -> new Question(step.id(), choices(step), step.fallback()));
    }

    /**
     * Takes the answer to {@link #next}.
     *
     * @param text as typed; empty to skip
     * @return what is wrong with it; empty when it was taken
     */
    public Optional<Message> answer(String text) {
        Step step = step().orElseThrow();
        String plain = text.strip();
        if (plain.isEmpty() || isSkip(step, plain)) {
            if (step.fallback().isEmpty()) {
                return Optional.of(Message.of("input.new.needed"));
            }
            answers.put(step.id(), "");
            return Optional.empty();
        }
        String said = chosen(plain, choices(step));
        Optional<Message> wrong = wrong(step, said);
        if (wrong.isEmpty()) {
            answers.put(step.id(), said);
        }
        return wrong;
    }

    /** What its owner calls the model; empty where it was not answered yet. */
    public String name() {
        return text("name");
    }

    /** The answer to a question; empty where it was skipped or not asked. */
    String text(String id) {
        return answers.getOrDefault(id, "");
    }

    /** An answered length, m. */
    double metres(String id) {
        return Answers.amount(text(id), Dimension.LENGTH);
    }

    /** How far the front edge at the tip lies behind that at the middle, m, when this edge runs straight across. */
    double tipSetBack(String edge) {
        double narrower = text("tip").isEmpty() ? 0 : metres("chord") - metres("tip");
        return switch (edge) {
            case "the front edge" -> 0;
            case "the back edge" -> narrower;
            default -> narrower / 2;
        };
    }

    /** Chord of the flaps at their inner end, m, with the share that is assumed. */
    double flapChord() {
        double middle = metres("chord");
        double wider = text("tip").isEmpty() ? 0 : metres("tip") - middle;
        return Answers.FLAP_CHORD * (middle + wider * metres("flaps.from") / (metres("span") / 2));
    }

    boolean hasFlaps() {
        return !text("flaps.from").isEmpty();
    }

    boolean hasAilerons() {
        return !aileronsFrom().isEmpty();
    }

    String aileronsFrom() {
        return hasFlaps() ? text("ailerons.from2") : text("ailerons.from");
    }

    boolean hasPropeller() {
        return !text("propeller").isEmpty();
    }

    private Optional<Step> step() {
        return steps.stream()
                .filter(s -> !answers.containsKey(s.id()) && s.asked().test(this))
                .findFirst();
    }

    private Optional<Key> key(Step step) {
        return table.all().stream().filter(k -> k.path().equals(step.key())).findFirst();
    }

    private List<String> choices(Step step) {
        return step.choices().isEmpty() ? key(step).map(Key::choices).orElse(List.of()) : step.choices();
    }

    private static boolean isSkip(Step step, String said) {
        return switch (step.fallback()) {
            case "input.new.d.none" -> said.equalsIgnoreCase("none");
            case "input.new.d.cruise" -> said.equalsIgnoreCase("level");
            default -> false;
        };
    }

    /** The choice that a number, or a part of a choice, stands for. */
    private static String chosen(String said, List<String> choices) {
        if (said.matches("[1-9]") && Integer.parseInt(said) <= choices.size()) {
            return choices.get(Integer.parseInt(said) - 1);
        }
        String key = NearestName.key(said);
        List<String> begun = choices.stream()
                .filter(c -> NearestName.key(c).contains(key) || key.contains(NearestName.key(c)))
                .toList();
        return begun.size() == 1 ? begun.get(0) : said;
    }

    private Optional<Message> wrong(Step step, String said) {
        if (!step.choices().isEmpty()) {
            return step.choices().contains(said)
                    ? relation(step.id(), said)
                    : Optional.of(Message.of("input.choice", said, String.join(", ", step.choices())));
        }
        if (step.id().equals("span")) {
            return Answers.between(said, "span", 0.3, 8);
        }
        if (step.id().equals("thickness")) {
            return Answers.between(said, "thickness", 0.03 * metres("chord"), 0.25 * metres("chord"));
        }
        if (ValueReader.read(key(step).orElseThrow(), said) instanceof ValueReader.Wrong wrong) {
            return Optional.of(wrong.note());
        }
        return relation(step.id(), said);
    }

    /** What no single answer can show. */
    private Optional<Message> relation(String id, String said) {
        double tip = metres("span") / 2;
        return switch (id) {
            case "flaps.from", "ailerons.from" -> Answers.between(said, "surface", 0, tip - 2 * NARROWEST);
            case "flaps.to" -> Answers.between(said, "surface", metres("flaps.from") + NARROWEST, tip);
            case "ailerons.from2" -> Answers.between(said, "surface", metres("flaps.to"), tip - 2 * NARROWEST);
            case "ailerons.to" ->
                Answers.between(said, "surface", Answers.amount(aileronsFrom(), Dimension.LENGTH) + NARROWEST, tip);
            case "balance", "balance2" -> Answers.between(said, "balance", -metres("chord"), metres("chord"));
            case "chord" -> Answers.between(said, "chord", 0.02, tip);
            case "edge" -> Answers.sweep(said, tipSetBack(said), metres("tip") - metres("chord"), tip);
            case "tip" -> Answers.between(said, "tip", 0.1 * metres("chord"), 1.2 * metres("chord"));
            case "cruise" -> Answers.elevator(said);
            case "flaps.down" -> Answers.flapDown(said, flapChord());
            case "arm" -> Answers.between(said, "arm", 1.05 * metres("chord"), 4);
            default -> Optional.empty();
        };
    }
}
