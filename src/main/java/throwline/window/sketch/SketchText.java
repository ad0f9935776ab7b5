package throwline.window.sketch;

import java.util.stream.Collectors;
import throwline.units.Display;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Words;

/**
 * The words on a drawing.
 *
 * @param words the sentences
 * @param display units that are read
 */
public record SketchText(Words words, Display display) {

    /** From where it is seen. */
    public String title(Sketch sketch) {
        return switch (sketch.view()) {
            case ABOVE -> words.say("window.sketch.above");
            case SIDE -> words.say("window.sketch.side");
            case AHEAD -> words.say("window.sketch.ahead");
            case SECTION ->
                sketch.of().isEmpty()
                        ? words.say("window.sketch.station")
                        : words.say("window.sketch.section", sketch.of());
            case LINKAGE -> words.say("window.sketch.linkage", sketch.of());
        };
    }

    /** What stands at a measure. */
    public String label(Measured measured) {
        if (!measured.known()) {
            return words.say("window.sketch.unknown");
        }
        if (measured instanceof Measured.Length length) {
            String plain = QuantityPrinter.print(length.size(), display.length());
            return length.whole() > 0
                    ? words.say(
                            "window.sketch.share",
                            QuantityPrinter.number(100 * length.size() / length.whole(), 1),
                            plain)
                    : plain;
        }
        return QuantityPrinter.print(measured.size(), Unit.DEGREE);
    }

    /** The whole of it in words. */
    public String told(Sketch sketch) {
        String labels = sketch.measured().stream().map(this::label).collect(Collectors.joining(", "));
        return labels.isEmpty() ? title(sketch) : words.say("window.sketch.told", title(sketch), labels);
    }
}
