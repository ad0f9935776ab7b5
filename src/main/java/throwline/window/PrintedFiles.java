package throwline.window;

import java.util.List;
import java.util.Optional;
import throwline.report.ReportFile;
import throwline.report.chart.Charts;
import throwline.report.chart.PictureFormats;
import throwline.report.html.PageView;
import throwline.report.sheet.SheetAnswer;
import throwline.report.sheet.Sheets;
import throwline.report.sheet.Size;
import throwline.section.SectionAerodynamics;
import throwline.study.Comparison.PackResult;
import throwline.words.Words;

/**
 * Files to print and to keep, made of what is worked out.
 *
 * @param task what is worked out for them
 * @param words the sentences
 */
record PrintedFiles(Compared.Task task, Words words) {

    /**
     * The files of one kind.
     *
     * @param what sheets, page or charts
     * @param paper of the sheets
     * @param sections makes section curves
     */
    List<ReportFile> of(String what, Size.Paper paper, SectionAerodynamics sections) {
        Compared compared = task.run(sections);
        List<PackResult> packs = compared.comparison().packs();
        return switch (what) {
            case "sheets" ->
                new Sheets(compared.page(), words, paper)
                        .files(new SheetAnswer(
                                compared.comparison().model(),
                                packs.get(0),
                                packs.subList(1, packs.size()),
                                Optional.empty(),
                                task.rules(sections),
                                compared.learnt()));
            case "page" ->
                List.of(ReportFile.of("set-ups.html", PageView.html(compared.document(), compared.page(), words)));
            case "charts" ->
                new Charts(words, compared.page().besideSpeed())
                        .draw(compared.comparison(), packs.get(0), PictureFormats.PNG_AND_SVG);
            default -> throw new IllegalArgumentException(what);
        };
    }
}
