package throwline.window;

import java.util.Optional;
import throwline.input.Question;
import throwline.words.Message;

/** Questions one after the other, each answer checked as it comes. */
interface Questions {

    /**
     * A question.
     *
     * @param sentence as it is read
     * @param question its choices, and what an empty answer means
     */
    record Asked(String sentence, Question question) {}

    /** The next one; empty when all are answered. */
    Optional<Asked> next();

    /** Takes an answer; gives what is wrong with it. */
    Optional<Message> answer(String text);
}
