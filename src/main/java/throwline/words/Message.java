package throwline.words;

import java.util.List;
import throwline.units.Deflection;
import throwline.units.Quantity;

/**
 * Something to tell a person: the key of a sentence and what fills its gaps. Made where it is found out, put into words
 * where it is shown.
 *
 * @param code key of the sentence, also given to scripts
 * @param arguments strings, {@link Quantity quantities} and {@link Deflection deflections}, in the order of the sentence's gaps
 */
public record Message(String code, List<Object> arguments) {

    public Message {
        arguments = List.copyOf(arguments);
        for (Object argument : arguments) {
            if (!(argument instanceof String || argument instanceof Quantity || argument instanceof Deflection)) {
                throw new IllegalArgumentException("a note holds text and quantities, not " + argument.getClass());
            }
        }
    }

    /** A note with these arguments. */
    public static Message of(String code, Object... arguments) {
        return new Message(code, List.of(arguments));
    }
}
