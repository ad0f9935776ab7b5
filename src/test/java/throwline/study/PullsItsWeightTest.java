package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static throwline.study.Examples.AIRFOILS;
import static throwline.study.Examples.value;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.input.ModelFile;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.section.MeasuredSections;
import throwline.sizing.PoweredWants;
import throwline.words.Message;

/** A motor that pulls more than the weight, and one whose kv, cells and propeller do not fit each other. */
class PullsItsWeightTest {

    private static Model withMotor(Path folder, String motor) throws IOException {
        String text = Files.readString(Path.of("examples", "orchard.yaml"));
        assertThat(text).contains("motor: {kv: 500}");
        Path file = folder.resolve("changed.yaml");
        Files.writeString(file, text.replace("motor: {kv: 500}", motor));
        return ((ReadModel.Project) ModelFile.read(file, AIRFOILS)).model();
    }

    private static List<String> codes(List<Message> notes) {
        return notes.stream().map(Message::code).toList();
    }

    /**
     * With T above W there is a flight straight up, of a speed below that of the dive straight down: T falls with the speed and
     * drag alone is the weight there (mechanics); no climb is told nearer to the stall than 1.2 times it. Nothing is steeper than straight up, going around loses less than the way
     * down of the first second (closed form), and there is no slowest flight.
     */
    @Test
    void hangsOnItsPropeller(@TempDir Path folder) throws IOException {
        Model model = withMotor(folder, "motor: {kv: 800}\nbench: {thrust: 4.5 kg}");
        for (SetUpResult result :
                Examples.compare(model, new MeasuredSections()).packs().get(0).setUps()) {
            assertThat(result.isNoted("note.pulls-its-weight")).isTrue();
            Headline.Known around = (Headline.Known) result.number(FlightQuantity.GO_AROUND);
            assertThat(around.high()).isLessThanOrEqualTo(Math.PI / 2);
            double speed = value(result.number(FlightQuantity.APPROACH_SPEED));
            double sink = speed * Math.sin(value(result.number(FlightQuantity.DESCENT_ANGLE)));
            assertThat(value(result.number(FlightQuantity.GO_AROUND_LOSS))).isBetween(0.5 * sink, 1.5 * sink);
            double climb = value(result.number(FlightQuantity.CLIMB_SPEED));
            assertThat(climb)
                    .isBetween(
                            1.199 * value(result.number(FlightQuantity.STALL_SPEED)),
                            value(result.number(FlightQuantity.NOSE_DOWN_SPEED)));
            assertThat(value(result.number(FlightQuantity.CLIMB_RATE))).isBetween(0.5 * speed, climb);
            assertThat(value(result.number(FlightQuantity.TAKE_OFF_DISTANCE)))
                    .isGreaterThan(value(result.number(FlightQuantity.TAKE_OFF_RUN)));
            assertThat(result.number(FlightQuantity.SLOWEST_FULL_THROTTLE))
                    .isEqualTo(new Headline.Unknown("why.hangs"));
        }
    }

    /** A propeller under a belly on the grass: no run is told, and none is looked for. */
    @Test
    void withoutWheelsItIsLaunchedByHand(@TempDir Path folder) throws IOException {
        Model model = withMotor(folder, "motor: {kv: 500}");
        String text = Files.readString(folder.resolve("changed.yaml"));
        Path file = Files.writeString(folder.resolve("belly.yaml"), text.replaceAll("(?m)^wheels:.*$", "wheels: none"));
        Model belly = ((ReadModel.Project) ModelFile.read(file, AIRFOILS)).model();
        SetUpResult clean = Examples.compare(belly, new MeasuredSections())
                .packs()
                .get(0)
                .setUps()
                .get(0);
        assertThat(clean.number(FlightQuantity.TAKE_OFF_RUN)).isEqualTo(new Headline.Unknown("why.hand-launch"));
        assertThat(clean.number(FlightQuantity.CLIMB_RATE)).isInstanceOf(Headline.Known.class);
        assertThat(model.wheels()).isPresent();
        assertThat(FindRefusal.of(belly, takeOff(belly)).map(Message::code)).contains("note.find.no-wheels");
        assertThat(FindRefusal.of(model, takeOff(model))).isEmpty();
    }

    private static FindQuestion takeOff(Model model) {
        return new FindQuestion(
                model.packs().get(0),
                "found",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new PoweredWants(Optional.of(20.0), Optional.empty()));
    }

    /** The example that fits says nothing; what cannot be is told with its number in check and in every answer. */
    @ParameterizedTest
    @CsvSource({
        "kv: 500, ''",
        "kv: 1500, note.unusual.load",
        "'kv: 500, no-load current: 0.1 A', note.unusual.motor-load",
        "kv: 110, note.unusual.pull"
    })
    void loadsThatCannotBe(String motor, String note, @TempDir Path folder) throws IOException {
        Model model = withMotor(folder, "motor: {" + motor + "}");
        List<String> loads =
                List.of("note.unusual.load", "note.unusual.motor-load", "note.unusual.tips", "note.unusual.pull");
        List<String> expected = note.isEmpty() ? List.of() : List.of(note);
        assertThat(codes(ModelReview.of(model)).stream().filter(loads::contains))
                .containsExactlyElementsOf(expected);
        assertThat(codes(Examples.compare(model, new MeasuredSections()).warnings()).stream()
                        .filter(loads::contains))
                .containsExactlyElementsOf(expected);
    }

    /** Blade tips at the speed of sound: 14 in at 20000 a minute make 372 m/s (pi n D). */
    @Test
    void tipsNearTheSpeedOfSound(@TempDir Path folder) throws IOException {
        Model model = withMotor(folder, "motor: {kv: 2000}\nbench: {rpm: 20000, current: 90 A}");
        Message tips = ModelReview.of(model).stream()
                .filter(m -> m.code().equals("note.unusual.tips"))
                .findFirst()
                .orElseThrow();
        assertThat(tips.arguments().get(2).toString()).contains("37");
    }
}
