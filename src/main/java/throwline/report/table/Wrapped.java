package throwline.report.table;

import java.util.ArrayList;
import java.util.List;

/** Breaks text at blanks; a word that is longer than the line keeps its own. */
final class Wrapped {

    private Wrapped() {}

    /** The lines of a text that fit a width. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** A paragraph whose first line starts with one text and whose others are indented as far as another is long. */
    static String paragraph(String first, String others, String text, int width) {
        List<String> lines = lines(text, width - Math.max(first.length(), others.length()));
        StringBuilder paragraph = new StringBuilder();
        for (int i = 0; i < lines.size(); i++) {
            paragraph.append(i == 0 ? first : others).append(lines.get(i)).append('\n');
        }
        return paragraph.toString();
    }
}
