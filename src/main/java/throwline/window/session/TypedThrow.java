package throwline.window.session;

import java.util.Optional;
import throwline.input.WrittenThrow;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.words.Message;

/** Reads what a person types for a surface: {@code 12 mm up}, {@code 35 deg down}, {@code 80 %} of its travel. */
final class TypedThrow {

    private TypedThrow() {}

    /** What came of it. */
    sealed interface Outcome permits Angle, Wrong {}

    /**
     * Understood.
     *
     * @param angle rad, trailing edge down positive
     * @param written as a model file has it; empty where the file takes the angle
     */
    record Angle(double angle, Optional<String> written) implements Outcome {}

    /** Not understood, or beyond the travel. */
    record Wrong(Message note) implements Outcome {}

    /**
     * Reads it.
     *
     * @param typed as typed
     * @param surface that it is meant for
     * @param now where the surface stands, which tells the way of a share of the travel, rad
     */
    static Outcome read(String typed, Movable surface, double now) {
        String plain = typed.strip();
        if (plain.contains("%")) {
            return share(plain, surface, now);
        }
        if (plain.equals("0") || plain.equalsIgnoreCase("neutral")) {
            return new Angle(0, Optional.empty());
        }
        WrittenThrow.Outcome read = WrittenThrow.read(plain, surface.chord());
        if (read instanceof WrittenThrow.Wrong wrong) {
            return new Wrong(wrong.note());
        }
        return bounded(((WrittenThrow.Angle) read).angle(), Optional.of(plain), surface);
    }

    private static Outcome share(String typed, Movable surface, double now) {
        String lower = typed.toLowerCase(java.util.Locale.ROOT);
        boolean up = lower.endsWith("up") || (now < 0 && !lower.endsWith("down")) || surface.down() == 0;
        String size = lower.replaceFirst("\\s*(up|down)$", "");
        if (QuantityReader.read(size, Dimension.FRACTION) instanceof ReadQuantity.Amount amount) {
            double share = amount.quantity().value();
            return bounded(up ? -share * surface.up() : share * surface.down(), Optional.empty(), surface);
        }
        return new Wrong(Message.of("window.hand.share", typed));
    }

    private static Outcome bounded(double angle, Optional<String> written, Movable surface) {
        double slack = Math.toRadians(0.05);
        if (angle > surface.down() + slack || angle < -surface.up() - slack) {
            return new Wrong(Message.of(
                    "window.hand.beyond",
                    surface.name(),
                    throwline.units.QuantityPrinter.deflection(-surface.up()),
                    throwline.units.QuantityPrinter.deflection(surface.down())));
        }
        return new Angle(surface.stopped(angle), written);
    }
}
