package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.report.FlyFixture;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.FlyQuestion;
import throwline.study.FlyResult;
import throwline.study.FlyStudy;
import throwline.words.Words;

/** Pictures of one set-up in depth, landing and loop among them: no text is cut or covered. */
class FlyChartsTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    @ParameterizedTest
    @CsvSource({"orchard, 0", "orchard, 3", "ridgeline, 0", "ridgeline, 2", "saltmarsh, 3"})
    void pictures(String example, int setUp) {
        ReadModel.Project project =
                (ReadModel.Project) ModelFile.read(Path.of("examples", example + ".yaml"), AIRFOILS);
        Model model = project.model();
        FlyResult result = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(model, AIRFOILS, model.packs().get(0), model.setUps().get(setUp), FlyQuestion.open());
        var pictures = new FlyCharts(Words.load()).pictures(result);
        assertThat(pictures.stream().map(Picture::name)).contains("landing", "loop", "servo-load");
        assertThat(pictures.stream().map(Picture::name).anyMatch("surfaces-down"::equals))
                .isEqualTo(setUp > 0);
        SweepChartsTest.assertDrawn(pictures);
    }

    /** Surfaces on the move with curves that end early, two stalls close together and a mix of one's own. */
    @Test
    void fixedResults() {
        for (FlyResult result : List.of(FlyFixture.airbrake(), FlyFixture.slow())) {
            var pictures = new FlyCharts(Words.load()).pictures(result);
            assertThat(pictures.stream().map(Picture::name)).contains("surfaces-down", "surfaces-up");
            SweepChartsTest.assertDrawn(pictures);
        }
    }

    /** Names that would touch move apart around their middle and stay inside. */
    @Test
    void namesMoveApart() {
        assertThat(EndLabels.apart(new double[] {50, 50, 50, 120}, 20, 10, 190))
                .containsExactly(new double[] {30, 50, 70, 120}, within(1e-9));
        assertThat(EndLabels.apart(new double[] {12, 13}, 20, 10, 190))
                .containsExactly(new double[] {10, 30}, within(1e-9));
        assertThat(EndLabels.apart(new double[] {180, 189}, 20, 10, 190))
                .containsExactly(new double[] {170, 190}, within(1e-9));
        assertThat(EndLabels.apart(new double[] {40, 100, 105, 107}, 20, 10, 190))
                .containsExactly(new double[] {40, 84, 104, 124}, within(1e-9));
    }
}
