package throwline.input;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.words.Message;

/** Reads the text of one value by its row in the table of keys. */
final class ValueReader {

    private static final int LONGEST_NAME = 60;

    private ValueReader() {}

    /** A value, or what is wrong with it. */
    sealed interface Outcome permits Value, Wrong {}

    /** Understood: a Double in SI units, a String, or a WrittenDeflection. */
    record Value(Object value) implements Outcome {}

    /** Not understood. */
    record Wrong(Message note) implements Outcome {
        static Wrong of(String code, Object... arguments) {
            return new Wrong(Message.of(code, arguments));
        }
    }

    static Outcome read(KeyRow key, String text) {
        return switch (key.kind()) {
            case QUANTITY ->
                inRange(key, text, QuantityReader.read(text, key.dimension().orElseThrow()));
            case COUNT -> count(key, text);
            case VERSION -> version(text);
            case CHOICE -> choice(key, text);
            case DEFLECTION, THROWS, THROW -> deflection(text);
            default -> name(text, key.example());
        };
    }

    /** A name or other text that is kept as written. */
    static Outcome name(String text, String example) {
        String stripped = text.strip();
        if (stripped.length() > LONGEST_NAME) {
            return Wrong.of("input.name.long", stripped.substring(0, 20) + "...", String.valueOf(LONGEST_NAME));
        }
        if (NearestName.key(stripped).isEmpty()) {
            return Wrong.of("input.name.empty", example);
        }
        return stripped.chars().anyMatch(Character::isISOControl)
                ? Wrong.of("input.name.control")
                : new Value(stripped);
    }

    private static Outcome inRange(KeyRow key, String text, ReadQuantity reading) {
        if (reading instanceof ReadQuantity.Refused refused) {
            return refused(key, text.strip(), refused);
        }
        double value = ((ReadQuantity.Amount) reading).quantity().value();
        return key.range().filter(r -> !r.holds(value)).isPresent() ? outside(key, text) : new Value(value);
    }

    /** The reader's own examples fit any model; the key's fit this key. */
    private static Wrong refused(KeyRow key, String text, ReadQuantity.Refused refused) {
        String unit = key.example().replaceFirst("^[0-9.-]+ ", "");
        return switch (refused.code()) {
            case "input.quantity.number" -> Wrong.of(refused.code(), UnknownKey.shown(text), key.example());
            case "input.quantity.nounit" ->
                Wrong.of(
                        refused.code(),
                        text,
                        text + " " + unit,
                        refused.arguments().get(2));
            case "input.quantity.unit" ->
                Wrong.of(
                        refused.code(),
                        refused.arguments().get(0),
                        refused.arguments().get(1),
                        key.example());
            default -> new Wrong(Message.of(refused.code(), refused.arguments().toArray()));
        };
    }

    private static Wrong outside(KeyRow key, String text) {
        KeyRow.Range range = key.range().orElseThrow();
        return Wrong.of("input.range", text.strip(), range.leastText(), range.mostText(), key.example());
    }

    private static Outcome count(KeyRow key, String text) {
        String stripped = text.strip();
        if (!stripped.matches("[0-9]{1,6}")) {
            return Wrong.of("input.count", stripped, key.example());
        }
        double value = Integer.parseInt(stripped);
        return key.range().filter(r -> !r.holds(value)).isPresent() ? outside(key, text) : new Value(value);
    }

    private static Outcome version(String text) {
        String stripped = text.strip();
        if (!stripped.matches("[0-9]{1,6}") || Integer.parseInt(stripped) == 0) {
            return Wrong.of("input.version.odd", stripped);
        }
        return Integer.parseInt(stripped) > ModelFile.VERSION
                ? Wrong.of("input.version.newer", stripped, String.valueOf(ModelFile.VERSION))
                : new Value((double) Integer.parseInt(stripped));
    }

    private static Outcome choice(KeyRow key, String text) {
        String wanted = NearestName.key(text);
        Optional<String> exact = key.choices().stream()
                .filter(c -> NearestName.key(c).equals(wanted))
                .findFirst();
        if (exact.isPresent()) {
            return new Value(exact.get());
        }
        String allowed = key.choices().stream().collect(Collectors.joining(", "));
        return NearestName.of(text, key.choices())
                .map(near -> Wrong.of("input.choice.near", text.strip(), allowed, near))
                .orElseGet(() -> Wrong.of("input.choice", text.strip(), allowed));
    }

    /** Such as {@code 18 deg up}, {@code 12 mm down}, {@code -4 deg}, {@code 20 deg}. */
    static Outcome deflection(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        boolean up = plain.endsWith("up");
        boolean down = plain.endsWith("down");
        String size =
                plain.substring(0, plain.length() - (up ? 2 : down ? 4 : 0)).strip();
        if (size.matches("[+-]?[0-9.]+") && !size.matches("[+-]?0+")) {
            return Wrong.of("input.deflection.nounit", text.strip(), size);
        }
        boolean zero = size.matches("[+-]?0+");
        ReadQuantity reading = QuantityReader.read(zero ? "0 deg" : size, Dimension.ANGLE);
        boolean isLength = reading instanceof ReadQuantity.Refused refused
                && refused.code().equals("input.quantity.otherkind.length");
        if (isLength) {
            reading = QuantityReader.read(size, Dimension.LENGTH);
        }
        if (reading instanceof ReadQuantity.Refused refused) {
            return refused.code().startsWith("input.quantity.otherkind")
                            || refused.code().matches(".*\\.(unit|number|nounit)")
                    ? Wrong.of("input.deflection", text.strip())
                    : new Wrong(Message.of(refused.code(), refused.arguments().toArray()));
        }
        double value = ((ReadQuantity.Amount) reading).quantity().value();
        boolean signed = size.startsWith("-") || size.startsWith("+");
        if (signed && isLength && !up && !down) {
            String plainSize = size.substring(1).strip();
            return Wrong.of("input.deflection.signed", text.strip(), plainSize);
        }
        if (signed && (up || down)) {
            return Wrong.of("input.deflection.twice", text.strip(), size.substring(1) + (up ? " up" : " down"));
        }
        WrittenDeflection.Sense sense = up || value < 0
                ? WrittenDeflection.Sense.UP
                : down || signed ? WrittenDeflection.Sense.DOWN : WrittenDeflection.Sense.UNSAID;
        return new Value(new WrittenDeflection(Math.abs(value), isLength, sense));
    }
}
