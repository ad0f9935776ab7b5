package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.ReportFile;
import throwline.study.Comparison.PackResult;
import throwline.units.Unit;
import throwline.words.Words;

/** Pictures of fixed results: what is in them, and that no text covers another or leaves the page. */
class ChartsTest {

    private static final List<String> NAMES = List.of(
            "descent",
            "speeds",
            "elevator",
            "steepness",
            "load",
            "drag-lift",
            "landing",
            "take-off",
            "going-around",
            "thrust");

    static List<CompareAnswer> answers() {
        return List.of(Fixture.orchard(), Fixture.crowded(), Fixture.nothingFound());
    }

    @ParameterizedTest
    @MethodSource("answers")
    void an_svg_stands_alone_with_text_as_text_and_names_every_set_up(CompareAnswer answer) {
        for (ReportFile file : svgs(answer)) {
            String svg = new String(file.content(), StandardCharsets.UTF_8);
            assertThat(svg).as(file.name()).doesNotContain("<!DOCTYPE").doesNotContain("<image");
            assertThat(svg.replace("http://www.w3.org/2000/svg", "").replace("http://www.w3.org/1999/xlink", ""))
                    .as("nothing to be fetched")
                    .doesNotContain("http");
            Element root = PictureText.parse(file.content()).getDocumentElement();
            assertThat(root.getElementsByTagNameNS("*", "title").getLength()).isEqualTo(1);
            String said = PictureText.of(file.content()).stream()
                    .map(PictureText::text)
                    .collect(Collectors.joining(" "));
            boolean drawn =
                    !answer.equals(Fixture.nothingFound()) || !file.name().matches("(steep|drag).*");
            answer.comparison().model().setUps().stream()
                    .filter(setUp -> drawn)
                    .forEach(setUp -> assertThat(said).as(file.name()).contains(setUp.name()));
            assertThat(said).contains(answer.comparison().model().name()).contains("An estimate for planning");
        }
    }

    @ParameterizedTest
    @MethodSource("answers")
    void no_text_covers_another_or_leaves_the_page(CompareAnswer answer) {
        for (ReportFile file : svgs(answer)) {
            Element root = PictureText.parse(file.content()).getDocumentElement();
            Rectangle2D page = new Rectangle2D.Double(
                    0,
                    0,
                    Double.parseDouble(root.getAttribute("width")),
                    Double.parseDouble(root.getAttribute("height")));
            List<PictureText> texts = PictureText.of(file.content());
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

    @Test
    void every_chart_is_given_as_png_of_twice_the_points_and_as_svg_where_asked() throws IOException {
        List<ReportFile> files = drawn(PictureFormats.PNG_AND_SVG);
        assertThat(files.stream().map(ReportFile::name))
                .containsExactlyElementsOf(NAMES.stream()
                        .flatMap(name -> List.of(name + ".png", name + ".svg").stream())
                        .toList());
        for (int i = 0; i < files.size(); i += 2) {
            BufferedImage image =
                    ImageIO.read(new ByteArrayInputStream(files.get(i).content()));
            Element root = PictureText.parse(files.get(i + 1).content()).getDocumentElement();
            assertThat(image.getWidth()).isEqualTo(2 * Integer.parseInt(root.getAttribute("width")));
            assertThat(image.getHeight()).isEqualTo(2 * Integer.parseInt(root.getAttribute("height")));
        }
    }

    @Test
    void pixels_alone_are_the_same_pixels_in_the_same_order_every_time() {
        List<ReportFile> both = drawn(PictureFormats.PNG_AND_SVG);
        for (int run = 0; run < 2; run++) {
            List<ReportFile> alone = drawn(PictureFormats.PNG);
            assertThat(alone.stream().map(ReportFile::name))
                    .containsExactlyElementsOf(
                            NAMES.stream().map(name -> name + ".png").toList());
            for (int i = 0; i < alone.size(); i++) {
                assertThat(alone.get(i).content()).isEqualTo(both.get(2 * i).content());
            }
        }
    }

    private static List<ReportFile> drawn(PictureFormats formats) {
        CompareAnswer answer = Fixture.orchard();
        return new Charts(Words.load(), Unit.KILOMETRE_PER_HOUR)
                .draw(answer.comparison(), answer.comparison().packs().get(0), formats);
    }

    private static List<ReportFile> svgs(CompareAnswer answer) {
        PackResult pack = answer.comparison().packs().get(0);
        return new Charts(Words.load(), Unit.KILOMETRE_PER_HOUR)
                .pictures(answer.comparison(), pack).stream()
                        .map(Supplier::get)
                        .map(picture -> new ReportFile(picture.name() + ".svg", new Drawing(picture).svg()))
                        .toList();
    }
}
