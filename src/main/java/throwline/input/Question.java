package throwline.input;

import java.util.List;

/**
 * One question to the owner of a model.
 *
 * @param id what it asks for; the sentence is {@code input.new.q.ID}
 * @param choices words that answer it, numbered from 1 for those who type less; empty where anything may be typed
 * @param fallback what an empty answer means, as a key of the words; empty where an answer is needed
 */
public record Question(String id, List<String> choices, String fallback) {

    public Question {
        choices = List.copyOf(choices);
    }

    /** Key of the sentence. */
    public String sentence() {
        return "input.new.q." + id;
    }
}
