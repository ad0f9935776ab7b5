package throwline.input;

import java.util.OptionalDouble;
import throwline.words.Message;

/** Reads a throw that stands outside a model file, written as in one: {@code 18 deg up}, {@code 12 mm down}. */
public final class WrittenThrow {

    private WrittenThrow() {}

    /** What came of it. */
    public sealed interface Outcome permits Angle, Wrong {}

    /**
     * Understood.
     *
     * @param angle rad, trailing edge down positive
     */
    public record Angle(double angle) implements Outcome {}

    /**
     * Not understood.
     *
     * @param note what is wrong
     */
    public record Wrong(Message note) implements Outcome {}

    /**
     * Reads it.
     *
     * @param text as written; without a way or a sign it counts as down
     * @param chord of the surface behind its hinge, m, for distances at the trailing edge
     */
    public static Outcome read(String text, double chord) {
        ValueReader.Outcome outcome = ValueReader.deflection(text);
        if (outcome instanceof ValueReader.Wrong wrong) {
            return new Wrong(wrong.note());
        }
        OptionalDouble angle = ((WrittenDeflection) ((ValueReader.Value) outcome).value()).signed(chord);
        return angle.isPresent()
                ? new Angle(angle.getAsDouble())
                : new Wrong(Message.of("input.deflection", text.strip()));
    }
}
