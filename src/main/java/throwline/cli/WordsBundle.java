package throwline.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import throwline.words.Words;

/** The file of words as the command line library wants it. */
final class WordsBundle extends ResourceBundle {

    private final Words words;

    WordsBundle(Words words) {
        this.words = words;
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return words.has(key) ? words.say(key) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(words.keys());
    }
}
