package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Wing;

/** The examples are aeroplanes that could fly. Bounds are common practice, no source. */
class ExamplesTest {

    /** Wing loading in g/dm^2: trainer 40 to 60, sport 55 to 80, thermal glider 25 to 40. */
    @ParameterizedTest
    @CsvSource({"orchard, 1.84, 55, 80", "ridgeline, 2.6, 25, 40", "saltmarsh, 1.3, 55, 80"})
    void haveUsualProportions(String name, double span, double leastLoading, double mostLoading) {
        Model model = read(name);
        Wing wing = model.wing();
        double meanChord = wing.meanAerodynamicChord();
        double leadingEdge = meanLeadingEdge(wing);
        double lever = model.tail().arm() + model.tail().chord() / 4 - leadingEdge - meanChord / 4;
        assertThat(wing.span()).isBetween(span - 0.01, span + 0.01);
        assertThat(model.tail().area() * lever / (wing.area() * meanChord)).isBetween(0.45, 0.65);
        assertThat(model.packs()).hasSize(2);
        for (Pack pack : model.packs()) {
            assertThat((pack.balance() - leadingEdge) / meanChord).isBetween(0.25, 0.33);
            assertThat(10 * pack.mass() / wing.area()).isBetween(leastLoading, mostLoading);
        }
    }

    @ParameterizedTest
    @CsvSource({"orchard", "ridgeline", "saltmarsh"})
    void haveUsualSetUps(String name) {
        Model model = read(name);
        assertThat(model.setUps())
                .extracting(SetUp::name)
                .containsExactly("clean", "take-off flap", "landing flap", "airbrake");
        assertThat(model.sticks()).anyMatch(Stick.Roll.class::isInstance).anyMatch(Stick.Pull.class::isInstance);
        SetUp airbrake = model.setUps().get(3);
        Surface ailerons = model.wing().surfaces().get(1);
        assertThat(-airbrake.deflection("ailerons")).isBetween(Math.toRadians(8), ailerons.travelUp() / 2);
    }

    private static Model read(String name) {
        ReadModel read = ModelFile.read(Path.of("examples", name + ".yaml"), new FolderNames());
        assertThat(read).isInstanceOf(ReadModel.Project.class);
        return ((ReadModel.Project) read).model();
    }

    /** Leading edge of the mean chord behind the leading edge at the middle, m, by the midpoint rule. */
    private static double meanLeadingEdge(Wing wing) {
        int strips = 2000;
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            double y = (i + 0.5) / strips * wing.semiSpan();
            sum += wing.leadingEdgeAt(y) * wing.chordAt(y) * wing.semiSpan() / strips;
        }
        return 2 * sum / wing.area();
    }
}
