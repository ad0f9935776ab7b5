package throwline.input;

import java.util.Optional;
import throwline.model.Wing;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.Quantity;
import throwline.units.QuantityPrinter;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.units.Unit;
import throwline.words.Message;

/** Reading and checks of single answers. */
final class Answers {

    /** Chord of flaps over the wing's, as long as nobody said otherwise: the default of the table of keys. */
    static final double FLAP_CHORD = 0.25;

    /** Chord of the elevator over the tail's, likewise. */
    static final double ELEVATOR_CHORD = 0.35;

    private Answers() {}

    /** An answer that was checked before, in SI units; zero where there is none. */
    static double amount(String text, Dimension dimension) {
        return QuantityReader.read(text, dimension) instanceof ReadQuantity.Amount amount
                ? amount.quantity().value()
                : 0;
    }

    /** What is wrong with a length that must lie between two others, in metres. */
    static Optional<Message> between(String said, String what, double least, double most) {
        if (QuantityReader.read(said, Dimension.LENGTH) instanceof ReadQuantity.Refused refused) {
            return Optional.of(Message.of(refused.code(), refused.arguments().toArray()));
        }
        double value = amount(said, Dimension.LENGTH);
        Quantity low = new Quantity(least, Dimension.LENGTH);
        Quantity high = new Quantity(most, Dimension.LENGTH);
        return value >= least && value <= most
                ? Optional.empty()
                : Optional.of(Message.of("input.new.wrong." + what, said, low, high));
    }

    /**
     * What is wrong with a half-wing that sweeps more than the lifting line understands.
     *
     * @param said which edge runs straight across
     * @param setBack of the front edge at the tip, m
     * @param wider chord at the tip less that at the middle, m
     * @param halfSpan m
     */
    static Optional<Message> sweep(String said, double setBack, double wider, double halfSpan) {
        double sweep = Math.atan2(setBack + wider / 4, halfSpan);
        return Math.abs(sweep) <= Wing.LARGEST_SWEEP
                ? Optional.empty()
                : Optional.of(Message.of(
                        "input.new.wrong.sweep",
                        said,
                        new Quantity(sweep, Dimension.ANGLE),
                        new Quantity(Wing.LARGEST_SWEEP, Dimension.ANGLE)));
    }

    /** A throw as answered; empty where it is none. */
    static Optional<WrittenDeflection> deflection(String said) {
        return ValueReader.deflection(said) instanceof ValueReader.Value value
                        && value.value() instanceof WrittenDeflection deflection
                ? Optional.of(deflection)
                : Optional.empty();
    }

    /** An answered share that was checked before. */
    static double share(String said) {
        return amount(said, Dimension.FRACTION);
    }

    /** True where its owner measures in inches or feet. */
    static boolean isImperial(String text) {
        String unit = text.replaceFirst("^[0-9. ]+", "");
        return Unit.spelt(unit, Dimension.LENGTH)
                .map(u -> u == Unit.INCH || u == Unit.FOOT)
                .orElse(unit.contains("in") || unit.contains("\"") || unit.contains("ft"));
    }

    /** A length in the units that its owner uses. */
    static String length(double metres, boolean imperial) {
        Display display = imperial ? Display.metric().with(Unit.INCH) : Display.metric();
        return new QuantityPrinter(display).print(metres, Dimension.LENGTH);
    }
}
