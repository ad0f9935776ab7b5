package throwline.input;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day as logs write them: hh:mm:ss with a fraction or without, behind a date or alone. */
final class LogClock {

    private static final Pattern CLOCK = Pattern.compile(
            "(?:\\d{4}-\\d{2}-\\d{2}[T ])?(\\d{1,2}):(\\d{2}):(\\d{2}(?:[.,]\\d+)?)(?:Z|[+-]\\d{2}:?\\d{2})?");

    private static final Pattern DIGITS = Pattern.compile("(\\d{2})(\\d{2})(\\d{2}(?:\\.\\d+)?)");

    private LogClock() {}

    /** Seconds of the day of hh:mm:ss or an ISO 8601 time; empty where it is none. */
    static OptionalDouble read(String text) {
        return seconds(CLOCK.matcher(text));
    }

    /** Seconds of the day of hhmmss. */
    static OptionalDouble digits(String text) {
        return seconds(DIGITS.matcher(text));
    }

    private static OptionalDouble seconds(Matcher clock) {
        if (!clock.matches()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(3600 * Integer.parseInt(clock.group(1))
                + 60 * Integer.parseInt(clock.group(2))
                + Double.parseDouble(clock.group(3).replace(',', '.')));
    }
}
