package throwline.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Map;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import throwline.words.Words;

/**
 * The file of words as the command line library wants it: it looks for an option of a command under
 * {@code throwline.COMMAND.OPTION}, then under {@code OPTION}; these are {@code cli.COMMAND.OPTION} and
 * {@code cli.OPTION} here.
 */
final class WordsBundle extends ResourceBundle {

    private static final String OURS = "cli.";
    private static final String THEIRS = "throwline.";

    private final Map<String, String> sentences = new HashMap<>();

    WordsBundle(Words words) {
        for (String key : words.keys()) {
            String sentence = words.say(key);
            sentences.put(key, sentence);
            if (key.startsWith(OURS)) {
                String name = key.substring(OURS.length());
                // The library takes descriptions for formats.
                sentences.put(name, sentence.replace("%", "%%"));
                sentences.put(THEIRS + name, sentence.replace("%", "%%"));
            }
        }
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return sentences.get(key);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(sentences.keySet());
    }
}
