package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Comparison;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.SetUpResult;

/**
 * Answer that a person reads beside a surface that moves.
 *
 * @param inShort dangers first, the caution that always holds last
 * @param rows the numbers, and those of the set-up that it is held against
 * @param notes what else holds for the set-up
 */
public record HandAnswer(List<Paragraph> inShort, Comparison rows, List<Paragraph> notes) {

    public HandAnswer {
        inShort = List.copyOf(inShort);
        notes = List.copyOf(notes);
    }

    /**
     * The answer about one set-up.
     *
     * @param model the aeroplane
     * @param pack what it carries
     * @param density of the air, kg/m^3
     * @param now what was found of it
     * @param against what was found of another, under another name
     */
    public static HandAnswer of(
            Model model, Pack pack, double density, SetUpResult now, Optional<SetUpResult> against) {
        List<SetUpResult> both = new ArrayList<>(List.of(now));
        against.ifPresent(both::add);
        Text air = Text.say("page.air", new Value.Plain(density, 3));
        Flown flown = new Flown(Text.none(), model, pack, both, air);
        ComparisonRows rows = new ComparisonRows(List.of(flown));
        List<Paragraph> notes =
                now.notes().stream().map(note -> Paragraph.of(Text.of(note))).toList();
        return new HandAnswer(
                InShortSection.of(model, List.of(now)),
                rows.comparison(Text.none(), Flown::packLine, each -> List.of()),
                notes);
    }
}
