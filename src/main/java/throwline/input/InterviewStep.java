package throwline.input;

import java.util.List;
import java.util.function.Predicate;

/**
 * A step of the interview.
 *
 * @param id of the question
 * @param key path of the row that checks the answer; empty for a choice of words
 * @param choices words that answer it
 * @param fallback what an empty answer means, as a key of the words; empty where an answer is needed
 * @param usual path of the usual value that an empty answer takes, in {@link UsualThrows}; empty where there is none
 * @param asked whether it is asked, after the answers so far
 */
record InterviewStep(
        String id, String key, List<String> choices, String fallback, String usual, Predicate<Interview> asked) {

    static InterviewStep needed(String id, String key) {
        return new InterviewStep(id, key, List.of(), "", "", a -> true);
    }

    static InterviewStep open(String id, String key, String fallback) {
        return new InterviewStep(id, key, List.of(), fallback, "", a -> true);
    }

    static InterviewStep choice(String id, List<String> choices, String fallback) {
        return new InterviewStep(id, "", choices, fallback, "", a -> true);
    }

    /** A throw that has a usual size, or none at all. */
    static InterviewStep usual(String id, String path) {
        return new InterviewStep(id, "set-ups.*.*", List.of(), "input.new.d.usual", path, a -> true);
    }

    InterviewStep when(Predicate<Interview> condition) {
        return new InterviewStep(id, key, choices, fallback, usual, condition);
    }

    /** True where the word "none" answers it. */
    boolean mayBeNone() {
        return fallback.equals("input.new.d.none") || !usual.isEmpty();
    }
}
