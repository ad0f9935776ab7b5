package throwline.report.data;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes one JSON document (RFC 8259) piece by piece, keys in the order they are given. Letters outside ASCII are
 * escaped, so that the text survives any terminal. Not for more than one document.
 */
final class JsonWriter {

    private static final MathContext DIGITS = new MathContext(6);
    /** Decimal exponents between which a number is written without one. */
    private static final int SMALLEST_PLAIN = -6;

    private static final int LARGEST_PLAIN = 9;

    private final StringBuilder text = new StringBuilder();
    private final Deque<Level> levels = new ArrayDeque<>();
    private boolean afterKey;

    /** Opens an object. */
    JsonWriter object() {
        return open('{', '}', true);
    }

    /** Opens an array with one entry a line. */
    JsonWriter array() {
        return open('[', ']', true);
    }

    /** Opens an object that stands on one line. */
    JsonWriter shortObject() {
        return open('{', '}', false);
    }

    /** Closes what was opened last. */
    JsonWriter end() {
        Level level = levels.pop();
        if (level.lines && level.filled) {
            newLine();
        }
        text.append(level.close);
        return this;
    }

    /** A key; its value comes next. */
    JsonWriter key(String key) {
        separate();
        quote(key);
        text.append(": ");
        afterKey = true;
        return this;
    }

    /** Text. */
    JsonWriter value(String value) {
        separate();
        quote(value);
        return this;
    }

    /** A number with six significant figures; null where it is none. */
    JsonWriter value(double value) {
        separate();
        text.append(number(value));
        return this;
    }

    /** A whole number. */
    JsonWriter value(int value) {
        separate();
        text.append(value);
        return this;
    }

    /** True or false. */
    JsonWriter value(boolean value) {
        separate();
        text.append(value);
        return this;
    }

    /** No value. */
    JsonWriter nothing() {
        separate();
        text.append("null");
        return this;
    }

    /** The document so far. */
    @Override
    public String toString() {
        return text + "\n";
    }

    /** A number with six significant figures, or null where it is none. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            return "null";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS);
        if (rounded.signum() == 0) {
            return "0";
        }
        rounded = rounded.stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        boolean plain = exponent >= SMALLEST_PLAIN && exponent <= LARGEST_PLAIN;
        return plain ? rounded.toPlainString() : rounded.toString();
    }

    private JsonWriter open(char open, char close, boolean lines) {
        separate();
        text.append(open);
        levels.push(new Level(close, lines));
        return this;
    }

    private void separate() {
        if (afterKey) {
            afterKey = false;
            return;
        }
        Level level = levels.peek();
        if (level == null) {
            return;
        }
        if (level.filled) {
            text.append(level.lines ? "," : ", ");
        }
        level.filled = true;
        if (level.lines) {
            newLine();
        }
    }

    private void newLine() {
        text.append('\n')
                .append("  ".repeat((int) levels.stream().filter(l -> l.lines).count()));
    }

    private void quote(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                default -> {
                    if (c < ' ' || c > '~') {
                        text.append(String.format("\\u%04x", (int) c));
                    } else {
                        text.append(c);
                    }
                }
            }
        }
        text.append('"');
    }

    private static final class Level {
        private final char close;
        private final boolean lines;
        private boolean filled;

        Level(char close, boolean lines) {
            this.close = close;
            this.lines = lines;
        }
    }
}
