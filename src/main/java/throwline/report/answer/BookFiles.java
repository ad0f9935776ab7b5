package throwline.report.answer;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import throwline.report.data.CsvCell;
import throwline.report.document.Figures;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.validation.Book;
import throwline.validation.CaseResult;
import throwline.validation.Check;
import throwline.validation.Statistics;

/** The validation book for readmes and spreadsheets. */
public final class BookFiles {

    private final Figures figures;

    /** Files with numbers written so. */
    public BookFiles(Figures figures) {
        this.figures = figures;
    }

    private String show(Text text) {
        return figures.show(text).replace('\u00a0', ' ');
    }

    /** The statistics as a table for a page of text with bars between cells. */
    public String summary(Book book) {
        StringBuilder text = new StringBuilder();
        text.append(show(BookDocument.summary(book))).append("\n\n");
        List<String> keys = List.of("figure", "basis", "values", "groups", "bias", "nine", "stated", "inside");
        bars(
                text,
                keys.stream().map(key -> show(Text.say("book.column." + key))).toList());
        bars(text, keys.stream().map(key -> "---").toList());
        for (Statistics s : book.statistics()) {
            bars(
                    text,
                    Arrays.asList(
                            show(BookDocument.figure(s)),
                            show(BookDocument.basis(s)),
                            String.valueOf(s.values()),
                            String.valueOf(s.groups()),
                            show(BookDocument.error(s, s.bias(), true)),
                            show(BookDocument.error(s, s.nineOfTen(), false)),
                            show(BookDocument.stated(s)),
                            show(BookDocument.inside(s))));
        }
        return text.toString();
    }

    private static void bars(StringBuilder text, List<String> cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    /** Every check on a line of comma-separated values. */
    public String checks(Book book) {
        StringBuilder text = new StringBuilder("case,quantity,condition,outside,ours,from,to,met,mark\n");
        for (CaseResult result : book.cases()) {
            for (Check c : result.checks()) {
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%s,%s,%s,%s,%s,%s,%s,%s%n",
                        CsvCell.text(result.name()),
                        c.quantity(),
                        CsvCell.text(c.condition()),
                        show(new Value.Rounded(c.measured())),
                        show(new Value.Rounded(c.predicted())),
                        show(new Value.Rounded(c.low())),
                        show(new Value.Rounded(c.high())),
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
                            "%s,%s,%s,%s,%s,%.5g,%.5g,%.4f%n",
                            CsvCell.text(result.name()),
                            p.figure().key(),
                            p.basis(),
                            CsvCell.text(p.group()),
                            CsvCell.text(p.condition()),
                            p.measured(),
                            p.predicted(),
                            p.error())));
        }
        return text.toString();
    }
}
