package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.words.Message;

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

    /** Adds a section of a heading from the file of words, folded, where it says something. */
    static void fold(List<Block> blocks, String heading, List<? extends Block> content) {
        if (!content.isEmpty()) {
            blocks.add(Section.of(Text.say(heading), content).folded());
        }
    }

    /** What the marks of a table mean. */
    static Section legend(String reference, List<Message> warnings) {
        boolean assumed = warnings.stream().anyMatch(warning -> warning.code().equals("note.assumed-bands"));
        Text said = Text.say(assumed ? "row.legend.assumed" : "row.legend", reference);
        return Section.of(Text.none(), List.of(Paragraph.of(Role.QUIET, said)));
    }

    /** What an answer ends with that calls itself an estimate in what it says first: what to take care of. */
    static List<Block> cautions() {
        return List.of(Section.of(Text.none(), List.of(Paragraph.of(Role.CAUTION, Text.say("row.caution"))))
                .as(Role.CAUTION));
    }

    /** What other answers end with. */
    static List<Block> closing(Paragraph... before) {
        List<Block> closing = new ArrayList<>(List.of(before));
        closing.add(Paragraph.of(Role.CAUTION, Text.say("row.caution")));
        closing.add(Paragraph.say("row.estimate"));
        return List.of(Section.of(Text.none(), closing).as(Role.CAUTION));
    }
}
