package throwline.report.answer;

import java.util.List;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.study.Danger;
import throwline.study.InShort;

/** Sentences about what may hurt, the worst first: the same on screens, pages, sheets and cards. */
public final class DangerSentences {

    private DangerSentences() {}

    /**
     * A sentence for the set-ups that share their dangers.
     *
     * @param inShort holds the dangers
     * @param setUps how many set-ups there are; a lone one needs no name
     */
    public static List<Paragraph> of(InShort inShort, int setUps) {
        return inShort.warnings().stream()
                .map(warning -> danger(warning.dangers(), warning.setUps(), setUps))
                .toList();
    }

    /** The same in a few words each, where there is little room. */
    public static List<Paragraph> brief(InShort inShort, int setUps) {
        return inShort.warnings().stream()
                .map(warning -> said(
                        Text.join(
                                Join.SEMICOLON, warning.dangers(), danger -> Text.say("danger.brief." + danger.key())),
                        warning.setUps(),
                        setUps))
                .toList();
    }

    /** Dangers with the set-ups that they hold for, of so many. */
    static Paragraph danger(List<Danger> dangers, List<String> names, int setUps) {
        Text said = Text.join(Join.BLANK, dangers, danger -> {
            Text text = Text.say("danger." + danger.key());
            return setUps == 1 || danger != dangers.get(0) ? new Text.Capital(text) : text;
        });
        return said(said, names, setUps);
    }

    private static Paragraph said(Text said, List<String> names, int setUps) {
        if (setUps == 1) {
            return Paragraph.of(Role.DANGER, new Text.Capital(said));
        }
        Text about = names.size() == setUps ? Text.say("danger.all") : Text.names(names);
        return about(Role.DANGER, about, said);
    }

    /** A sentence that begins with the names of set-ups. */
    static Paragraph about(Role role, Text names, Text said) {
        return new Paragraph(role, Text.say("page.verdict.about", new Text.Capital(names)), said);
    }
}
