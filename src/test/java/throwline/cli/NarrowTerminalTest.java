package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Help, answers and messages on terminals from 20 to 60 columns: nothing fails, no line is longer than the terminal. */
class NarrowTerminalTest {

    private static final String MODEL = "examples/saltmarsh.yaml";

    private static final List<List<String>> CALLS = List.of(
            List.of("--help"),
            List.of("compare", "--help"),
            List.of("find", "--help"),
            List.of("new", "--help"),
            List.of("compare", "no-such-file-of-any-name-that-is-longer-than-the-terminal.yaml"),
            List.of("glide-away"),
            List.of("check", MODEL),
            List.of("section", "--list"),
            List.of("section", "clarky", "--re", "150000"),
            List.of("wing", MODEL, "--setup", "clean", "--incidence", "0:4:2"));

    @ParameterizedTest
    @ValueSource(ints = {20, 25, 30, 39, 40, 47, 54})
    void folds(int width) {
        for (List<String> call : CALLS) {
            String said = said(width, call);
            assertThat(said.lines().filter(line -> line.codePointCount(0, line.length()) > width))
                    .as("%s at %d columns", call, width)
                    .isEmpty();
        }
    }

    @Test
    void every_letter_is_kept() {
        String wide = said(80, List.of("--help")).replaceAll("\\s+", "");
        assertThat(said(20, List.of("--help")).replaceAll("\\s+", "")).isEqualTo(wide);
    }

    @Test
    void progress_stays_in_its_line() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new ByteArrayOutputStream(),
                err,
                StandardCharsets.UTF_8,
                true,
                Map.of("COLUMNS", "20"));
        terminal.progress("Working out Orchard ...");
        assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("\r\u001b[KWorking ... ard ...");
    }

    @ParameterizedTest
    @CsvSource({"24 80,80", "50 132,132", "0 0,-1", "'',-1", "stty: not a typewriter,-1", "24 99999,-1"})
    void columns_of_the_systems_answer(String said, int columns) {
        assertThat(TerminalColumns.columns(said + "\n").orElse(-1)).isEqualTo(columns);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "0", "-3", "19", "9999", "wide", ""})
    void odd_widths_are_no_fault(String columns) {
        assertThat(run(columns, List.of("--help")).exitCode()).isZero();
    }

    private static String said(int width, List<String> call) {
        ProgramRun run = run(String.valueOf(width), call);
        assertThat(run.exitCode()).as("%s at %d columns", call, width).isIn(0, 2, 3);
        return run.out() + run.err();
    }

    private static ProgramRun run(String columns, List<String> call) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                out,
                err,
                StandardCharsets.UTF_8,
                false,
                Map.of("COLUMNS", columns));
        int code = new CommandLineProgram(terminal).run(call.toArray(String[]::new));
        return new ProgramRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
