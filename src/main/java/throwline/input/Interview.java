package throwline.input;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.model.AirfoilName;
import throwline.units.Dimension;
import throwline.words.Message;
import throwline.words.Words;

/**
 * The answers of {@code throwline new}: what the owner of a model can tell with a ruler and a scale. Answers are checked by
 * the table of keys as they come, and the last one can be taken back.
 */
public final class Interview {

    /** The word that takes back the answer before. */
    public static final String BACK = "back";

    private static final String NONE = "none";

    private final KeyTable table = KeyTable.load();
    private final Map<String, String> answers = new LinkedHashMap<>();
    private final ChoiceWords choiceWords = new ChoiceWords();
    private final List<InterviewStep> steps = InterviewSteps.all();

    private final NamedAirfoils airfoils;

    /** An interview whose files are meant from the current folder. */
    public Interview() {
        this(new NamedAirfoils(new PackedAirfoils(), Path.of("")));
    }

    /**
     * An interview.
     *
     * @param airfoils those that the model may name
     */
    public Interview(NamedAirfoils airfoils) {
        this.airfoils = airfoils;
    }

    /** The next question; empty when all are answered. */
    public Optional<Question> next() {
        return step().map(step -> new Question(step.id(), choices(step), step.fallback(), usual(step)));
    }

    /**
     * Takes the answer to {@link #next}.
     *
     * @param text as typed; empty to take what an empty answer means, "back" for the question before
     * @return what is wrong with it; empty when it was taken
     */
    public Optional<Message> answer(String text) {
        InterviewStep step = step().orElseThrow();
        String plain = text.strip();
        if (plain.equalsIgnoreCase(BACK)) {
            return takeBack();
        }
        if (step.mayBeNone() && plain.equalsIgnoreCase(NONE)) {
            return taken(step, step.usual().isEmpty() ? "" : NONE);
        }
        if (plain.isEmpty() || isSkip(step, plain)) {
            return step.fallback().isEmpty() ? Optional.of(Message.of("input.new.needed")) : fallback(step);
        }
        String said = choiceWords.choice(step.key(), plain).orElseGet(() -> chosen(plain, choices(step)));
        Optional<Message> wrong = wrong(step, said);
        return wrong.isPresent() ? wrong : taken(step, said);
    }

    /** A usual throw may be beyond the travel that was measured. */
    private Optional<Message> fallback(InterviewStep step) {
        Optional<Message> beyond =
                step.usual().isEmpty() ? Optional.empty() : new AnswerRelations(this).wrong(step.id(), usual(step));
        return beyond.isPresent() ? beyond : taken(step, "");
    }

    private Optional<Message> taken(InterviewStep step, String said) {
        answers.put(step.id(), said);
        return Optional.empty();
    }

    private Optional<Message> takeBack() {
        List<String> ids = List.copyOf(answers.keySet());
        if (ids.isEmpty()) {
            return Optional.of(Message.of("input.new.first"));
        }
        answers.remove(ids.get(ids.size() - 1));
        return Optional.empty();
    }

    /** All answers so far, in the order in which they were given; those to empty lines are empty. */
    public Map<String, String> answers() {
        return new LinkedHashMap<>(answers);
    }

    /**
     * Takes answers of an earlier interview, as far as they still answer what is asked.
     *
     * @param earlier as {@link #answers} gave them
     */
    public void resume(Map<String, String> earlier) {
        for (Optional<InterviewStep> step = step(); step.isPresent(); step = step()) {
            String said = earlier.get(step.get().id());
            if (said == null || said.equalsIgnoreCase(BACK) || answer(said).isPresent()) {
                return;
            }
        }
    }

    /** What its owner calls the model; empty where it was not answered yet. */
    public String name() {
        return text("name");
    }

    /** The answer to a question; empty where it was skipped or not asked. */
    String text(String id) {
        return answers.getOrDefault(id, "");
    }

    /** The answer, else the usual throw; empty where there is to be none. */
    Optional<String> throwOf(String id) {
        if (!answers.containsKey(id) || isNone(id)) {
            return Optional.empty();
        }
        String said = text(id);
        return said.isEmpty()
                ? steps.stream().filter(s -> s.id().equals(id)).map(this::usual).findFirst()
                : Optional.of(said);
    }

    /** An answered length, m. */
    double metres(String id) {
        return Answers.amount(text(id), Dimension.LENGTH);
    }

    /** How far the front edge at the tip lies behind that at the middle, m, when this edge runs straight across. */
    double tipSetBack(String edge) {
        double narrower = text("tip").isEmpty() ? 0 : metres("chord") - metres("tip");
        return switch (edge) {
            case "the leading edge" -> 0;
            case "the trailing edge" -> narrower;
            default -> narrower / 2;
        };
    }

