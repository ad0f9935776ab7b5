package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.report.answer.DangerSentences;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.study.Danger;
import throwline.study.Danger.Use;
import throwline.study.InShort;
import throwline.study.SetUpResult;

/** Head of a sheet or card: what may hurt, the worst first. */
final class SheetDangers {

    private final Model model;
    private final List<SetUpResult> setUps;

    SheetDangers(SheetAnswer answer) {
        model = answer.model();
        setUps = answer.pack().setUps();
    }

    /** True where some set-up must not be flown. */
    boolean forbids() {
        return setUps.stream().anyMatch(result -> dangers(result).contains(Danger.BALANCE_BEHIND_NEUTRAL));
    }

    /** True where a danger rules a set-up out for this. */
    boolean rulesOut(SetUpResult result, Use use) {
        return dangers(result).stream().anyMatch(danger -> danger.rulesOut(use));
    }

    private List<Danger> dangers(SetUpResult result) {
        return Danger.of(result, model.field());
    }

    /** What forbids to fly it, then the caution that comes before all work, then the dangers, the worst first. */
    List<Block> blocks(String caution) {
        return blocks(caution, DangerSentences.of(InShort.of(model, setUps), setUps.size()));
    }

    /** The same in a few words each. */
    List<Block> brief(String caution) {
        return blocks(caution, DangerSentences.brief(InShort.of(model, setUps), setUps.size()));
    }

    private List<Block> blocks(String caution, List<Paragraph> dangers) {
        List<Block> blocks = new ArrayList<>();
        if (forbids()) {
            blocks.add(Paragraph.of(Role.CAUTION, Text.say("sheet.caution.forbidden")));
        }
        blocks.add(Paragraph.of(Role.CAUTION, Text.say(caution)));
        blocks.addAll(dangers);
        return blocks;
    }
}
