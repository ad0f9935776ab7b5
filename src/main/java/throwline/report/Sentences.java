package throwline.report;

import throwline.study.Headline;
import throwline.study.SetUpResult.Manner;
import throwline.units.Deflection;
import throwline.units.Display;
import throwline.units.Quantity;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/** Puts notes into words, quantities in the units that the person reads. */
public final class Sentences {

    private final Words words;
    private final QuantityPrinter printer;

    /**
     * Sentences from these words.
     *
     * @param words the file of words
     * @param display in which units
     */
    public Sentences(Words words, Display display) {
        this.words = words;
        this.printer = new QuantityPrinter(display);
    }

    /** The sentence of a note. */
    public String say(Message note) {
        Object[] arguments = note.arguments().stream().map(this::shown).toArray();
        return words.say(note.code(), arguments);
    }

    private Object shown(Object argument) {
        if (argument instanceof Deflection deflection) {
            return QuantityPrinter.deflection(deflection.angle());
        }
        return argument instanceof Quantity quantity ? printer.print(quantity) : argument;
    }

    /** Key of what the model does when the wing lets go. */
    public static String key(Manner manner) {
        return switch (manner) {
            case SAGS -> "row.first.sags";
            case MAY_DROP_A_WING -> "row.first.drops";
            case UNKNOWN -> "row.first.unknown";
            case NOT_REACHED -> "row.first.not";
        };
    }

    /** Why there is no number. */
    public String why(Headline.Unknown unknown) {
        return words.say(unknown.why());
    }
}
