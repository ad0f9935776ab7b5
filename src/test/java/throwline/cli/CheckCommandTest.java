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
        assertThat(run.out()).contains("Nothing is unusual", "values are assumed");
    }

    @Test
    void draws_only_where_asked() {
        Path out = folder.resolve("drawing");
        ProgramRun run = ProgramRun.of("check", "examples/orchard.yaml", "--out", out.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(out.resolve("plan.svg")).isNotEmptyFile();
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
}
