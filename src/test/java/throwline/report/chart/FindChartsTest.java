package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import throwline.report.FindFixture;
import throwline.report.ReportFile;
import throwline.words.Words;

/** Curves of fixed results: what stands in them, and that no text covers another or leaves the page. */
class FindChartsTest {

    @Test
    void a_mix_curve_shows_its_points_in_degrees_and_per_cent_and_the_first_flight() {
        List<ReportFile> files = new FindCharts(Words.load()).draw(FindFixture.allFound(), PictureFormats.PNG_AND_SVG);
        assertThat(files.stream().map(ReportFile::name))
                .containsExactly("mix-curve.png", "mix-curve.svg", "roll-help.png", "roll-help.svg");
        String said = text(files.get(1));
        // 40, 60 and 85 per cent of 7 degrees, over 20 degrees of travel.
        assertThat(said).contains("2.8 deg, 14 %", "4.2 deg, 21 %", "6.0 deg, 30 %");
        assertThat(said).contains("expected", "to program", "12.0 m/s", "clean", "airbrake");
    }

    @Test
    void no_text_covers_another_or_leaves_the_page() {
        for (ReportFile file : new FindCharts(Words.load()).draw(FindFixture.allFound(), PictureFormats.PNG_AND_SVG)) {
            if (!file.name().endsWith(".svg")) {
                continue;
            }
            Element root = PictureText.parse(file.content()).getDocumentElement();
            Rectangle2D page = new Rectangle2D.Double(
                    0,
                    0,
                    Double.parseDouble(root.getAttribute("width")),
                    Double.parseDouble(root.getAttribute("height")));
            List<PictureText> texts = PictureText.of(file.content());
            for (int i = 0; i < texts.size(); i++) {
                assertThat(page.contains(texts.get(i).room()))
                        .as("" + texts.get(i))
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(texts.get(i).room().intersects(texts.get(j).room()))
                            .as(texts.get(i) + " covers " + texts.get(j))
                            .isFalse();
                }
            }
        }
    }

    private static String text(ReportFile file) {
        return PictureText.of(file.content()).stream().map(PictureText::text).collect(Collectors.joining(" "));
    }
}
