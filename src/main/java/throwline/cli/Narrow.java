package throwline.cli;

import java.util.stream.Collectors;

/**
 * Text for a terminal too narrow for its lines: each is broken at blanks, and in the middle of a word that is longer than
 * the terminal is wide; what goes on keeps the indent.
 *
 * @param width columns
 */
record Narrow(int width) {

    /** The text with no line longer than the width. */
    String fold(String text) {
        String folded = text.lines().map(this::line).collect(Collectors.joining("\n"));
        return text.endsWith("\n") ? folded + "\n" : folded;
    }

    private String line(String line) {
        String left = line.stripTrailing();
        String indent = " "
                .repeat(Math.min(width / 4, left.length() - left.stripLeading().length()));
        StringBuilder folded = new StringBuilder();
        String lead = "";
        while (length(lead + left) > width) {
            String shown = lead + left;
            int end = shown.offsetByCodePoints(0, width);
            int blank = shown.lastIndexOf(' ', end);
            boolean atBlank =
                    blank > lead.length() && !shown.substring(0, blank).isBlank();
            int cut = atBlank ? blank : end;
            folded.append(shown.substring(0, cut).stripTrailing()).append('\n');
            left = shown.substring(cut).strip();
            lead = indent;
        }
        return folded.append(lead).append(left).toString();
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
