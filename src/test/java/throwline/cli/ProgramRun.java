package throwline.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import throwline.words.Words;

/** One run of the command line inside the test's process, and what it said. */
record ProgramRun(int exitCode, String out, String err) {

    static ProgramRun of(Commands commands, String input, String... arguments) {
        return run(commands, input, false, Map.of(), arguments);
    }

    /** At a terminal, where a person types the answers. */
    static ProgramRun typed(String input, Map<String, String> environment, String... arguments) {
        return run(Commands.all(), input, true, environment, arguments);
    }

    private static ProgramRun run(
            Commands commands, String input, boolean typed, Map<String, String> environment, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                out,
                err,
                StandardCharsets.UTF_8,
                typed,
                environment);
        int code = new CommandLineProgram(new Context(terminal, Words.load()), commands).run(arguments);
        return new ProgramRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static ProgramRun of(String... arguments) {
        return of(Commands.all(), "", arguments);
    }
}
