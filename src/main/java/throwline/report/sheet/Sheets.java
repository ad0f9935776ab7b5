package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.data.SheetCsv;
import throwline.report.document.Figures;
import throwline.report.html.PageView;
import throwline.report.html.Templates;
import throwline.words.Words;

/** All sheets of a model: for the bench, the field and the transmitter's tray, and their numbers for a spreadsheet. */
public final class Sheets {

    private final Figures figures;
    private final Size.Paper paper;

    /**
     * Sheets with these words.
     *
     * @param page gives the units
     * @param words the sentences
     * @param paper they are printed on
     */
    public Sheets(Page page, Words words, Size.Paper paper) {
        figures = new Figures(page.onPaper(), words);
        this.paper = paper;
    }

    /** What stands on them. */
    List<Sheet> sheets(SheetAnswer answer) {
        Changes changes = new Changes(answer.earlier(), figures);
        return List.of(
                new BenchSheet(answer, changes).sheet(paper),
                new FieldCard(answer, changes).sheet(paper),
                new PocketCard(answer).sheet(paper));
    }

    /** The files; the sheets are drawn beside each other. */
    public List<ReportFile> files(SheetAnswer answer) {
        Templates templates = new Templates();
        List<ReportFile> files = new ArrayList<>(sheets(answer).parallelStream()
                .flatMap(sheet -> Stream.of(PdfSheet.of(sheet, figures), page(sheet, templates)))
                .toList());
        String csv = SheetCsv.write(answer.model().name(), answer.pack().pack().name(), answer.numbers());
        files.add(ReportFile.of("throws.csv", csv));
        return files;
    }

    private ReportFile page(Sheet sheet, Templates templates) {
        PageView view = new PageView(sheet.document(), figures);
        return ReportFile.of(sheet.name() + ".html", templates.fill("sheet.jte", Map.of("sheet", sheet, "view", view)));
    }
}
