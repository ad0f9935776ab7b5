package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Field;
import throwline.model.Model;
import throwline.model.Wheels;
import throwline.report.Page;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.FlyQuestion;
import throwline.study.FlyResult;
import throwline.study.FlyStudy;
import throwline.units.Display;
import throwline.units.Unit;

/** What is said of one set-up, and when; the model is invented. */
class FlyWordsTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();
    private static final Model ORCHARD =
            ((ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS)).model();
    private static FlyResult clean;
    private static FlyResult lowered;

    private static FlyResult fly(int setUp, Optional<Wheels> wheels, double obstacle) {
        Field f = ORCHARD.field();
        Field field = new Field(f.ground(), f.length(), obstacle, 0, OptionalDouble.empty(), 0);
        Model model = new Model(
                ORCHARD.name(),
                ORCHARD.packs(),
                ORCHARD.wing(),
                ORCHARD.tail(),
                ORCHARD.body(),
                wheels,
                ORCHARD.propeller(),
                field,
                ORCHARD.setUps(),
                ORCHARD.sticks());
        return new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(model, AIRFOILS, model.packs().get(0), model.setUps().get(setUp), FlyQuestion.open());
    }

    @BeforeAll
    static void fly() {
        clean = fly(0, Optional.empty(), 0);
        lowered = fly(2, ORCHARD.wheels(), 6);
    }

    private static String text(FlyResult result, Display display) {
        return Answers.text(Answers.fly(result), Page.of(200, true, false, display));
    }

    /** The neutral point is not known to a tenth of a millimetre. */
    @Test
    void the_neutral_point_in_whole_five_millimetres() {
        Matcher metric = Pattern.compile("\\(about (\\d+) mm behind").matcher(text(clean, Display.metric()));
        assertThat(metric.find()).isTrue();
        assertThat(Integer.parseInt(metric.group(1)) % 5).isZero();
        assertThat(Math.abs(Integer.parseInt(metric.group(1))
                        - 1000 * clean.balance().orElseThrow().neutralPoint().orElseThrow()))
                .isLessThanOrEqualTo(2.5);
        assertThat(text(clean, Display.metric().with(Unit.INCH))).containsPattern("\\(about \\d(\\.[2468])? in behind");
    }

    @Test
    void a_model_without_wheels_slides() {
        assertThat(text(clean, Display.metric()).lines())
                .anyMatch(line -> line.strip().startsWith("slide "));
        assertThat(text(lowered, Display.metric()).lines())
                .anyMatch(line -> line.strip().startsWith("roll-out"));
        assertThat(text(lowered, Display.metric()).lines())
                .noneMatch(line -> line.strip().startsWith("slide "));
    }

    @Test
    void without_an_obstacle_landings_begin_at_different_heights() {
        String sentence = "Without an obstacle each is counted from where its own flare begins";
        assertThat(text(clean, Display.metric())).contains(sentence);
        assertThat(text(lowered, Display.metric())).doesNotContain(sentence);
    }

    /** Methods manual 4.5: no measured sections with flaps of 10 degrees and more at this size; clean ones there are. */
    @Test
    void what_nobody_measured_is_said_where_it_is_flown() {
        assertThat(text(clean, Display.metric())).doesNotContain("Nobody has measured");
        assertThat(text(lowered, Display.metric())).contains("Nobody has measured surfaces this far down");
    }

    @Test
    void bands_that_are_wider_than_those_of_a_comparison_say_why() {
        assertThat(text(clean, Display.metric())).contains("they may be a little wider than there");
    }

    @Test
    void the_wind_that_is_too_much_says_what_is_left() {
        assertThat(text(clean, Display.metric()))
                .contains("takes six tenths of the approach speed: less than four tenths");
    }

    /** Where both speeds read alike there is one thing to say. */
    @Test
    void gusts_that_read_alike_are_one_sentence() {
        for (FlyResult result : List.of(clean, lowered)) {
            Matcher two = Pattern.compile("A gust of (\\S+ \\S+) straight up stalls the wing; from (\\S+ \\S+) on")
                    .matcher(text(result, Display.metric()));
            if (two.find()) {
                assertThat(two.group(1)).isNotEqualTo(two.group(2));
            } else {
                assertThat(text(result, Display.metric())).contains("straight up stalls the wing. One of");
            }
        }
    }
}
