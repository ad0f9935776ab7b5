package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Throws that are tried fly as if the file had them. */
class TryOptionTest {

    private static final String MODEL = "examples/orchard.yaml";

    @Test
    void what_is_tried_flies_as_if_it_stood_in_the_file(@TempDir Path folder) throws IOException {
        String file = Files.readString(Path.of(MODEL));
        Path changed = Files.writeString(
                folder.resolve("changed.yaml"), file.replace("flaps: 35 deg down", "flaps: 42 deg down"));
        assertThat(Files.readString(changed)).isNotEqualTo(file);
        String tried = ProgramRun.of("compare", MODEL, "--try", "Landing Flap: flaps 42 deg down", "--csv")
                .out();
        assertThat(tried)
                .isEqualTo(ProgramRun.of("compare", changed.toString(), "--csv").out());
        assertThat(tried).isNotEqualTo(ProgramRun.of("compare", MODEL, "--csv").out());
    }

    @Test
    void the_first_screen_shows_what_changes_and_no_more() {
        ProgramRun run = ProgramRun.of("compare", MODEL, "--try", "landing flap: flaps 55 deg down, ailerons 5 deg up");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("What changes against the file with landing flap: flaps 55° down, ailerons 5.0° up")
                .contains("Descent angle", "More with --all")
                .doesNotContain("take-off flap");
        assertThat(run.out().lines()).hasSizeLessThan(40);
        assertThat(ProgramRun.of("compare", MODEL, "--try", "airbrake: flaps 55 deg down")
                        .out())
                .contains("No row reads differently.");
    }

    @Test
    void one_set_up_in_depth_with_it() {
        String out = ProgramRun.of(
                        "fly", MODEL, "--setup", "airbrake", "--try", "airbrake: flaps 30 deg down", "--pack", "large")
                .out();
        assertThat(out.replaceAll("\\s+", " "))
                .contains("What changes against the file with airbrake: flaps 30° down", "Descent angle");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "airbrake | must be a set-up, a colon, a surface and its throw",
                "air: flaps 3 deg down | has no \"air\"",
                "airbrake: flap 3 deg down | must name a surface after the colon: flaps, ailerons, elevator",
                "airbrake: flaps 80 deg down | Allowed: 0 deg to 60 deg down, the travel of the surface",
                "airbrake: flaps -3 mm | does not say the direction in words"
            })
    void what_cannot_be_tried_is_said(String tried, String said) {
        ProgramRun run = ProgramRun.of("compare", MODEL, "--try", tried);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("--try: ").contains(said).hasLineCount(1);
    }

    @Test
    void only_one_model_at_a_time() {
        assertThat(ProgramRun.of("compare", MODEL, "examples/saltmarsh.yaml", "--try", "clean: flaps 1 deg down")
                        .err())
                .startsWith("--try changes one model");
    }
}
