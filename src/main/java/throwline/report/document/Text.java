package throwline.report.document;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import throwline.units.Deflection;
import throwline.units.Quantity;
import throwline.words.Message;

/**
 * Something to be read, not yet put into words: a sentence by its key, a name, a value, or several of them. Only
 * {@link Figures#show} turns it into letters.
 */
public sealed interface Text permits Text.Phrase, Text.Verbatim, Text.Joined, Text.Capital, Value {

    /** The empty text. */
    static Text none() {
        return new Verbatim("");
    }

    /**
     * A sentence of the file of words.
     *
     * @param key in the file of words
     * @param arguments what fills its gaps
     */
    record Phrase(String key, List<Text> arguments) implements Text {
        public Phrase {
            arguments = List.copyOf(arguments);
        }
    }

    /** Letters as they are: names that the user gave, file names, identifiers. */
    record Verbatim(String letters) implements Text {}

    /**
     * Texts one behind the other.
     *
     * @param parts at least one
     * @param how what stands between them
     */
    record Joined(List<Text> parts, Join how) implements Text {
        public Joined {
            parts = List.copyOf(parts);
        }
    }

    /** A text whose first letter is a capital one, whatever name it begins with. */
    record Capital(Text text) implements Text {}

    /** What stands between joined texts. */
    enum Join {
        /** A blank. */
        BLANK,
        /** Commas. */
        COMMA,
        /** Semicolons. */
        SEMICOLON,
        /** Commas, and before the last the word "and". */
        AND
    }

    /**
     * A sentence of the file of words.
     *
     * @param key in the file of words
     * @param arguments what fills its gaps: texts, or strings that are shown as they are
     */
    static Text say(String key, Object... arguments) {
        return new Phrase(key, Arrays.stream(arguments).map(Text::argument).toList());
    }

    private static Text argument(Object argument) {
        if (argument instanceof Text text) {
            return text;
        }
        if (argument instanceof String letters) {
            return name(letters);
        }
        if (argument instanceof Quantity quantity) {
            return new Value.Measure(quantity);
        }
        if (argument instanceof Deflection deflection) {
            return Value.deflection(deflection.angle());
        }
        throw new IllegalArgumentException("a text holds texts and strings, not " + argument.getClass());
    }

    /** A message in words. */
    static Text of(Message message) {
        return say(message.code(), message.arguments().toArray());
    }

    /** A name, shown as it is. */
    static Text name(String letters) {
        return new Verbatim(letters);
    }

    /** Texts one behind the other. */
    static Text join(Join how, Collection<? extends Text> parts) {
        return new Joined(List.copyOf(parts), how);
    }

    /** Things one behind the other, each by a text of its own. */
    static <T> Text join(Join how, Collection<T> things, Function<T, ? extends Text> text) {
        return new Joined(things.stream().<Text>map(text).toList(), how);
    }

    /** Names as a sentence lists them. */
    static Text names(Collection<String> names) {
        return join(Join.AND, names, Text::name);
    }

    /** True where nothing is to be read. */
    default boolean isEmpty() {
        return this instanceof Verbatim verbatim && verbatim.letters().isEmpty();
    }
}
