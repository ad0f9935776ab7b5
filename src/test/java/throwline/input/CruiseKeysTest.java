package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.model.Assumption;
import throwline.model.Tail;
import throwline.words.Message;

/** When the elevator in cruise counts, and what is wrong with it. */
class CruiseKeysTest {

    private static ReadModel read(String elevator, String tail, String pack, String motor) {
        return TestFile.read("""
                throwline: 1
                name: Plover
                packs: {only: {weight: 2 kg, balance: 70 mm%s}}
                wing:
                  position: high
                  sections:
                    - {at: 0 mm, chord: 250 mm, airfoil: clark-y}
                    - {at: 800 mm, chord: 250 mm}
                tail: {span: 500 mm, chord: 150 mm, arm: 700 mm%s, elevator: {chord: 40 %%, travel: 20 deg, %s}}
                propeller: {diameter: 300 mm}
                %s
                set-ups: {clean: {}, other: {elevator: 1 deg down}}
                """.formatted(pack, tail, elevator, motor), "plover.yaml");
    }

    private static ReadModel.Project project(String elevator, String tail, String pack, String motor) {
        ReadModel read = read(elevator, tail, pack, motor);
        assertThat(read).as(read.toString()).isInstanceOf(ReadModel.Project.class);
        return (ReadModel.Project) read;
    }

    private static void counts(ReadModel.Project project, boolean does) {
        Tail tail = project.model().tail();
        assertThat(tail.cruise().isPresent()).isEqualTo(does);
        assertThat(project.assumed().stream().map(Assumption::path).anyMatch("tail.incidence"::equals))
                .isEqualTo(!does && tail.incidenceDoubt() > 0);
    }

    @Test
    void itCountsWithASpeedOrAMotor() {
        ReadModel.Project speed = project("cruise: 2 deg up, cruise speed: 15 m/s", "", "", "");
        counts(speed, true);
        assertThat(speed.model().tail().cruise().orElseThrow().elevator()).isEqualTo(-Math.toRadians(2));
        assertThat(speed.model().tail().incidenceDoubt()).isEqualTo(Math.toRadians(2));
        ReadModel.Project motor = project("cruise: 1 mm down", "", ", cells: 3", "motor: {kv: 800}");
        counts(motor, true);
        // The chord of the straight distance: 2 asin(1 / 120).
        assertThat(motor.model().tail().cruise().orElseThrow().elevator()).isEqualTo(2 * Math.asin(1.0 / 120));
    }

    @Test
    void whereItDoesNotCountItSaysSo() {
        ReadModel.Project bare = project("cruise: 1 mm down", "", "", "");
        counts(bare, false);
        assertThat(bare.notes()).extracting(Message::code).containsExactly("note.cruise-trim.no-speed");
        ReadModel.Project noCells = project("cruise: 1 mm down", "", "", "motor: {kv: 800}");
        assertThat(noCells.notes()).extracting(Message::code).containsExactly("note.cruise-trim.no-speed");
        ReadModel.Project given = project("cruise: 1 mm down, cruise speed: 15 m/s", ", incidence: -1 deg", "", "");
        counts(given, false);
        assertThat(given.model().tail().incidence()).isEqualTo(Math.toRadians(-1));
        assertThat(given.notes()).extracting(Message::code).containsExactly("note.cruise-trim.given");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    cruise: 1 mm | does not say which way
                    cruise: -1 mm | does not say the direction in words
                    cruise: 25 deg down | 20 deg down
                    cruise: 90 mm down | 45 deg down
                    cruise: level | is not a throw
                    cruise speed: 15 m/s | without the elevator
                    'cruise: 1 mm up, cruise speed: 15' | unit
                    'cruise: 1 mm up, cruise speed: 1 m/s' | 2 m/s
                    """)
    void whatIsWrongIsOneSentence(String keys, String said) {
        ReadModel read = read(keys, "", "", "");
        assertThat(read).isInstanceOf(ReadModel.Faulty.class);
        List<Problem> problems = ((ReadModel.Faulty) read).problems();
        assertThat(problems)
                .singleElement()
                .satisfies(p -> assertThat(p.say(throwline.words.Words.load())).contains("tail.elevator.cruise", said));
    }
}
