package throwline.report.terminal;

import java.util.ArrayList;
import java.util.List;

/** Text broken at blanks, inside a word only where the word is longer than a line. */
final class Wrapped {

    /** Blanks at which a text is not broken. */
    private static final char UNBROKEN = '\u00a0';

    private Wrapped() {}

    /** The lines of a text that fit a width. */
    static List<String> lines(String text, int width) {
        return lines(text, width, width);
    }

    private static List<String> lines(String text, int firstWidth, int otherWidth) {
        List<String> lines = new ArrayList<>();
        int width = firstWidth;
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("[ \t\n]+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                add(lines, line);
                width = otherWidth;
            }
            line.append(line.length() > 0 ? " " : "").append(word);
            while (line.length() > width) {
                String rest = line.substring(width);
                line.setLength(width);
                add(lines, line);
                line.append(rest);
                width = otherWidth;
            }
        }
        add(lines, line);
        return lines;
    }

    private static void add(List<String> lines, StringBuilder line) {
        lines.add(line.toString().replace(UNBROKEN, ' '));
        line.setLength(0);
    }

    /** A paragraph whose first line starts with one text and whose others start with another. */
    static List<String> paragraph(String first, String others, String text, int width) {
        List<String> lines = lines(text, width - first.length(), width - others.length());
        List<String> paragraph = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            paragraph.add((i == 0 ? first : others) + lines.get(i));
        }
        return paragraph;
    }
}
