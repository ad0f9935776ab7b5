package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import throwline.report.chart.BookCharts;
import throwline.report.document.Block;
import throwline.report.document.Block.Medium;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Pictures;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.validation.Book;
import throwline.validation.CaseResult;
import throwline.validation.Check;
import throwline.validation.Statistics;
import throwline.validation.WaysRow;

/** The validation book: what fails first, then the statistics, then every case. */
public final class BookDocument {

    private BookDocument() {}

    /**
     * The whole book.
     *
     * @param book what was run
     * @param charts draw its pictures
     */
    public static Document of(Book book, Supplier<BookCharts> charts) {
        List<Block> blocks = new ArrayList<>();
        Sections.add(
                blocks,
                "book.failing",
                book.cases().stream()
                        .filter(result -> !result.passed())
                        .map(BookDocument::failing)
                        .toList());
        blocks.add(Section.of(
                Text.say("book.statistics"),
                List.of(statistics(book.statistics()), Paragraph.say("book.statistics.meaning"))));
        blocks.add(Section.of(Text.say("book.ways"), List.of(ways(book.ways()), Paragraph.say("book.ways.meaning"))));
        blocks.add(Section.of(
                Text.say("book.cases"),
                book.cases().stream().map(BookDocument::one).toList()));
        blocks.add(Section.of(
                        Text.say("page.drawn"),
                        List.of(new Pictures(() -> charts.get().onPage(book, "v-"))))
                .folded()
                .on(Medium.PAGE));
        blocks.addAll(Sections.closing(Paragraph.say("row.meaning.likely")));
        return new Document(Text.say("book.title"), List.of(summary(book)), blocks);
    }

    /** How many checks there are, and how many fail. */
    static Text summary(Book book) {
        List<Check> checks =
                book.cases().stream().flatMap(c -> c.checks().stream()).toList();
        return Text.say(
                "book.summary",
                Value.count(book.cases().size()),
                Value.count(checks.size()),
                Value.count(checks.stream().filter(c -> !c.passed()).count()),
                Value.count(book.cases().stream().filter(c -> !c.passed()).count()),
                Value.count(book.cases().stream()
                        .mapToLong((CaseResult c) -> c.pairs().size())
                        .sum()));
    }

    private static Section failing(CaseResult result) {
        return Section.of(
                Text.name(result.title()),
                result.checks().stream()
                        .filter(check -> !check.passed())
                        .map(check -> Paragraph.say(
                                "book.failure",
                                check.quantity(),
                                check.condition(),
                                new Value.Rounded(check.measured()),
                                check.mark(),
                                new Value.Rounded(check.predicted()),
                                allowed(check),
                                check.why()))
                        .toList());
    }

    /** Between what and what an answer must lie. */
    private static Text allowed(Check check) {
        if (Double.isInfinite(check.low())) {
            return Text.say("book.allowed.most", new Value.Rounded(check.high()));
        }
        if (Double.isInfinite(check.high())) {
            return Text.say("book.allowed.least", new Value.Rounded(check.low()));
        }
        return Text.say("book.allowed", new Value.Rounded(check.low()), new Value.Rounded(check.high()));
    }

    private static Table statistics(List<Statistics> statistics) {
        List<Column> columns = new ArrayList<>(Tables.numbers(
                "book.column.bias",
                "book.column.scatter",
                "book.column.nine",
                "book.column.stated",
                "book.column.inside",
                "book.column.values",
                "book.column.groups"));
        columns.addAll(Tables.words("book.column.figure", "book.column.basis"));
        return Tables.listing(
                columns,
                statistics,
                s -> Table.Cells.of(
                        error(s, s.bias(), true),
                        error(s, s.scatter(), false),
                        error(s, s.nineOfTen(), false),
                        stated(s),
                        inside(s),
                        Value.count(s.values()),
                        Value.count(s.groups()),
                        figure(s),
                        basis(s)));
    }

    private static Table ways(List<WaysRow> ways) {
        List<Column> columns = new ArrayList<>(Tables.words("book.column.figure"));
        columns.addAll(Tables.numbers(
                "book.ways.re",
                "book.column.values",
                "book.ways.stand-in",
                "book.ways.method",
                "book.ways.difference"));
        return Tables.listing(
                columns,
                ways,
                row -> Table.Cells.of(
                        Text.say("book.figure." + row.figure().key()),
                        new Value.Plain(row.reynolds(), 0),
                        Value.count(row.values()),
                        way(row, row.standIn()),
                        way(row, row.method()),
                        way(row, row.difference())));
    }

    private static Text way(WaysRow row, double error) {
        return Value.of(error, row.figure().isShare() ? Value.Kind.SHARE_TENTHS : Value.Kind.ANGLE_STEP);
    }

    static Text stated(Statistics s) {
        return s.stated().map(v -> error(s, v, false)).orElse(Text.none());
    }

    static Text inside(Statistics s) {
        return s.inside().<Text>map(Value::share).orElse(Text.none());
    }

    static Text figure(Statistics s) {
        return Text.say("book.figure." + s.figure().key().replace(' ', '.'));
    }

    static Text basis(Statistics s) {
        return Text.say("book.basis." + s.basis().toLowerCase(Locale.ROOT));
    }

    /** An error of a figure, per cent or degrees. */
    static Text error(Statistics s, double error, boolean signed) {
        if (s.figure().isShare()) {
            return Value.of(error, signed ? Value.Kind.SIGNED_SHARE : Value.Kind.SHARE_TENTHS);
        }
        return Value.of(Math.toRadians(error), signed ? Value.Kind.SIGNED_ANGLE : Value.Kind.ANGLE_STEP);
    }

    private static Section one(CaseResult result) {
        long failed = result.checks().stream().filter(check -> !check.passed()).count();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Paragraph.say("book.case.source", result.source()));
        if (!result.notes().isEmpty()) {
            blocks.add(Paragraph.of(Text.name(result.notes())));
        }
        List<Column> columns = new ArrayList<>(
                Tables.numbers("book.column.outside", "book.column.ours", "book.column.from", "book.column.to"));
        columns.addAll(Tables.words("book.column.verdict", "book.column.quantity"));
        blocks.add(Tables.listing(
                columns,
                result.checks(),
                check -> Table.Cells.of(
                        new Value.Rounded(check.measured()),
                        new Value.Rounded(check.predicted()),
                        new Value.Rounded(check.low()),
                        new Value.Rounded(check.high()),
                        Text.say(check.passed() ? "book.verdict.met" : "book.verdict.missed"),
                        Text.say("book.check", check.quantity(), check.condition()))));
        return Section.of(
                Text.say(
                        failed == 0 ? "book.case.passed" : "book.case.failed",
                        result.title(),
                        Value.count(result.checks().size()),
                        Value.count(failed)),
                blocks);
    }
}
