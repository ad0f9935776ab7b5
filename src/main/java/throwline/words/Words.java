package throwline.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every sentence that a person reads, by key, from one resource file. Gaps are written {@code {0}}, {@code {1}}; quotes
 * stand for themselves.
 */
public final class Words {

    private static final Pattern GAP = Pattern.compile("\\{([0-9])\\}");

    private final Properties sentences = new Properties();

    private Words() {}

    /** The words of the product. */
    public static Words load() {
        Words words = new Words();
        try (InputStream in = Words.class.getResourceAsStream("/throwline/words.properties")) {
            if (in == null) {
                throw new IllegalStateException("the file of words is missing from the jar");
            }
            words.sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }

    /** All keys. */
    public Set<String> keys() {
        return Set.copyOf(sentences.stringPropertyNames());
    }

    /** True where there is a sentence of this key. */
    public boolean has(String key) {
        return sentences.containsKey(key);
    }

    /**
     * The sentence of a key with its gaps filled.
     *
     * @param key key in the file
     * @param arguments what fills the gaps, by {@link String#valueOf}
     * @return the sentence
     * @throws IllegalArgumentException where the file has no such key
     */
    public String say(String key, Object... arguments) {
        String sentence = sentences.getProperty(key);
        if (sentence == null) {
            throw new IllegalArgumentException("no words for " + key.toLowerCase(Locale.ROOT));
        }
        if (sentence.indexOf('{') < 0) {
            return sentence;
        }
        return GAP.matcher(sentence).replaceAll(gap -> {
            int i = Integer.parseInt(gap.group(1));
            return Matcher.quoteReplacement(i < arguments.length ? String.valueOf(arguments[i]) : gap.group());
        });
    }
}
