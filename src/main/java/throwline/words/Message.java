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

    /** {@inheritDoc} Written out: what Java makes for a record when it is first asked takes the start of the program a millisecond. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Message message && code.equals(message.code) && arguments.equals(message.arguments);
    }

    @Override
    public int hashCode() {
        return 31 * code.hashCode() + arguments.hashCode();
    }

    /** A note with these arguments. */
    public static Message of(String code, Object... arguments) {
        return new Message(code, List.of(arguments));
    }
}
