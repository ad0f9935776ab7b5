package throwline.report.table;

import java.util.Locale;
import throwline.model.Field;
import throwline.model.Model;
import throwline.study.Comparison;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/** In which air and with what propeller all numbers of a comparison hold. */
public final class FlownIn {

    private final Words words;
    private final QuantityPrinter printer;

    /** A sentence in these words and units. */
    public FlownIn(Words words, QuantityPrinter printer) {
        this.words = words;
        this.printer = printer;
    }

    /** The sentence. */
    public String say(Comparison comparison) {
        Model model = comparison.model();
        Field field = model.field();
        String propeller = model.propeller()
                .map(p -> words.say("row.air.propeller." + p.shut().name().toLowerCase(Locale.ROOT)))
                .orElse(words.say("row.air.propeller.none"));
        String temperature = field.temperature().isPresent()
                ? printer.print(field.temperature().getAsDouble(), Dimension.TEMPERATURE)
                : words.say("row.air.standard");
        return words.say(
                "row.air",
                propeller,
                String.format(Locale.ROOT, "%.2f", comparison.density()),
                String.format(Locale.ROOT, "%.0f", field.heightAboveSea()),
                temperature);
    }
}
