package throwline.cli;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A line of a message that is too long to be read. What it quotes is shortened in its middle, so that what is wrong and
 * what is allowed stay; the whole line is where that does not suffice.
 *
 * @param text the line
 * @param most letters that it may have
 */
record LongLine(String text, int most) {

    private static final String GAP = " ... ";

    /** Less of a quote would not be recognised. */
    private static final int LEAST_QUOTE = 40;

    private static final Pattern QUOTED = Pattern.compile("\"[^\"]+\"");

    /** The line with at most so many letters. */
    String shortened() {
        if (text.length() <= most) {
            return text;
        }
        Optional<MatchResult> quote = QUOTED.matcher(text)
                .results()
                .max(Comparator.comparingInt(found -> found.group().length()));
        int room = quote.map(found -> most - text.length() + found.group().length())
                .orElse(0);
        if (quote.isEmpty() || room < LEAST_QUOTE) {
            return middleLess(text, most);
        }
        MatchResult found = quote.get();
        return text.substring(0, found.start()) + middleLess(found.group(), room) + text.substring(found.end());
    }

    private static String middleLess(String text, int length) {
        int kept = length - GAP.length();
        int head = wholeLetters(text, (kept + 1) / 2);
        int tail = wholeLetters(text, text.length() - kept / 2);
        return text.substring(0, head) + GAP + text.substring(tail);
    }

    /** A letter that takes two places is not cut in two. */
    private static int wholeLetters(String text, int at) {
        return at > 0 && at < text.length() && Character.isLowSurrogate(text.charAt(at)) ? at - 1 : at;
    }
}
