package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Role;
import throwline.report.document.Text;

/** Sections that several answers have. */
final class Sections {

    private Sections() {}

    /** Adds a section where it says something. */
    static void add(List<Block> blocks, Text heading, List<? extends Block> content) {
        if (!content.isEmpty()) {
            blocks.add(Section.of(heading, content));
        }
    }

    /** Adds a section of a heading from the file of words, where it says something. */
    static void add(List<Block> blocks, String heading, List<? extends Block> content) {
        add(blocks, Text.say(heading), content);
    }

    /** What every answer ends with: what the bands mean and what to take care of. */
    static List<Block> closing(Paragraph... before) {
        List<Block> closing = new ArrayList<>(List.of(before));
        closing.add(Paragraph.say("row.meaning.likely"));
        closing.add(Paragraph.of(Role.CAUTION, Text.say("row.caution")));
        closing.add(Paragraph.say("row.estimate"));
        return List.of(Section.of(Text.none(), closing).as(Role.CAUTION));
    }
}
