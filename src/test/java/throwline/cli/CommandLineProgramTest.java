package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;

class CommandLineProgramTest {

    @Test
    void without_arguments_the_usage_goes_to_standard_error_and_the_exit_code_is_2() {
        ProgramRun run = ProgramRun.of();
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo(ProgramRun.of("--help").out()).contains("Example:");
    }

    @Test
    void help_and_version_are_answers() {
        assertThat(ProgramRun.of("-h").exitCode()).isZero();
        assertThat(ProgramRun.of("-V").exitCode()).isZero();
        assertThat(ProgramRun.of("--version").out()).startsWith("throwline ");
    }

    @Test
    void an_unknown_word_is_named() {
        ProgramRun run = ProgramRun.of("--hepl");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualTo("\"--hepl\" is not known here; did you mean \"--help\"?\nTry: throwline --help\n");
    }

    @Test
    void wrong_input_ends_with_2_and_its_sentence_alone() {
        ProgramRun run = ProgramRun.of(failing(new WrongInput("The wing is missing.")), "", "fail");
        assertThat(run).isEqualTo(new ProgramRun(2, "", "The wing is missing.\n"));
    }

    @Test
    void a_fault_inside_is_one_sentence_and_exit_code_1() {
        ProgramRun run = ProgramRun.of(failing(new IllegalStateException("first line\nsecond line")), "", "fail");
        assertThat(run.exitCode()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err())
                .contains("IllegalStateException: first line")
                .doesNotContain("second line")
                .doesNotContain("\tat ");
    }

    @Test
    void a_reader_that_has_gone_is_no_fault() {
        assertThat(answerTo("Broken pipe", "--help")).isEqualTo(new ProgramRun(0, "", ""));
    }

    @Test
    void an_answer_that_cannot_be_written_is_one_sentence() {
        String sentence = "The answer could not be written (No space left on device). Make room or write it somewhere"
                + " else, then run this again.\n";
        assertThat(answerTo("No space left on device", "--help")).isEqualTo(new ProgramRun(2, "", sentence));
        assertThat(answerTo("No space left on device", "section", "--list")).isEqualTo(new ProgramRun(2, "", sentence));
    }

    private static ProgramRun answerTo(String complaint, String... arguments) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        OutputStream complaining = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(complaint);
            }
        };
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]), complaining, err, StandardCharsets.UTF_8, false, Map.of());
        int code = new CommandLineProgram(terminal).run(arguments);
        return new ProgramRun(code, "", err.toString(StandardCharsets.UTF_8));
    }

    private static Commands failing(RuntimeException fault) {
        return Commands.all().with("fail", context -> new Failing(fault));
    }

    /** A command that fails; it borrows the words of the program's own help. */
    @Command(name = "throwline")
    static final class Failing implements Callable<Integer> {
        private final RuntimeException fault;

        Failing(RuntimeException fault) {
            this.fault = fault;
        }

        @Override
        public Integer call() {
            throw fault;
        }
    }
}
