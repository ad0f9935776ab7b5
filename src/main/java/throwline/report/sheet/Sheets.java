package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.data.SheetCsv;
import throwline.report.html.Templates;
import throwline.words.Words;

/** All sheets of a model: for the bench, the field and the transmitter's tray, and their numbers for a spreadsheet. */
public final class Sheets {

    private final Page page;
    private final Words words;
    private final Size.Paper paper;

    /**
     * Sheets with these words.
     *
     * @param page gives the units
     * @param words the sentences
     * @param paper they are printed on
     */
    public Sheets(Page page, Words words, Size.Paper paper) {
        this.page = page;
        this.words = words;
        this.paper = paper;
    }

    /** What stands on them. */
    List<SheetDocument> documents(SheetAnswer answer) {
        return List.of(
                new BenchSheet(answer, page, words).document(paper),
                new FieldCard(answer, page, words).document(paper),
                new PocketCard(answer, page, words).document(paper));
    }

    /** The files; the sheets are drawn beside each other. */
    public List<ReportFile> files(SheetAnswer answer) {
        Templates templates = new Templates();
        List<ReportFile> files = new ArrayList<>(documents(answer).parallelStream()
                .flatMap(document -> Stream.of(PdfSheet.of(document), page(document, templates)))
                .toList());
        String csv = SheetCsv.write(answer.model().name(), answer.pack().pack().name(), answer.numbers());
        files.add(ReportFile.of("throws.csv", csv));
        return files;
    }

    private static ReportFile page(SheetDocument document, Templates templates) {
        return ReportFile.of(document.name() + ".html", templates.fill("sheet.jte", Map.of("sheet", document)));
    }
}