    /** Chord of a surface behind its hinge at its inner end, m; the usual share where none was measured. */
    double chordOf(String surface) {
        String said = text(surface + ".chord");
        if (surface.equals(Movable.ELEVATOR)) {
            return metres("tail.chord") * (said.isEmpty() ? Answers.ELEVATOR_CHORD : Answers.share(said));
        }
        String from = surface.equals("flaps") ? text("flaps.from") : aileronsFrom();
        double middle = metres("chord");
        double wider = text("tip").isEmpty() ? 0 : metres("tip") - middle;
        double wing = middle + wider * Answers.amount(from, Dimension.LENGTH) / (metres("span") / 2);
        return wing * (said.isEmpty() ? Answers.FLAP_CHORD : Answers.share(said));
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

    /** True where the motor is known; nothing is asked about it without a propeller. */
    boolean hasMotor() {
        return !text("kv").isEmpty();
    }

    boolean hasCoordinates() {
        return text("shape").equals(InterviewSteps.COORDINATES);
    }

    boolean isRiggedAsPlanned() {
        return text("rigging").equals(InterviewSteps.AS_PLANNED);
    }

    boolean isMeasured() {
        return text("hinges").equals(InterviewSteps.MEASURED);
    }

    boolean isNone(String id) {
        return text(id).equals(NONE);
    }

    boolean brakesWithAilerons() {
        return hasAilerons() && !isNone("brake.flaps");
    }

    boolean rollsWithAilerons() {
        return hasAilerons() && !isNone("roll.up");
    }

    /** Neither wheels nor a propeller that does not fold. */
    boolean isGlider() {
        return text("wheels").isEmpty() && (!hasPropeller() || text("shut").equals("folded"));
    }

    private Optional<InterviewStep> step() {
        return steps.stream()
                .filter(s -> !answers.containsKey(s.id()) && s.asked().test(this))
                .findFirst();
    }

    private Optional<KeyRow> key(InterviewStep step) {
        return table.all().stream().filter(k -> k.path().equals(step.key())).findFirst();
    }

    private List<String> choices(InterviewStep step) {
        return step.choices().isEmpty() ? key(step).map(KeyRow::choices).orElse(List.of()) : step.choices();
    }

    private String usual(InterviewStep step) {
        return step.usual().isEmpty()
                ? ""
                : new UsualThrows(isGlider()).at(step.usual()).orElseThrow();
    }

    private static boolean isSkip(InterviewStep step, String said) {
        return step.fallback().equals("input.new.d.unknown")
                && List.of("unknown", "notknown", "?").contains(NearestName.key(said));
    }

    /** The choice that a number, or a part of a choice, stands for. */
    static String chosen(String said, List<String> choices) {
        if (said.matches("[1-9]") && Integer.parseInt(said) <= choices.size()) {
            return choices.get(Integer.parseInt(said) - 1);
        }
        String key = NearestName.key(said);
        List<String> begun =
                choices.stream().filter(c -> NearestName.key(c).startsWith(key)).toList();
        List<String> held = choices.stream()
                .filter(c -> NearestName.key(c).contains(key) || key.contains(NearestName.key(c)))
                .toList();
        return begun.size() == 1 ? begun.get(0) : held.size() == 1 ? held.get(0) : said;
    }

    private Optional<Message> wrong(InterviewStep step, String said) {
        AnswerRelations relations = new AnswerRelations(this);
        if (!step.choices().isEmpty()) {
            return step.choices().contains(said)
                    ? relations.wrong(step.id(), said)
                    : Optional.of(Message.of("input.choice", said, String.join("; ", step.choices())));
        }
        if (step.id().equals("span") || step.id().equals("thickness")) {
            return relations.wrong(step.id(), said);
        }
        if (ValueReader.read(key(step).orElseThrow(), said) instanceof ValueReader.Wrong wrong) {
            return Optional.of(wrong.note());
        }
        if (step.id().equals("coordinates")) {
            return wrongFile(new AirfoilName(said));
        }
        return relations.wrong(step.id(), said);
    }

    private Optional<Message> wrongFile(AirfoilName file) {
        List<Problem> problems = airfoils.problems(file);
        if (!problems.isEmpty()) {
            return Optional.of(
                    Message.of("input.new.wrong.coordinates", problems.get(0).say(Words.load())));
        }
        return airfoils.find(file).isPresent()
                ? Optional.empty()
                : Optional.of(Message.of("input.new.wrong.no-file", file.text()));
    }
}
