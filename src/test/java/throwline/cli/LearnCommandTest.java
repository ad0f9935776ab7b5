package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command at the field: what is asked, kept and shown, and what is refused with nothing written. */
class LearnCommandTest {

    private static final Path SEASON = Path.of("examples/season");

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void copies() throws IOException {
        for (String name : List.of("orchard.yaml", "2026-10-18.csv")) {
            Files.copy(SEASON.resolve(name), folder.resolve(name));
        }
    }

    private Path model() {
        return folder.resolve("orchard.yaml");
    }

    private Path log() {
        return folder.resolve("2026-10-18.csv");
    }

    private Path notes() {
        return folder.resolve("orchard-flights.yaml");
    }

    private static ProgramRun typed(String input, String... arguments) {
        return ProgramRun.typed(input, Map.of("COLUMNS", "100"), arguments);
    }

    @Test
    void keeps_a_log_that_was_confirmed_and_learns_from_it() {
        ProgramRun run =
                typed("2026-10-18\n2\n11 C\nclean\n3\nyes\n", "learn", model().toString(), "--log", log().toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.out())
                .contains("ground speed: column \"ground speed m/s\" in m/s")
                .contains("in deg (assumed: the header does not say it)")
                .contains("Wind by circles")
                .contains("glides");
        assertThat(notes())
                .content()
                .contains("column: \"height baro m\", unit: m")
                .contains("\"1 = landing flap\"");
    }

    @Test
    void writes_nothing_without_a_yes() {
        ProgramRun no = typed("\nsmall\n\nclean\n3\nno\n", "learn", model().toString(), "--log", log().toString());
        assertThat(no.exitCode()).isZero();
        assertThat(no.out()).contains("Nothing was written.");
        ProgramRun script = ProgramRun.of("learn", model().toString(), "--log", log().toString());
        assertThat(script.exitCode()).isZero();
        assertThat(script.out()).contains("positions 0, 1").contains("Nothing was written");
        assertThat(notes()).doesNotExist();
    }

    /** A log without a switch: times are offered from what was found, "back" goes back, and the file has them. */
    @Test
    void asks_which_set_up_was_flown_when() throws IOException {
        Path plain = withoutSwitch();
        String answers = String.join(
                "\n",
                List.of(
                        "2026-10-18",
                        "2",
                        "11 C",
                        "clean",
                        "1",
                        "back",
                        "piece 1",
                        "piece 2",
                        "landing flap",
                        "piece 1",
                        "back",
                        "900 s",
                        "100 s",
                        "1000 s",
                        "",
                        "yes",
                        ""));
        ProgramRun run = typed(answers, "learn", model().toString(), "--log", plain.toString());
        assertThat(run.exitCode()).as(run.out() + run.err()).isZero();
        assertThat(run.out())
                .contains("piece 1: ")
                .contains("From when was clean flown?")
                .contains("\"100 s\" is not after 900 s. Write a later time.")
                .contains("glides");
        assertThat(notes())
                .content()
                .contains("set-ups:\n      clean: {}\n      landing flap: {flaps: 35 deg down}")
                .containsPattern("- \\{from: [0-9]+ s, to: [0-9]+ s, set-up: clean}")
                .contains("- {from: 900 s, to: 1000 s, set-up: landing flap}");
    }

    private Path withoutSwitch() throws IOException {
        String text = Files.readString(log()).replace(",switch,", ",other,");
        Files.delete(log());
        return Files.writeString(folder.resolve("plain.csv"), text);
    }

