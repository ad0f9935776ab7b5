package throwline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import throwline.input.PackedAirfoils;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.Sentences;
import throwline.report.answer.BookDocument;
import throwline.report.answer.BookFiles;
import throwline.report.chart.BookCharts;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.html.PageView;
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

    @Option(names = "--cases", paramLabel = "DIR", order = 1)
    private @Nullable Path cases;

    @Mixin
    private FolderOptions folder = new FolderOptions();

    ValidateCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        context.terminal().progress(context.words().say("cli.validate.running"));
        Book book = book();
        Document document = BookDocument.of(book, () -> new BookCharts(context.words()));
        folder.write(context, () -> files(book, document));
        context.terminal().answer(context.shown(document, context.page(Display.metric())));
        return ExitCode.of(book.passed());
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

    private List<ReportFile> files(Book book, Document document) {
        Page page = Page.of(FILE_WIDTH, true, false, Display.metric());
        BookFiles data = new BookFiles(new Figures(page, context.words()));
        List<ReportFile> files = new ArrayList<>();
        files.add(ReportFile.of("book.txt", context.shown(document, page)));
        files.add(ReportFile.of("summary.md", data.summary(book)));
        files.add(ReportFile.of("checks.csv", data.checks(book)));
        files.add(ReportFile.of("pairs.csv", BookFiles.pairs(book)));
        files.add(ReportFile.of("bands.csv", book.bandsFile()));
        files.add(ReportFile.of("learned.csv", book.learned().text()));
        files.add(ReportFile.of("book.html", PageView.html(document, page, context.words())));
        files.addAll(new BookCharts(context.words()).draw(book, folder.formats()));
        return files;
    }
}
