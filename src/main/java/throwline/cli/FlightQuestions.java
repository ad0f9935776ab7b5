package throwline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import throwline.input.FlightInterview;
import throwline.input.Question;
import throwline.input.Questions;
import throwline.report.Sentences;
import throwline.units.Display;
import throwline.words.Message;

/** Asks questions about a flight at a terminal. Answers are kept as they come, until what they are for is written. */
final class FlightQuestions {

    private final Context context;
    private final SavedAnswers saved;
    private boolean kept;

    /**
     * @param context words and terminal
     * @param about file that the answers are for; they are kept beside it
     */
    FlightQuestions(Context context, Path about) {
        this.context = context;
        saved = new SavedAnswers(about, SavedAnswers.Of.FLIGHTS);
    }

    /**
     * Asks until all is answered.
     *
     * @throws WrongInput where the answers end early; those given are kept
     */
    void ask(Questions questions) {
        Sentences sentences = new Sentences(context.words(), Display.metric());
        resume(questions);
        for (Optional<FlightInterview.Asked> asked = questions.next(); asked.isPresent(); asked = questions.next()) {
            context.terminal().answer(prompt(asked.get()));
            Optional<Message> wrong = questions.answer(line());
            wrong.ifPresent(note -> context.terminal().answer(sentences.say(note) + "\n"));
            kept = saved.keep(questions.answers());
        }
    }

    /** One more question, whose answer is not kept; asked again until it is one of the choices. */
    String choice(String question, List<String> choices) {
        while (true) {
            context.terminal().answer("\n" + question + "\n" + numbered(choices) + "> ");
            String said = line().strip();
            Optional<String> known = choices.stream()
                    .filter(c -> c.equalsIgnoreCase(said) || said.equals(String.valueOf(choices.indexOf(c) + 1)))
                    .findFirst();
            if (known.isPresent()) {
                return known.get();
            }
            context.terminal().answer(say("input.choice", said, String.join("; ", choices)) + "\n");
        }
    }

    /** The answers are no longer needed. */
    void done() {
        saved.drop();
    }

    private void resume(Questions questions) {
        Map<String, String> earlier = saved.read();
        if (earlier.isEmpty()) {
            return;
        }
        kept = true;
        context.terminal().answer(say("cli.learn.resume", earlier.getOrDefault("date", ""), earlier.size()));
        if (line().strip().toLowerCase(Locale.ROOT).startsWith("n")) {
            kept = false;
        } else {
            questions.resume(earlier);
        }
    }

    private String line() {
        return context.terminal()
                .line()
                .orElseThrow(() -> new WrongInput("\n" + say(kept ? "cli.learn.kept" : "cli.learn.stopped")));
    }

    private String prompt(FlightInterview.Asked asked) {
        Question question = asked.question();
        StringBuilder text = new StringBuilder("\n" + say(asked.sentence(), asked.about()) + "\n");
        text.append(numbered(question.choices()));
        if (!question.fallback().isEmpty()) {
            text.append('[').append(say(question.fallback(), question.usual())).append("] ");
        }
        return text.append("> ").toString();
    }

    private String numbered(List<String> choices) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < choices.size(); i++) {
            text.append(say("cli.new.choice", i + 1, choices.get(i)));
        }
        return text.toString();
    }

    private String say(String key, Object... arguments) {
        return context.words().say(key, arguments);
    }
}
