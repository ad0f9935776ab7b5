package throwline.input;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.regex.Pattern;
import throwline.words.Message;

/** Says in a modeller's words why a file is no YAML, from what stands near the place where the parser gave up. */
final class SyntaxFault {

    private static final Pattern TWO_COLONS = Pattern.compile("^[^\"'{\\[#]*:\\s[^\"'{\\[#]*:(\\s.*)?$");
    private static final Pattern LOST_COMMENT = Pattern.compile("^[^\"':{\\[]*[^\"':{\\[\\s]\\s+#.*:.*$");
    private static final Pattern NO_BLANK = Pattern.compile("^\\s*(- )?[^\\s\"'{\\[#:]+:[^\\s/].*$");
    private static final Pattern NO_COLON = Pattern.compile("^\\s*[^\\s#\"'{}\\[\\],-][^:]*$");

    /** Longer lines are looked at no further: no model file has any, and a pattern may take long over them. */
    private static final int LONGEST = 1000;

    private final String[] lines;

    SyntaxFault(String[] lines) {
        this.lines = lines;
    }

    /** The lines of a text, cut where the parser cuts them. */
    static String[] lines(String text) {
        return text.split("\r\n|[\n\r]", -1);
    }

    UnreadableFile describe(Optional<FilePlace> mark) {
        if (mark.isEmpty()) {
            return new UnreadableFile(FilePlace.START, Message.of("input.yaml.other"));
        }
        int at = Math.min(mark.get().line(), lines.length) - 1;
        int column = mark.get().column() - 1;
        for (int i = at; i >= Math.max(0, at - 1); i--) {
            Optional<UnreadableFile> fault = inLine(i);
            if (fault.isPresent()) {
                return fault.get();
            }
        }
        Optional<Opener> open = unclosed(at, column);
        if (open.isPresent()) {
            int hash = lines[open.get().line()].indexOf(" #", open.get().column());
            if (hash >= 0) {
                return fault(open.get().line(), hash + 1, "hash");
            }
            String code = open.get().sign() == '{' ? "brace" : open.get().sign() == '[' ? "bracket" : "quote";
            return fault(open.get().line(), open.get().column(), code);
        }
        for (int i = at; i >= Math.max(0, at - 1); i--) {
            if (lines[i].length() <= LONGEST && NO_COLON.matcher(lines[i]).matches()) {
                return fault(i, lines[i].stripTrailing().length(), "nocolon");
            }
        }
        String line = lines[at];
        boolean begins = column <= line.length() && line.substring(0, column).isBlank() && !line.isBlank();
        return fault(at, column, begins ? "indent" : isLast(at) ? "end" : "other");
    }

    private Optional<UnreadableFile> inLine(int i) {
        String line = lines[i];
        if (line.length() > LONGEST) {
            return Optional.empty();
        }
        int tab =
                line.substring(0, line.length() - line.stripLeading().length()).indexOf('\t');
        if (tab >= 0) {
            return Optional.of(fault(i, tab, "tab"));
        }
        if (LOST_COMMENT.matcher(line).matches()) {
            return Optional.of(fault(i, line.indexOf('#'), "hash"));
        }
        if (TWO_COLONS.matcher(line).matches()) {
            return Optional.of(fault(i, line.indexOf(": ", line.indexOf(": ") + 1), "colon"));
        }
        if (NO_BLANK.matcher(line).matches()) {
            return Optional.of(fault(i, line.indexOf(':'), "blank"));
        }
        return Optional.empty();
    }

    private boolean isLast(int at) {
        for (int i = at + 1; i < lines.length; i++) {
            if (!lines[i].isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** A sign that wants its partner. */
    private record Opener(char sign, int line, int column) {}

    /** The innermost brace, bracket or quote that is still open where the parser gave up. */
    private Optional<Opener> unclosed(int lastLine, int lastColumn) {
        Deque<Opener> open = new ArrayDeque<>();
        for (int i = 0; i <= lastLine; i++) {
            String line = lines[i];
            int end = i == lastLine ? Math.min(lastColumn, line.length()) : line.length();
            for (int c = 0; c < end; c++) {
                char sign = line.charAt(c);
                boolean fresh = c == 0 || " {[,:".indexOf(line.charAt(c - 1)) >= 0;
                Opener top = open.peek();
                boolean quoted = top != null && (top.sign() == '"' || top.sign() == '\'');
                if (quoted) {
                    if (top.sign() == sign) {
                        open.pop();
                    }
                } else if (sign == '#' && fresh) {
                    break;
                } else if (sign == '{' || sign == '[' || (fresh && (sign == '"' || sign == '\''))) {
                    open.push(new Opener(sign, i, c));
                } else if (top != null && (sign == '}' || sign == ']')) {
                    open.pop();
                }
            }
        }
        return Optional.ofNullable(open.peek());
    }

    private static UnreadableFile fault(int line, int column, String code) {
        return new UnreadableFile(new FilePlace(line + 1, Math.max(0, column) + 1), Message.of("input.yaml." + code));
    }
}
