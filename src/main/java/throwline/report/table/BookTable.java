package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.validation.Book;
import throwline.validation.CaseResult;
import throwline.validation.Check;
import throwline.validation.Statistics;
import throwline.words.Words;

/** The validation book as a person reads it at a terminal: what fails first, then the statistics, then every case. */
public final class BookTable {

    private final Page page;
    private final Words words;
    private final BookFigures figures;

    /**
     * A table for this page.
     *
     * @param page where it is shown
     * @param words the sentences
     */
    public BookTable(Page page, Words words) {
        this.page = page;
        this.words = words;
        figures = new BookFigures(words);
    }

    /** The whole book. */
    public String write(Book book) {
        StringBuilder text = new StringBuilder();
        text.append(page.bold(words.say("book.title"))).append('\n');
        paragraph(text, "", figures.summary(book));
        text.append('\n');
        failing(book, text);
        text.append(page.bold(words.say("book.statistics"))).append('\n');
        text.append(statistics(book.statistics()).render(page));
        paragraph(text, "", words.say("book.statistics.meaning"));
        text.append('\n').append(page.bold(words.say("book.cases"))).append('\n');
        for (CaseResult result : book.cases()) {
            one(result, text);
        }
        paragraph(text, "", words.say("row.estimate"));
        return text.toString();
    }

    /** The sections of the book, for those who show them otherwise than as lines of text; the first is its title. */
    public List<TextSection> sections(Book book) {
        return SectionMarks.byHeadings(new BookTable(SectionMarks.page(page), words).write(book));
    }

    private void failing(Book book, StringBuilder text) {
        if (book.passed()) {
            return;
        }
        text.append(page.bold(words.say("book.failing"))).append('\n');
        for (CaseResult result : book.cases()) {
            if (!result.passed()) {
                paragraph(text, "  ", result.title());
                result.checks().stream().filter(check -> !check.passed()).forEach(check -> failure(check, text));
            }
        }
        text.append('\n');
    }

    private void failure(Check check, StringBuilder text) {
        paragraph(
                text,
                "    ",
                words.say(
                        "book.failure",
                        check.quantity(),
                        check.condition(),
                        BookFigures.number(check.measured()),
                        check.mark(),
                        BookFigures.number(check.predicted()),
                        figures.allowed(check),
                        check.why()));
    }

    private Columns statistics(List<Statistics> statistics) {
        Columns columns = new Columns(
                Stream.of("bias", "scatter", "nine", "stated", "inside", "values", "groups", "figure", "basis")
                        .map(key -> words.say("book.column." + key))
                        .toList(),
                7);
        for (Statistics s : statistics) {
            columns.row(List.of(
                    figures.error(s, s.bias(), true),
                    figures.error(s, s.scatter(), false),
                    figures.error(s, s.nineOfTen(), false),
                    s.stated().map(v -> figures.error(s, v, false)).orElse(""),
                    s.inside().map(BookFigures::percent).orElse(""),
                    String.valueOf(s.values()),
                    String.valueOf(s.groups()),
                    figures.figure(s),
                    figures.basis(s)));
        }
        return columns;
    }

    private void one(CaseResult result, StringBuilder text) {
        long failed = result.checks().stream().filter(check -> !check.passed()).count();
        String said = failed == 0 ? "book.case.passed" : "book.case.failed";
        String count = String.valueOf(result.checks().size());
        paragraph(text, "  ", words.say(said, result.title(), count, String.valueOf(failed)));
        paragraph(text, "    ", words.say("book.case.source", result.source()));
        if (!result.notes().isEmpty()) {
            paragraph(text, "    ", result.notes());
        }
        Columns columns = new Columns(
                Stream.of("outside", "ours", "from", "to", "verdict", "quantity")
                        .map(key -> words.say("book.column." + key))
                        .toList(),
                4);
        for (Check check : result.checks()) {
            columns.row(List.of(
                    BookFigures.number(check.measured()),
                    BookFigures.number(check.predicted()),
                    BookFigures.number(check.low()),
                    BookFigures.number(check.high()),
                    words.say(check.passed() ? "book.verdict.met" : "book.verdict.missed"),
                    page.shown(check.quantity() + ", " + check.condition())));
        }
        text.append(columns.render(page).indent(4)).append('\n');
    }

    private void paragraph(StringBuilder text, String indent, String sentence) {
        text.append(Wrapped.paragraph(indent, indent + "  ", page.shown(sentence), page.width()));
    }

    /** The statistics as a table for a page of text with bars between cells. */
    public String summary(Book book) {
        StringBuilder text = new StringBuilder();
        text.append(figures.summary(book)).append("\n\n");
        List<String> keys = List.of("figure", "basis", "values", "groups", "bias", "nine", "stated", "inside");
        bars(text, keys.stream().map(key -> words.say("book.column." + key)).toList());
        bars(text, keys.stream().map(key -> "---").toList());
        for (Statistics s : book.statistics()) {
            bars(
                    text,
                    List.of(
                            figures.figure(s),
                            figures.basis(s),
                            String.valueOf(s.values()),
                            String.valueOf(s.groups()),
                            figures.error(s, s.bias(), true),
                            figures.error(s, s.nineOfTen(), false),
                            s.stated().map(v -> figures.error(s, v, false)).orElse(""),
                            s.inside().map(BookFigures::percent).orElse("")));
        }
        return text.toString();
    }

    private static void bars(StringBuilder text, List<String> cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    /** Every check on a line of comma-separated values. */
    public static String checks(Book book) {
        StringBuilder text = new StringBuilder("case,quantity,condition,outside,ours,from,to,met,mark\n");
        for (CaseResult result : book.cases()) {
            for (Check c : result.checks()) {
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%s,\"%s\",%s,%s,%s,%s,%s,%s%n",
                        result.name(),
                        c.quantity(),
                        c.condition(),
                        BookFigures.number(c.measured()),
                        BookFigures.number(c.predicted()),
                        BookFigures.number(c.low()),
                        BookFigures.number(c.high()),
                        c.passed() ? "yes" : "no",
                        c.mark()));
            }
        }
        return text.toString();
    }

    /** Every pair of the statistics on a line of comma-separated values. */
    public static String pairs(Book book) {
        StringBuilder text = new StringBuilder("case,figure,basis,group,condition,measured,predicted,error\n");
        for (CaseResult result : book.cases()) {
            result.pairs()
                    .forEach(p -> text.append(String.format(
                            Locale.ROOT,
                            "%s,%s,%s,%s,\"%s\",%.5g,%.5g,%.4f%n",
                            result.name(),
                            p.figure().key(),
                            p.basis(),
                            p.group(),
                            p.condition(),
                            p.measured(),
                            p.predicted(),
                            p.error())));
        }
        return text.toString();
    }
}
