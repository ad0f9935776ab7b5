package throwline.report.html;

import java.util.regex.Pattern;

/** Keeps a number and its unit on one line. */
final class Unbroken {

    private static final Pattern BEFORE_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:m|mm|s|km/h|m/s|mph|in|ft|kg|lb|oz)\\b)");

    private Unbroken() {}

    /** The text with blanks that are not broken at. */
    static String of(String text) {
        return BEFORE_UNIT.matcher(text).replaceAll("\u00a0");
    }
}
