package throwline.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import throwline.words.Words;

/** One run of the command line inside the test's process, and what it said. */
record ProgramRun(int exitCode, String out, String err) {

    static ProgramRun of(Commands commands, String input, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                out,
                err,
                StandardCharsets.UTF_8,
                false,
                Map.of());
        int code = new CommandLineProgram(new Context(terminal, Words.load()), commands).run(arguments);
        return new ProgramRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static ProgramRun of(String... arguments) {
        return of(Commands.all(), "", arguments);
    }
}
