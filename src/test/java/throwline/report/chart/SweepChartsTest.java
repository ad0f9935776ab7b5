package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import throwline.input.ModelFile;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.model.SetUp;
import throwline.section.Airfoil;
import throwline.section.MeasuredSections;
import throwline.section.SurfaceState;
import throwline.study.FlowStudy;
import throwline.study.SectionFlow;
import throwline.study.SectionStudy;
import throwline.study.WingQuestion;
import throwline.study.WingStudy;
import throwline.study.WingSweep;
import throwline.words.Words;

/** Pictures of sections and of the bare wing: no text is cut or covered, nothing is a raster, nothing is fetched. */
class SweepChartsTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    @ParameterizedTest
    @ValueSource(strings = {"clark-y-b", "e214c", "flat-plate", "naca2415"})
    void sections(String airfoil) {
        for (double flap : new double[] {0, 40}) {
            assertDrawn(new SectionCharts(Words.load())
                    .pictures(new SectionStudy(new MeasuredSections())
                            .family(
                                    AIRFOILS.find(new AirfoilName(airfoil)).orElseThrow(),
                                    new SurfaceState(Math.toRadians(flap), 0.25, Hinge.TAPED),
                                    150_000)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"clark-y-b", "e214c", "naca0009", "mh45", "fx63-137"})
    void airAlongTheOutline(String name) {
        Airfoil airfoil = AIRFOILS.find(new AirfoilName(name)).orElseThrow();
        for (double flap : new double[] {-8, 0, 8}) {
            SurfaceState surface = new SurfaceState(Math.toRadians(flap), 0.25, Hinge.TAPED);
            List<SectionFlow> flows = new FlowStudy(new MeasuredSections()).flows(airfoil, surface, 200_000);
            assertThat(flows).isNotEmpty();
            assertDrawn(List.of(new FlowChart(name, "Re 200 000", flows, Words.load()).draw("section-air")));
        }
    }

    /** What was measured on another airfoil is never shown as measured points. */
    @Test
    void nothingLentIsCalledMeasured() {
        Airfoil own = AIRFOILS.find(new AirfoilName("clark-y")).orElseThrow();
        Airfoil lent = new NamedAirfoils(AIRFOILS, Path.of(""))
                .find(new AirfoilName("flat bottom 12 %"))
                .orElseThrow();
        assertThat(captions(own)).allMatch(line -> line.endsWith("Marks are measured points."));
        assertThat(captions(lent))
                .noneMatch(line -> line.contains("Marks"))
                .allMatch(line -> line.contains("another airfoil"));
    }

    private static List<String> captions(Airfoil airfoil) {
        return new SectionCharts(Words.load())
                        .pictures(
                                new SectionStudy(new MeasuredSections()).family(airfoil, SurfaceState.none(), 150_000))
                        .stream()
                        .flatMap(picture -> picture.caption().holdsFor().stream())
                        .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void wings(String example) {
        if (!(ModelFile.read(Path.of("examples", example + ".yaml"), AIRFOILS) instanceof ReadModel.Project project)) {
            throw new AssertionError(example);
        }
        for (SetUp setUp : project.model().setUps()) {
            for (List<Double> incidences : List.of(List.of(0.05), WingQuestion.angles(-0.1, 0.4, 0.1))) {
                WingSweep sweep = new WingStudy(new MeasuredSections())
                        .sweep(project.model(), AIRFOILS, WingQuestion.of(setUp, incidences, 12));
                List<Picture> pictures =
                        new WingCharts(Words.load()).pictures(project.model().name(), sweep);
                assertThat(pictures).hasSize(3);
                assertDrawn(pictures);
            }
        }
    }

    static void assertDrawn(List<Picture> pictures) {
        for (Picture picture : pictures) {
            byte[] svg = new Drawing(picture).svg();
            assertThat(new String(svg, StandardCharsets.UTF_8)
                            .replaceAll("http://www.w3.org/(2000/svg|1999/xlink)", ""))
                    .doesNotContain("<image")
                    .doesNotContain("http");
            Element root = PictureText.parse(svg).getDocumentElement();
            Rectangle2D page = new Rectangle2D.Double(0, 0, picture.width(), picture.height());
            assertThat(root.getAttribute("width")).isEqualTo(String.valueOf(picture.width()));
            List<PictureText> before = new ArrayList<>();
            for (PictureText text : PictureText.of(svg)) {
                assertThat(page.contains(text.room()))
                        .as(picture.name() + " cuts " + text)
                        .isTrue();
                for (PictureText other : before) {
                    assertThat(text.room().intersects(other.room()))
                            .as(picture.name() + ": " + text + " covers " + other)
                            .isFalse();
                }
                before.add(text);
            }
        }
    }
}
