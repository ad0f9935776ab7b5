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
}
