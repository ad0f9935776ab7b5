package throwline.report.table;

import java.util.ArrayList;
import java.util.List;

/** Sentences that cells point to by number; a sentence that is said twice has one number. */
final class Footnotes {

    private final List<String> sentences = new ArrayList<>();

    /** The mark of a sentence, such as (1). */
    String mark(String sentence) {
        int index = sentences.indexOf(sentence);
        if (index < 0) {
            sentences.add(sentence);
            index = sentences.size() - 1;
        }
        return "(" + (index + 1) + ")";
    }

    /** All sentences behind their marks. */
    String render(int width) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < sentences.size(); i++) {
            text.append(Wrapped.paragraph("(" + (i + 1) + ") ", "    ", sentences.get(i), width));
        }
        return text.toString();
    }
}
