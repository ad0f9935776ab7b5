package throwline.report.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    /** The files. */
    public List<ReportFile> files(SheetAnswer answer) {
        List<ReportFile> files = new ArrayList<>();
        Templates templates = new Templates();
        for (SheetDocument document : documents(answer)) {
            files.add(PdfSheet.of(document));
            String html = templates.fill("sheet.jte", Map.of("sheet", document));
            files.add(new ReportFile(document.name() + ".html", html.getBytes(StandardCharsets.UTF_8)));
        }
        String csv = SheetCsv.write(answer.model().name(), answer.pack().pack().name(), answer.numbers());
        files.add(new ReportFile("throws.csv", csv.getBytes(StandardCharsets.UTF_8)));
        return files;
    }
}
