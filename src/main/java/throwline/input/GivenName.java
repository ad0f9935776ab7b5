package throwline.input;

import java.util.Optional;
import throwline.words.Message;

/** Name that a person gives outside a model file to something that is to stand in one, by the rules of the file. */
public final class GivenName {

    private GivenName() {}

    /**
     * What is wrong with a name; empty where a model file may hold it.
     *
     * @param name as given
     * @param example of a good one
     */
    public static Optional<Message> wrong(String name, String example) {
        if (OddCharacter.in(name).isPresent()) {
            return Optional.of(Message.of("input.name.odd", example));
        }
        return ValueReader.name(name, example) instanceof ValueReader.Wrong wrong
                ? Optional.of(wrong.note())
                : Optional.empty();
    }
}
