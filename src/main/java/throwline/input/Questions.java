package throwline.input;

import java.util.Map;
import java.util.Optional;
import throwline.words.Message;

/** Questions about a flight, each following from the answers so far. */
public interface Questions {

    /** The next question; empty when all are answered. */
    Optional<FlightInterview.Asked> next();

    /**
     * Takes the answer to {@link #next}.
     *
     * @return what is wrong with it; empty when it was taken
     */
    Optional<Message> answer(String text);

    /** The answers so far by the place of their question, in their order. */
    Map<String, String> answers();

    /**
     * Takes answers of an earlier time as far as they still answer the questions.
     *
     * @param earlier as {@link #answers} gave them
     */
    void resume(Map<String, String> earlier);
}
