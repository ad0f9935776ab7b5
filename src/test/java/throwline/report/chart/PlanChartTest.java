package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import throwline.model.Model;
import throwline.report.Fixture;
import throwline.report.ReportFile;
import throwline.units.Display;
import throwline.units.Unit;
import throwline.words.Words;

/** The plan says what was typed in, keeps its texts apart and is to scale. */
class PlanChartTest {

    private final Model model = Fixture.orchard().comparison().model();

    @Test
    void saysEveryMeasureAndMarksWhatIsAssumed() {
        List<String> texts = texts(Display.metric(), Set.of("body.nose"));
        assertThat(texts)
                .contains("span 1840 mm", "arm 900 mm", "tail 600 mm", "185 mm", "235 mm", "300 mm")
                .contains("flaps 25 %: 75 to 460 mm", "ailerons 25 %: 470 to 880 mm")
                .anyMatch(t -> t.startsWith("nose ") && t.endsWith("(assumed)"))
                .anyMatch(t -> t.startsWith("balance, small: 84 mm"));
        assertThat(texts).noneMatch(t -> t.startsWith("length") && t.endsWith("(assumed)"));
    }

    @Test
    void speaksInInchesWhereAsked() {
        assertThat(texts(Display.metric().with(Unit.INCH), Set.of())).contains("span 72.44 in", "arm 35.43 in");
    }

    @Test
    void keepsItsTextsApartAndOnThePage() {
        byte[] svg = svg(Display.metric(), Set.of("body.nose", "body.length", "body.width"));
        Element root = PictureText.parse(svg).getDocumentElement();
        Rectangle2D page = new Rectangle2D.Double(
                0, 0, Double.parseDouble(root.getAttribute("width")), Double.parseDouble(root.getAttribute("height")));
        List<PictureText> texts = PictureText.of(svg);
        for (int i = 0; i < texts.size(); i++) {
            assertThat(page.contains(texts.get(i).room()))
                    .as("%s", texts.get(i))
                    .isTrue();
            for (int j = 0; j < i; j++) {
                assertThat(texts.get(i).room().intersects(texts.get(j).room()))
                        .as(texts.get(i) + " covers " + texts.get(j))
                        .isFalse();
            }
        }
    }

    @Test
    void isToScale() {
        Model drawn = model;
        Picture plan = new PlanChart(
                        drawn, Set.of(), new throwline.units.QuantityPrinter(Display.metric()), Words.load())
                .draw();
        double tailEnd = Math.max(
                drawn.body().length() - drawn.body().nose(),
                drawn.tail().arm() + drawn.tail().chord());
        double length = drawn.body().nose() + tailEnd;
        // The wing takes the width of the page less both margins; the drawing is as much higher as the body is long.
        double points = (Layout.WIDE.width() - 28 - 2 * 84) / drawn.wing().span() * length;
        assertThat(plan.height()).isCloseTo((int) Math.ceil(96 + 40 + 46 + points), within(1));
    }

    private List<String> texts(Display display, Set<String> assumed) {
        return PictureText.of(svg(display, assumed)).stream()
                .map(PictureText::text)
                .toList();
    }

    private byte[] svg(Display display, Set<String> assumed) {
        List<ReportFile> files = new Charts(Words.load()).plan(model, assumed, display, PictureFormats.PNG_AND_SVG);
        assertThat(files).extracting(ReportFile::name).containsExactly("plan.png", "plan.svg");
        return files.get(1).content();
    }
}
