package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.report.ReportFile;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.ComparisonStudy;
import throwline.study.LearnStudy;
import throwline.study.Learnt;
import throwline.words.Words;

/** Charts of the invented season: every one is drawn, no text covers another or leaves the page. */
class LearntChartsTest {

    private static List<ReportFile> svgs() {
        PackedAirfoils airfoils = new PackedAirfoils();
        Path file = Path.of("examples/season/orchard.yaml");
        Model model = ((ReadModel.Project) ModelFile.read(file, airfoils)).model();
        ReadFlights.Notes notes =
                (ReadFlights.Notes) FlightsFile.read(FlightsFile.kept(file).get(0), model);
        Learnt learnt = new LearnStudy(new MeasuredSections(), Bands.load())
                .learn(
                        new ComparisonStudy(new MeasuredSections(), Bands.load())
                                .compare(model, airfoils, model.packs().subList(0, 1)),
                        airfoils,
                        notes.notes(),
                        notes.logs())
                .orElseThrow()
                .learnt();
        assertThat(learnt.measured()).anyMatch(Learnt.Measured::wrong).anyMatch(Learnt.Measured::glided);
        return new LearntCharts(Words.load())
                .draw(learnt, PictureFormats.PNG_AND_SVG).stream()
                        .filter(f -> f.name().endsWith(".svg"))
                        .toList();
    }

    @Test
    void no_text_covers_another_or_leaves_the_page() {
        List<ReportFile> files = svgs();
        assertThat(files.stream().map(ReportFile::name))
                .containsExactly(
                        "learnt-stall.svg",
                        "learnt-descent.svg",
                        "learnt-elevator.svg",
                        "learnt-roll.svg",
                        "learnt-sink.svg",
                        "log-2026-10-18-csv.svg");
        for (ReportFile file : files) {
            Element root = PictureText.parse(file.content()).getDocumentElement();
            Rectangle2D page = new Rectangle2D.Double(
                    0,
                    0,
                    Double.parseDouble(root.getAttribute("width")),
                    Double.parseDouble(root.getAttribute("height")));
            List<PictureText> texts = PictureText.of(file.content());
            assertThat(texts.stream().map(PictureText::text).collect(Collectors.joining(" ")))
                    .contains("An estimate for planning");
            for (int i = 0; i < texts.size(); i++) {
                assertThat(page.contains(texts.get(i).room()))
                        .as(file.name() + " cuts " + texts.get(i))
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(texts.get(i).room().intersects(texts.get(j).room()))
                            .as(file.name() + ": " + texts.get(i) + " covers " + texts.get(j))
                            .isFalse();
                }
            }
        }
    }
}
