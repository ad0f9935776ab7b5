package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
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
    @CsvSource({"orchard, 0", "ridgeline, 0", "saltmarsh, 3"})
    void pictures(String example, int setUp) {
        ReadModel.Project project =
                (ReadModel.Project) ModelFile.read(Path.of("examples", example + ".yaml"), AIRFOILS);
        Model model = project.model();
        FlyResult result = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(model, AIRFOILS, model.packs().get(0), model.setUps().get(setUp), FlyQuestion.open());
        var pictures = new FlyCharts(Words.load()).pictures(result);
        assertThat(pictures.stream().map(Picture::name)).contains("landing", "loop", "servo-load");
        SweepChartsTest.assertDrawn(pictures);
    }
}
