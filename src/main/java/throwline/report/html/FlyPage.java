package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import throwline.report.Page;
import throwline.report.chart.Charts;
import throwline.report.chart.FlyCharts;
import throwline.report.document.Figures;
import throwline.report.table.FlyTable;
import throwline.report.table.TextSection;
import throwline.section.AirfoilLibrary;
import throwline.study.BeyondMeasured;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.study.FlyResult;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/** One set-up in depth as one page. */
public final class FlyPage {

    private final Words words;

    /** A page in these words. */
    public FlyPage(Words words) {
        this.words = words;
    }

    /**
     * The page, as HTML.
     *
     * @param result what was found
     * @param page units and looks
     * @param airfoils where the model's airfoils are found
     * @param fileName name of the model file
     * @param fileText what is in it
     */
    public String write(FlyResult result, Page page, AirfoilLibrary airfoils, String fileName, String fileText) {
        PackResult pack = new PackResult(result.pack(), List.of(result.glance()));
        Flown flown = new Flown("", result.model(), pack, words.say("page.air.field"), page);
        List<Message> warnings = BeyondMeasured.notes(List.of(result.glance().setUp()));
        Situation situation = new Situation(new Comparison(result.model(), Double.NaN, List.of(pack), warnings), pack);
        List<Part> parts = new ArrayList<>();
        parts.add(Part.Verdict.of(words.say("page.verdict"), new Verdicts(page, words).of(situation)));
        parts.add(Part.Pictures.of(
                words.say("page.setup.picture"),
                new Charts(words, page.besideSpeed())
                        .setUps(result.model(), pack, airfoils, new Figures(page, words), "s-")));
        parts.add(new Part.Cards(
                words.say("page.glance"), words.say("page.glance.intro"), new CardMaker(words).cards(List.of(flown))));
        parts.add(Part.Pictures.of(words.say("page.over-speed"), new FlyCharts(words).onPage(result, "f-")));
        for (TextSection section : new FlyTable(page, words).sections(result)) {
            SectionParts.add(parts, section);
        }
        parts.add(new Part.Caution(
                words.say("page.caution"), List.of(words.say("row.caution"), words.say("row.meaning.likely"))));
        parts.add(Part.Enclosed.of(words, fileName, fileText));
        String title = words.say(
                "fly.title", result.model().name(), result.glance().setUp().name());
        QuantityPrinter printer = new QuantityPrinter(page.units());
        String with = words.say(
                "row.pack",
                result.pack().name(),
                printer.print(result.pack().mass(), Dimension.MASS),
                printer.print(result.pack().balance(), Dimension.LENGTH));
        return new HtmlPage(title, List.of(with), parts).html();
    }
}
