package throwline.input;

import java.util.Optional;
import java.util.regex.Pattern;
import throwline.words.Note;

/** Says in a modeller's words why a file is no YAML, from what stands at the place where the parser gave up. */
final class SyntaxFault {

    private static final Pattern TWO_COLONS = Pattern.compile("^[^\"'{\\[#]*:\\s[^\"'{\\[#]*:(\\s.*)?$");
    private static final Pattern LOST_COMMENT = Pattern.compile("^[^\"':{\\[]*\\s#.*:.*$");
    private static final Pattern NO_BLANK = Pattern.compile("^\\s*(- )?[^\\s\"'{\\[#:]+:[^\\s/].*$");

    private SyntaxFault() {}

    static UnreadableFile describe(String text, Optional<Place> mark) {
        if (mark.isEmpty()) {
            return new UnreadableFile(Place.START, Note.of("input.yaml.other"));
        }
        String[] lines = text.split("\r\n|[\n\r\u0085\u2028\u2029]", -1);
        Place place = mark.get();
        int at = Math.min(place.line(), lines.length) - 1;
        for (int i = at; i >= Math.max(0, at - 1); i--) {
            String line = lines[i];
            int tab = line.length() - line.stripLeading().length() - 1;
            while (tab >= 0 && line.charAt(tab) != '\t') {
                tab--;
            }
            if (tab >= 0) {
                return fault(i, tab, "tab");
            }
            if (LOST_COMMENT.matcher(line).matches()) {
                return fault(i, line.indexOf(" #") + 1, "hash");
            }
            if (TWO_COLONS.matcher(line).matches()) {
                return fault(i, line.indexOf(':', line.indexOf(':') + 1), "colon");
            }
            if (NO_BLANK.matcher(line).matches()) {
                return fault(i, line.indexOf(':'), "blank");
            }
        }
        return fault(at, place.column() - 1, unclosed(text, lines, place));
    }

    private static String unclosed(String text, String[] lines, Place place) {
        boolean atEnd = place.line() >= lines.length || text.strip().lines().count() < place.line();
        long braces = text.chars().filter(c -> c == '{').count()
                - text.chars().filter(c -> c == '}').count();
        long brackets = text.chars().filter(c -> c == '[').count()
                - text.chars().filter(c -> c == ']').count();
        if (braces > 0 || brackets > 0) {
            return braces > 0 ? "brace" : "bracket";
        }
        return atEnd ? "end" : "other";
    }

    private static UnreadableFile fault(int line, int column, String code) {
        return new UnreadableFile(new Place(line + 1, Math.max(0, column) + 1), Note.of("input.yaml." + code));
    }
}
