package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.Golden;

/** Wording and layout of the help texts. */
class HelpTest {

    @Test
    void of_the_program() {
        Golden.check("help.txt", help("--help"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"compare", "fly", "find", "learn", "wing", "section", "check", "sheet", "new", "validate", "open"
            })
    void of_a_command(String command) {
        String text = help(command, "--help");
        Golden.check("help-" + command + ".txt", text);
        assertThat(text).contains("Example:\n  throwline " + command);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"compare", "fly", "find", "learn", "wing", "section", "check", "sheet", "new", "validate", "open"
            })
    void a_command_tells_the_version(String command) {
        assertThat(ProgramRun.of(command, "-V").out()).startsWith("throwline ");
    }

    private static String help(String... arguments) {
        ProgramRun run = ProgramRun.of(arguments);
        assertThat(run.exitCode()).isZero();
        assertThat(run.err()).isEmpty();
        return run.out();
    }
}
