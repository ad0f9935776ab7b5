package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The window opens where there is a screen; where there is none, one sentence says what does the same work. */
class OpenCommandTest {

    private final List<Optional<Path>> opened = new ArrayList<>();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(boolean there, String... arguments) {
        Terminal terminal =
                new Terminal(new ByteArrayInputStream(new byte[0]), out, err, StandardCharsets.UTF_8, false, Map.of());
        Screen screen = new Screen() {
            @Override
            public boolean isThere() {
                return there;
            }

            @Override
            public void open(Optional<Path> model) {
                opened.add(model);
            }
        };
        return new CommandLineProgram(terminal, screen).run(arguments);
    }

    @Test
    void the_window_opens_with_a_model_or_without() {
        assertThat(run(true, "open", "my-model.yaml")).isZero();
        assertThat(run(true, "open")).isZero();
        assertThat(run(true)).isZero();
        assertThat(opened).containsExactly(Optional.of(Path.of("my-model.yaml")), Optional.empty(), Optional.empty());
        assertThat(out.size() + err.size()).isZero();
    }

    @Test
    void without_a_screen_one_sentence_names_the_commands() {
        assertThat(run(false, "open", "my-model.yaml")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("compare", "find", "sheet")
                .hasLineCount(1);
        assertThat(opened).isEmpty();
    }

    @Test
    void without_a_screen_and_arguments_the_usage_stays() {
        assertThat(run(false)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("Usage:").contains("open");
    }

    /** A file that is dropped on the program, or opened with it, comes without a command. */
    @Test
    void a_file_alone_opens_in_the_window() {
        assertThat(run(true, "examples/orchard.yaml")).isZero();
        assertThat(run(true, "README.md")).isZero();
        assertThat(opened)
                .containsExactly(Optional.of(Path.of("examples", "orchard.yaml")), Optional.of(Path.of("README.md")));
        assertThat(out.size() + err.size()).isZero();
    }

    @Test
    void a_file_alone_without_a_screen_is_told_the_commands() {
        assertThat(run(false, "examples/orchard.yaml")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("examples/orchard.yaml", "throwline compare examples/orchard.yaml", "sheet")
                .hasLineCount(1);
        assertThat(opened).isEmpty();
    }

    @Test
    void a_file_alone_that_is_not_there_is_no_command() {
        assertThat(run(true, "my-model.yaml")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("my-model.yaml")
                .hasLineCount(1);
        assertThat(opened).isEmpty();
    }

    /** A word that is no file stays a command that is not known; so does a file among more words. */
    @Test
    void what_is_no_file_stays_a_command() {
        assertThat(run(true, "compar")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("compare");
        assertThat(run(true, "examples/orchard.yaml", "examples/ridgeline.yaml"))
                .isEqualTo(2);
        assertThat(run(true, "--version")).isZero();
        assertThat(run(true, "examples")).isEqualTo(2);
        assertThat(opened).isEmpty();
    }
}
