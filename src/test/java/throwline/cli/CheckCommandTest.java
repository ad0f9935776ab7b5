package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void the_examples_are_usual_models(String name) {
        ProgramRun run = ProgramRun.of("check", "examples/" + name + ".yaml");
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("assumed values");
        if (name.equals("orchard")) {
            assertThat(run.out().replaceAll("\\s+", " "))
                    .containsOnlyOnce("The stick \"")
                    .contains("The stick \"with flaps\" asks \"flaps\" for up to 8 deg more up than its travel allows"
                            + " (in clean): there it stops");
        } else {
            assertThat(run.out()).contains("Nothing is unusual");
        }
    }

    @Test
    void draws_only_where_asked() {
        Path out = folder.resolve("drawing");
        ProgramRun run = ProgramRun.of("check", "examples/orchard.yaml", "--out", out.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(out.resolve("plan.png")).isNotEmptyFile();
        assertThat(out.resolve("plan.png")).isNotEmptyFile();
    }

    @Test
    void a_slip_of_the_keyboard_is_seen() throws Exception {
        Path file = folder.resolve("slip.yaml");
        Files.writeString(
                file, Files.readString(Path.of("examples/orchard.yaml")).replaceFirst("span: 560 mm", "span: 56 mm"));
        ProgramRun run = ProgramRun.of("check", file.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.out())
                .contains("Unusual for a model of this kind", "The tail volume", "Look at span, chord and arm");
    }

    @Test
    void all_problems_of_a_file_come_at_once() throws Exception {
        Path file = folder.resolve("bad.yaml");
        Files.writeString(
                file,
                Files.readString(Path.of("examples/orchard.yaml"))
                        .replaceFirst("chord: 300 mm", "chord: 300")
                        .replaceFirst("arm: 800 mm", "arm: 8 kg"));
        ProgramRun run = ProgramRun.of("check", file.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(2).allMatch(line -> line.startsWith(file + ":"));
    }

    /** 1840 mm and 3.05 kg by the exact inch and pound; assumed values change with the rest. */
    @Test
    void is_shown_in_the_units_asked_for() {
        ProgramRun run = ProgramRun.of("check", "examples/orchard.yaml", "--show", "length=in,weight=lb");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("Span 72.44 in", "6 lb 11.6 oz", "wheels.leg width 0.16 in");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"length=mm / cm / m / in / ft", "speed=m/s / km/h / mph / kt / ft/s", "weight=kg / g / lb / oz"})
    void shows_what_the_table_of_keys_lets_the_file_ask_for(String row) throws Exception {
        String what = row.substring(0, row.indexOf('='));
        String units = row.substring(row.indexOf('=') + 1);
        assertThat(Files.readString(Path.of("src/main/resources/throwline/keys.txt")))
                .contains("show." + what + " | choice " + units + " |");
        for (String unit : units.split(" / ", -1)) {
            ProgramRun run = ProgramRun.of("check", "examples/orchard.yaml", "--show", what + "=" + unit);
            assertThat(run.exitCode()).as(unit).isZero();
        }
    }

    @Test
    void units_that_do_not_fit_are_refused_in_a_sentence() {
        assertThat(ProgramRun.of("check", "examples/orchard.yaml", "--show", "length=lb"))
                .isEqualTo(new ProgramRun(
                        2, "", "--show: length cannot be shown in \"lb\". Allowed are mm, cm, m, in, ft.\n"));
        assertThat(ProgramRun.of("check", "examples/orchard.yaml", "--show", "colour=red"))
                .isEqualTo(new ProgramRun(
                        2,
                        "",
                        "--show: \"colour\" is not known. Known are length, speed, weight and torque. For example"
                                + " --show length=in,speed=mph.\n"));
    }
}
