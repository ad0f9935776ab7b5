package throwline.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import throwline.model.SetUp;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.report.sheet.SheetDocument.Cells;
import throwline.report.sheet.SheetDocument.Kind;
import throwline.units.Display;
import throwline.words.Words;

/** What sheets are for: work on the bench, one page at the field, all batteries in the tray. */
class SheetUseTest {

    private static final Words WORDS = Words.load();
    private static final Page METRIC = Page.of(80, true, false, Display.metric());

    /** What stands at neutral is no work on the bench: each line moves something, and each number on the gauge counts. */
    @Test
    void each_line_of_the_bench_sheet_moves_something() {
        List<Cells> lines = SheetsTest.rows(
                        SheetsTest.documents(Fixture.orchard(), Size.Paper.A4).get(0))
                .stream()
                .filter(Cells.class::isInstance)
                .map(Cells.class::cast)
                .toList();
        assertThat(lines)
                .isNotEmpty()
                .allMatch(line -> line.cells().stream()
                        .anyMatch(cell -> cell.kind() == Kind.LARGE && Double.parseDouble(cell.text()) > 0));
    }

    /** One page holds six set-ups, at letters that can be read outdoors. */
    @Test
    void the_field_card_of_six_set_ups_is_one_page() throws IOException {
        for (CompareAnswer from : List.of(Fixture.orchard(), Fixture.crowded())) {
            SheetDocument card = SheetsTest.documents(from, Size.Paper.A4).get(1);
            assertThat(card.size().font()).isGreaterThanOrEqualTo(8);
            try (PDDocument pdf = Loader.loadPDF(PdfSheet.of(card).content())) {
                assertThat(pdf.getNumberOfPages()).isOne();
            }
        }
    }

    /** A switch that the file names stands where else there is a line to write on; both batteries are on the card. */
    @Test
    void switches_and_batteries() {
        CompareAnswer from = Fixture.orchard();
        SheetDocument pocket = SheetsTest.documents(from, Size.Paper.A4).get(2);
        String text = String.join("\n", SheetsTest.texts(pocket));
        from.comparison().model().packs().forEach(pack -> assertThat(text).contains("pack " + pack.name()));
        SheetFigures figures = new SheetFigures(METRIC, WORDS);
        assertThat(figures.switchBlank(new SetUp("a", Map.of(), 0, "A up"))).isEqualTo("switch:");
        assertThat(figures.switchBlank(new SetUp("a", Map.of(), 0))).isEqualTo("switch / position");
    }
}
