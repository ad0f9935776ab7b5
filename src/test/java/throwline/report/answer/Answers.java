package throwline.report.answer;

import java.util.List;
import java.util.Optional;
import throwline.input.PackedAirfoils;
import throwline.report.CheckAnswer;
import throwline.report.CompareAnswer;
import throwline.report.Page;
import throwline.report.chart.BookCharts;
import throwline.report.chart.Charts;
import throwline.report.chart.FindCharts;
import throwline.report.chart.FlyCharts;
import throwline.report.document.Block;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.html.PageView;
import throwline.report.terminal.TerminalRenderer;
import throwline.study.FindResult;
import throwline.study.FlyResult;
import throwline.units.Display;
import throwline.validation.Book;
import throwline.words.Words;

/** Answers as documents, texts and pages, as the commands make them. */
public final class Answers {

    private static final Words WORDS = Words.load();
    private static final Page PAGE = Page.of(100, true, false, Display.metric());

    private Answers() {}

    public static Document compare(String file, CompareAnswer... answers) {
        return CompareDocument.of(
                List.of(answers).stream()
                        .map(answer ->
                                new CompareDocument.Compared(answer, new PackedAirfoils(), "my \"model\".yaml", file))
                        .toList(),
                () -> new Charts(WORDS, PAGE.besideSpeed()),
                new Figures(PAGE, WORDS));
    }

    public static Document fly(FlyResult result) {
        return FlyDocument.of(
                result,
                Optional.empty(),
                () -> new Charts(WORDS, PAGE.besideSpeed()),
                new Figures(PAGE, WORDS),
                () -> new FlyCharts(WORDS),
                new PackedAirfoils(),
                new Block.Enclosed("orchard.yaml", "throwline: 1\n"));
    }

    public static Document find(FindResult result) {
        return FindDocument.of(
                result,
                Optional.empty(),
                () -> new FindCharts(WORDS),
                new Block.Enclosed("orchard.yaml", "throwline: 1\n"));
    }

    public static Document check(CheckAnswer answer) {
        return CheckDocument.of(answer);
    }

    public static Document book(Book book) {
        return BookDocument.of(book, () -> new BookCharts(WORDS));
    }

    public static String text(Document document, Page page) {
        return new TerminalRenderer(page, WORDS, true).write(document);
    }

    /** What a terminal shows before more is asked for. */
    public static String screen(Document document, Page page) {
        return new TerminalRenderer(page, WORDS, false).write(document);
    }

    public static String html(Document document) {
        return PageView.html(document, PAGE, WORDS);
    }
}
