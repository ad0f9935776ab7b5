package throwline.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import throwline.input.PackedAirfoils;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.chart.BookCharts;
import throwline.report.html.TextPage;
import throwline.report.table.BookTable;
import throwline.section.MeasuredSections;
import throwline.units.Display;
import throwline.validation.Book;
import throwline.validation.CaseFolder;
import throwline.validation.UnreadableCase;
import throwline.validation.Validation;

/** Runs every published case and writes the book. */
@Command(name = "validate")
final class ValidateCommand implements Callable<Integer> {

    private static final int FILE_WIDTH = 120;

    private final Context context;

    @Option(names = "--cases", paramLabel = "DIR", order = 1, description = "${bundle:cli.validate.cases}")
    private @Nullable Path cases;

    @Option(names = "--out", paramLabel = "DIR", order = 2, description = "${bundle:cli.validate.out}")
    private @Nullable Path out;

    @Option(names = "--replace", order = 3, description = "${bundle:cli.replace}")
    private boolean replace;

    ValidateCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        context.terminal().progress(context.words().say("cli.validate.running"));
        Book book = book();
        Path folder = out;
        if (folder != null) {
            OutputFolder output = new OutputFolder(folder, replace, context.words());
            output.add("", files(book));
            output.write();
        }
        context.terminal().answer(table(context.terminal().width()).write(book));
        return (book.passed() ? ExitCode.DONE : ExitCode.NOT_ALL_FOUND).number();
    }

    private Book book() {
        Path folder = cases;
        if (folder != null && !Files.isDirectory(folder)) {
            throw new WrongInput(context.words().say("cli.validate.no-folder", folder));
        }
        Book book;
        try {
            book = new Validation(new MeasuredSections(), new PackedAirfoils())
                    .run(folder == null ? CaseFolder.packed() : CaseFolder.at(folder));
        } catch (UnreadableCase e) {
            throw new WrongInput(new Sentences(context.words(), Display.metric()).say(e.note()));
        }
        if (book.cases().isEmpty()) {
            throw new WrongInput(context.words().say("cli.validate.no-cases", String.valueOf(folder)));
        }
        return book;
    }

    private BookTable table(int width) {
        Terminal terminal = context.terminal();
        return new BookTable(Page.of(width, terminal.unicode(), terminal.styled(), Display.metric()), context.words());
    }

    private List<ReportFile> files(Book book) {
        BookTable table = new BookTable(Page.of(FILE_WIDTH, true, false, Display.metric()), context.words());
        List<ReportFile> files = new ArrayList<>();
        files.add(file("book.txt", table.write(book)));
        files.add(file("summary.md", table.summary(book)));
        files.add(file("checks.csv", BookTable.checks(book)));
        files.add(file("pairs.csv", BookTable.pairs(book)));
        files.add(file("bands.csv", book.bandsFile()));
        files.add(file(
                "book.html",
                new TextPage(Page.of(FILE_WIDTH, true, false, Display.metric()), context.words()).book(book)));
        files.addAll(new BookCharts(context.words()).draw(book));
        return files;
    }

    private static ReportFile file(String name, String text) {
        return new ReportFile(name, text.getBytes(StandardCharsets.UTF_8));
    }
}
