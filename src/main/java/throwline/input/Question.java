package throwline.input;

import java.util.List;

/**
 * A question to the owner of a model.
 *
 * @param id what it asks for; the sentence is {@code input.new.q.ID}
 * @param choices words that answer it, numbered from 1 for those who type less; empty where anything may be typed
 * @param fallback what an empty answer means, as a key of the words with the usual value in it; empty where an answer is
 *     needed
 * @param usual the usual value; empty where there is none
 */
public record Question(String id, List<String> choices, String fallback, String usual) {

    public Question {
        choices = List.copyOf(choices);
    }

    /** Key of the sentence. */
    public String sentence() {
        return "input.new.q." + id;
    }
}
