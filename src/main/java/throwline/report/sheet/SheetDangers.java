package throwline.report.sheet;

import java.util.List;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.report.Page;
import throwline.report.answer.DangerSentences;
import throwline.report.document.Figures;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.study.Danger;
import throwline.study.Danger.Use;
import throwline.study.InShort;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** What a sheet or card says before all else: what may hurt, the worst first. */
final class SheetDangers {

    private final Model model;
    private final List<SetUpResult> setUps;
    private final Figures figures;
    private final Words words;

    SheetDangers(SheetAnswer answer, Page page, Words words) {
        model = answer.model();
        setUps = answer.pack().setUps();
        figures = new Figures(page, words);
        this.words = words;
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
        return blocks(caution, DangerSentences.of(inShort(), setUps.size()));
    }

    /** The same in a few words each. */
    List<Block> brief(String caution) {
        return blocks(caution, DangerSentences.brief(inShort(), setUps.size()));
    }

    private InShort inShort() {
        return InShort.of(model, setUps);
    }

    private List<Block> blocks(String caution, List<throwline.report.document.Block.Paragraph> dangers) {
        Stream<Block> forbidden =
                forbids() ? Stream.of(new Paragraph(words.say("sheet.caution.forbidden"), true)) : Stream.empty();
        Stream<Block> said = dangers.stream()
                .map(danger -> words.say(
                        "sheet.danger", (figures.show(danger.lead()) + " " + figures.show(danger.text())).strip()))
                .map(danger -> new Paragraph(danger, true));
        return Stream.of(forbidden, Stream.of(new Paragraph(words.say(caution), true)), said)
                .<Block>flatMap(s -> s)
                .toList();
    }
}
