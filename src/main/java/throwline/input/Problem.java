package throwline.input;

import throwline.words.Message;
import throwline.words.Words;

/**
 * Something in a file that cannot be read as it stands.
 *
 * @param file as the person named it
 * @param line counted from 1; 0 where the whole file is meant
 * @param column counted from 1; 0 where the whole file is meant
 * @param keyPath for example {@code wing.sections[2].chord}, entries counted from 1; empty where none is known
 * @param note what is wrong, what is allowed, an example
 */
public record Problem(String file, int line, int column, String keyPath, Message note) {

    /** The whole sentence, place first. */
    public String say(Words words) {
        String sentence = words.say(note.code(), note.arguments().toArray());
        if (line == 0) {
            return words.say("input.problem.whole", file, sentence);
        }
        return keyPath.isEmpty()
                ? words.say("input.problem.nokey", file, line, column, sentence)
                : words.say("input.problem", file, line, column, keyPath, sentence);
    }
}
