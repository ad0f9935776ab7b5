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
 * {@code cli.OPTION} here. Sentences are made when they are asked for: most runs show no help.
 */
final class WordsBundle extends ResourceBundle {

    private static final String OURS = "cli.";
    private static final String THEIRS = "throwline.";

    private final Words words;
    private final Map<String, String> keys = new HashMap<>();

    WordsBundle(Words words) {
        this.words = words;
        for (String key : words.keys()) {
            if (key.startsWith(OURS)) {
                String name = key.substring(OURS.length());
                keys.put(key, key);
                keys.put(name, key);
                keys.put(THEIRS + name, key);
            }
        }
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        String sentence = keys.get(key);
        if (sentence == null) {
            return null;
        }
        // Under its own names the library takes a description for a format.
        String said = words.say(sentence);
        return key.equals(sentence) ? said : said.replace("%", "%%");
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keys.keySet());
    }
}
