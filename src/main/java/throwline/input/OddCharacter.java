package throwline.input;

import java.util.OptionalInt;

/**
 * A character that no text of a model holds: control characters; signs that turn the order of letters round, so that a
 * name reads as another (Unicode Standard Annex 9, explicit directional formatting); halves of surrogate pairs and
 * noncharacters, which no picture or page may hold (XML 1.0, section 2.2).
 */
final class OddCharacter {

    private static final int NONCHARACTER = 0xFFFE;

    private OddCharacter() {}

    /** Index of the first; empty where there is none. Ends of lines and tabs are none. */
    static OptionalInt in(String text) {
        int i = 0;
        while (i < text.length()) {
            int c = text.codePointAt(i);
            if (is(c)) {
                return OptionalInt.of(i);
            }
            i += Character.charCount(c);
        }
        return OptionalInt.empty();
    }

    /** True for such a character. */
    static boolean is(int codePoint) {
        boolean control = Character.isISOControl(codePoint)
                && codePoint != '\n'
                && codePoint != '\r'
                && codePoint != '\t'
                && codePoint != '\u0085';
        boolean half = codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
        boolean none = (codePoint & NONCHARACTER) == NONCHARACTER || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
        return control || half || none || turnsRound(codePoint);
    }

    private static boolean turnsRound(int codePoint) {
        return (codePoint >= 0x202A && codePoint <= 0x202E) || (codePoint >= 0x2066 && codePoint <= 0x2069);
    }
}