    /** The end of input loses no answer and leaves no half-written file; "no" drops what was kept. */
    @Test
    void keeps_answers_of_an_interview_that_was_broken_off() throws IOException {
        ProgramRun stopped = typed("2026-10-04\nsmall\n\n18 C\n2 m/s\n\nclean\n31 km/h\n", "learn", model().toString());
        assertThat(stopped.exitCode()).isEqualTo(2);
        assertThat(stopped.err()).contains("your answers are kept");
        assertThat(notes()).doesNotExist();
        ProgramRun on = typed("\ninto the wind\n\n\n\n\n\n\n\n", "learn", model().toString());
        assertThat(on.exitCode()).as(on.out() + on.err()).isZero();
        assertThat(on.out()).contains("8 answers from an earlier time about a flight (2026-10-04)");
        assertThat(notes())
                .content()
                .contains("ground speed: 31 km/h, going: into the wind")
                .contains("18 C");
        try (var files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder("orchard.yaml", "orchard-flights.yaml", "2026-10-18.csv");
        }
        ProgramRun log = typed("2026-10-18\nlarge\n", "learn", model().toString(), "--log", log().toString());
        assertThat(log.err()).contains("your answers are kept");
        ProgramRun again =
                typed("\n11 C\nclean\nlanding flap\nno\n", "learn", model().toString(), "--log", log().toString());
        assertThat(again.out()).contains("pack: large").contains("Nothing was written.");
        assertThat(folder.resolve(".2026-10-18.csv.answers")).doesNotExist();
    }

    @Test
    void refuses_a_log_elsewhere_or_of_letters() throws IOException {
        Path elsewhere = SEASON.resolve("2026-10-18.csv");
        ProgramRun run = ProgramRun.of("learn", model().toString(), "--log", elsewhere.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("beside the notes first");
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        ProgramRun nothing = ProgramRun.of("learn", model().toString(), "--log", empty.toString());
        assertThat(nothing.exitCode()).isEqualTo(2);
        assertThat(nothing.err()).contains("empty.csv");
    }

    /** A trim without its way is asked again at once: nobody types sixty answers twice. */
    @Test
    void asks_again_for_a_trim_without_its_way() {
        String answers = "\nsmall\n\n\n\nclean\n\n\n3 mm\n900 mm up\n3 mm up\n\n\n\n\n";
        ProgramRun run = typed(answers, "learn", model().toString());
        assertThat(run.out()).contains("Say which way: 3 mm up or 3 mm down.").contains("cannot go so far");
        assertThat(run.exitCode()).isZero();
        assertThat(notes()).content().contains("trimmed by: 3 mm up");
    }

    /** Where the file cannot be added to, what was told is shown, so that it can be copied. */
    @Test
    void never_loses_what_was_told() throws IOException {
        String odd = "throwline flights: 1\nflights:\n  - {date: 2026-09-01, pack: large}\nmodel: orchard.yaml\n";
        Files.writeString(notes(), odd);
        ProgramRun run = typed("2026-10-04\nsmall\n3.1 kg\n\n\nthat was all\n", "learn", model().toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("- date: 2026-10-04").contains("weight: 3.1 kg");
        assertThat(notes()).hasContent(odd);
    }

    @Test
    void names_the_line_of_a_broken_log() throws IOException {
        Files.copy(SEASON.resolve("orchard-flights.yaml"), notes());
        String text = Files.readString(log());
        Files.writeString(log(), text.replace("\n0.20,", "\n-5,"));
        ProgramRun run = ProgramRun.of("compare", model().toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("2026-10-18.csv:4:1").contains("runs backwards");
    }

    /** The same flights in the model file say the same as beside it; in both places they would count twice. */
    @Test
    void reads_flights_inside_the_model_file() throws IOException {
        Files.copy(SEASON.resolve("orchard-flights.yaml"), notes());
        String[] compare = {"compare", model().toString(), "--pack", "small", "--json"};
        ProgramRun beside = ProgramRun.of(compare);
        String flights = Files.readString(notes());
        Files.writeString(
                model(), Files.readString(model()) + "\n" + flights.substring(flights.indexOf("flights:\n", 200)));
        ProgramRun both = ProgramRun.of(compare);
        assertThat(both.exitCode()).isEqualTo(2);
        assertThat(both.err()).contains("stand in two files");
        Files.delete(notes());
        ProgramRun inside = ProgramRun.of(compare);
        assertThat(inside.exitCode()).isEqualTo(beside.exitCode());
        assertThat(inside.out()).contains("\"measurements\"").isEqualTo(beside.out());
        Files.writeString(model(), Files.readString(model()).replace("going: both ways, times: 2", "times: 2"));
        ProgramRun wrong = ProgramRun.of(compare);
        assertThat(wrong.exitCode()).isEqualTo(2);
        assertThat(wrong.err()).contains("orchard.yaml:").contains("means nothing without its way");
    }
}
