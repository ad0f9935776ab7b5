package throwline.window.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import throwline.input.FlightInterview;
import throwline.input.Interview;
import throwline.input.Question;
import throwline.report.Sentences;
import throwline.units.Display;
import throwline.words.Message;
import throwline.words.Words;

/** Questions, a page each, with a way back to the answers that were given. */
public final class Wizard {

    private final Words words;
    private final Questions questions;
    /** What was answered to the pages before this one, in their order. */
    private final List<String> before = new ArrayList<>();
    /** Answers that were taken back, by the number of their page: they are proposed again. */
    private final Map<Integer, String> takenBack = new HashMap<>();

    /** Pages that were answered at an earlier time. */
    private int earlier;

    private Wizard(Words words, Questions questions, int earlier) {
        this.words = words;
        this.questions = questions;
        this.earlier = earlier;
    }

    /** Where the questions come from. */
    private interface Questions {

        /** The next one; empty when all are answered. */
        Optional<Asked> next();

        /** Takes an answer; gives what is wrong with it. */
        Optional<Message> answer(String text);
    }

    /**
     * A question.
     *
     * @param sentence as it is read
     * @param question its choices, and what an empty answer means
     */
    private record Asked(String sentence, Question question) {}

    /**
     * A page with its question.
     *
     * @param number of the page, from 1
     * @param sentence the question
     * @param choices to choose from; empty where an answer is typed
     * @param empty what an empty answer means; empty where an answer is needed
     * @param proposal what was typed here before it was taken back; may be empty
     * @param mayGoBack true where there is a page before
     */
    public record Page(
            int number, String sentence, List<Choice> choices, String empty, String proposal, boolean mayGoBack) {
        public Page {
            choices = List.copyOf(choices);
        }
    }

    /**
     * Something to choose.
     *
     * @param text as it is read
     * @param answer what it answers
     * @param chosen true for the one that is chosen first
     */
    public record Choice(String text, String answer, boolean chosen) {}

    /**
     * The questions about an own model.
     *
     * @param interview it may have answers of an earlier time
     * @param keeper takes all answers after each of them
     */
    public static Wizard ofModel(Words words, Interview interview, Consumer<Map<String, String>> keeper) {
        Questions questions = new Questions() {
            @Override
            public Optional<Asked> next() {
                return interview.next().map(question -> new Asked(words.say(question.sentence()), question));
            }

            @Override
            public Optional<Message> answer(String text) {
                Optional<Message> refused = interview.answer(text);
                keeper.accept(interview.answers());
                return refused;
            }
        };
        return new Wizard(words, questions, interview.answers().size());
    }

    /** The questions about a flight. */
    public static Wizard ofFlight(Words words, FlightInterview interview) {
        Questions questions = new Questions() {
            @Override
            public Optional<Asked> next() {
                return interview
                        .next()
                        .map(asked -> new Asked(words.say(asked.sentence(), asked.about()), asked.question()));
            }

            @Override
            public Optional<Message> answer(String text) {
                return interview.answer(text);
            }
        };
        return new Wizard(words, questions, 0);
    }

    private int answered() {
        return earlier + before.size();
    }

    /** The page that is open; empty when all are answered. */
    public Optional<Page> page() {
        return questions.next().map(asked -> {
            Question question = asked.question();
            String proposal = takenBack.getOrDefault(answered(), "");
            String empty = question.fallback().isEmpty() || !question.choices().isEmpty()
                    ? ""
                    : words.say("window.new.empty", words.say(question.fallback(), question.usual()));
            return new Page(
                    answered() + 1, asked.sentence(), choices(question, proposal), empty, proposal, answered() > 0);
        });
    }

    private List<Choice> choices(Question question, String proposal) {
        List<String> all = question.choices();
        if (all.isEmpty()) {
            return List.of();
        }
        boolean usual = !question.fallback().isEmpty() && all.contains(question.usual());
        boolean open = !question.fallback().isEmpty() && !usual;
        String first = all.contains(proposal) ? proposal : open ? "" : usual ? question.usual() : all.get(0);
        List<Choice> choices = new ArrayList<>();
        if (open) {
            choices.add(new Choice(
                    words.say("window.new.none", words.say(question.fallback(), question.usual())),
                    "",
                    first.isEmpty()));
        }
        all.forEach(each -> choices.add(new Choice(each, each, each.equals(first))));
        return choices;
    }

    /**
     * Takes the answer to the open page, and turns to the next one.
     *
     * @return what is wrong with it, and the page stays; empty where it was taken
     */
    public Optional<String> answer(String text) {
        if (text.strip().equalsIgnoreCase(Interview.BACK)) {
            return back();
        }
        Optional<Message> refused = questions.answer(text);
        if (refused.isEmpty()) {
            takenBack.remove(answered());
            before.add(text.strip());
        }
        return refused.map(this::said);
    }

    /** Turns back to the page before; gives what is wrong where there is none. */
    public Optional<String> back() {
        Optional<Message> refused = questions.answer(Interview.BACK);
        if (refused.isEmpty() && before.isEmpty()) {
            earlier--;
        } else if (refused.isEmpty()) {
            String last = before.remove(before.size() - 1);
            takenBack.put(answered(), last);
        }
        return refused.map(this::said);
    }

    private String said(Message refused) {
        return refused.code().equals("input.new.needed")
                ? words.say("window.new.needed")
                : new Sentences(words, Display.metric()).say(refused);
    }
}
