package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import throwline.report.table.TextSection;

/** Makes parts of a page from the sections of a text. */
final class SectionParts {

    private SectionParts() {}

    /** Sentences that follow each other in one list, tables between them; the heading stands above the first. */
    static void add(List<Part> parts, TextSection section) {
        String heading = section.heading();
        List<String> sentences = new ArrayList<>();
        for (TextSection.Block block : section.blocks()) {
            if (block instanceof TextSection.Sentence sentence) {
                sentences.add(sentence.text());
            } else if (block instanceof TextSection.Table table) {
                if (!sentences.isEmpty()) {
                    parts.add(new Part.Sentences(heading, sentences));
                    heading = "";
                    sentences.clear();
                }
                parts.add(new Part.Table(heading, table.headers(), table.rows()));
                heading = "";
            }
        }
        if (!sentences.isEmpty()) {
            parts.add(new Part.Sentences(heading, sentences));
        }
    }
}
