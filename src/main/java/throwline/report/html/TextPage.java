package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import throwline.report.Page;
import throwline.report.chart.BookCharts;
import throwline.report.chart.FindCharts;
import throwline.report.document.PagePicture;
import throwline.report.table.BookTable;
import throwline.report.table.FindTable;
import throwline.report.table.TextSection;
import throwline.study.FindResult;
import throwline.validation.Book;
import throwline.words.Words;

/** Answers that are mostly sentences and tables as one page: what was found for a want, and the validation book. */
public final class TextPage {

    private final Page page;
    private final Words words;

    /**
     * A page maker.
     *
     * @param page units and looks
     * @param words the sentences
     */
    public TextPage(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /**
     * What was found, as HTML.
     *
     * @param result what was found
     * @param fileName name of the model file
     * @param fileText what is in it
     */
    public String find(FindResult result, String fileName, String fileText) {
        List<TextSection> sections = new FindTable(page, words).sections(result);
        List<Part> parts = new ArrayList<>();
        Set<String> others = Set.of(withoutColon("find.flown"), withoutColon("row.section.notes"));
        List<String> found = new ArrayList<>(sections.stream()
                .map(TextSection::heading)
                .skip(1)
                .takeWhile(heading -> !others.contains(heading))
                .toList());
        found.add(words.say("page.verdict.last"));
        parts.add(Part.Verdict.of(words.say("page.verdict"), found));
        pictures(parts, new FindCharts(words).onPage(result, "d-"));
        sections.stream().skip(1).forEach(section -> SectionParts.add(parts, body(section)));
        caution(parts);
        parts.add(Part.Enclosed.of(words, fileName, fileText));
        return leaf(sections.get(0), parts);
    }

    /** The validation book, as HTML. */
    public String book(Book book) {
        List<TextSection> sections = new BookTable(page, words).sections(book);
        List<Part> parts = new ArrayList<>();
        sections.stream().skip(1).forEach(section -> SectionParts.add(parts, body(section)));
        List<Part> charts = new ArrayList<>();
        pictures(charts, new BookCharts(words).onPage(book, "v-"));
        parts.add(new Part.Folded(words.say("page.drawn"), charts));
        caution(parts);
        return leaf(sections.get(0), parts);
    }

    private String withoutColon(String heading) {
        return words.say(heading).replaceFirst(":$", "");
    }

    private void pictures(List<Part> parts, List<PagePicture> pictures) {
        if (!pictures.isEmpty()) {
            parts.add(Part.Pictures.of(words.say("page.drawn"), pictures));
        }
    }

    /** What every answer ends with stands in a part of its own. */
    private TextSection body(TextSection section) {
        Set<String> closing =
                Set.of(words.say("row.meaning.likely"), words.say("row.caution"), words.say("row.estimate"));
        return new TextSection(
                section.heading(),
                section.blocks().stream()
                        .filter(block ->
                                !(block instanceof TextSection.Sentence sentence && closing.contains(sentence.text())))
                        .toList());
    }

    private void caution(List<Part> parts) {
        parts.add(new Part.Caution(
                words.say("page.caution"),
                List.of(words.say("row.caution"), words.say("row.meaning.likely"), words.say("row.estimate"))));
    }

    private static String leaf(TextSection title, List<Part> parts) {
        List<String> under = title.blocks().stream()
                .filter(TextSection.Sentence.class::isInstance)
                .map(block -> ((TextSection.Sentence) block).text())
                .toList();
        return new HtmlPage(title.heading(), under, parts).html();
    }
}
