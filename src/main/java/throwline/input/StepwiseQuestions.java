package throwline.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.input.FlightInterview.Asked;
import throwline.words.Message;

/** Questions one by one, of which the next follows from the answers so far. "back" takes the answer before back. */
abstract class StepwiseQuestions implements Questions {

    private final Map<String, String> answers = new LinkedHashMap<>();

    /**
     * A question with its place among the answers.
     *
     * @param place of its answer
     * @param asked the question
     * @param key row of the table of keys that checks its answer; empty for none
     */
    record Step(String place, Asked asked, String key) {}

    /** The question that follows from the answers; empty where all is answered. */
    abstract Optional<Step> step();

    /** What is wrong with an answer; empty where nothing is. */
    abstract Optional<Message> wrong(Step step, String said);

    /** Whether an answer says that there is none, as an empty one does. */
    boolean isSkip(String said) {
        return said.isEmpty();
    }

    @Override
    public final Optional<Asked> next() {
        return step().map(Step::asked);
    }

    @Override
    public final Map<String, String> answers() {
        return new LinkedHashMap<>(answers);
    }

    @Override
    public final void resume(Map<String, String> earlier) {
        for (Optional<Step> step = step(); step.isPresent(); step = step()) {
            String said = earlier.get(step.get().place());
            if (said == null
                    || said.equalsIgnoreCase(Interview.BACK)
                    || answer(said).isPresent()) {
                return;
            }
        }
    }

    @Override
    public final Optional<Message> answer(String text) {
        Step step = step().orElseThrow();
        Question question = step.asked().question();
        String plain = text.strip();
        if (plain.equalsIgnoreCase(Interview.BACK)) {
            return takeBack();
        }
        boolean skipped = isSkip(plain);
        if (skipped && question.fallback().isEmpty()) {
            return Optional.of(Message.of("input.new.needed"));
        }
        String said = skipped ? question.usual() : Interview.chosen(plain, question.choices());
        Optional<Message> wrong = said.isEmpty() ? Optional.empty() : wrong(step, said);
        if (wrong.isEmpty()) {
            answers.put(step.place(), said);
        }
        return wrong;
    }

    private Optional<Message> takeBack() {
        List<String> places = List.copyOf(answers.keySet());
        if (places.isEmpty()) {
            return Optional.of(Message.of("input.new.first"));
        }
        answers.remove(places.get(places.size() - 1));
        return Optional.empty();
    }

    /** Whether a place has an answer, be it an empty one. */
    final boolean isAnswered(String place) {
        return answers.containsKey(place);
    }

    /** An answer by its place; empty where it was not measured or not asked. */
    final String said(String place) {
        return answers.getOrDefault(place, "");
    }

    /** Something that is wrong with one of the choices; empty where it is one, or where there are none. */
    static Optional<Message> wrongChoice(Question question, String said) {
        return question.choices().isEmpty() || question.choices().contains(said)
                ? Optional.empty()
                : Optional.of(Message.of("input.choice", said, String.join("; ", question.choices())));
    }
}
