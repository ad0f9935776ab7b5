package throwline.cli;

import java.io.PrintStream;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: parses, runs, turns every outcome into an exit code. */
@Command(
        name = "throwline",
        description = "Estimates how a model aeroplane flies with each surface set-up.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class CommandLineProgram {

    private final PrintStream out;
    private final PrintStream err;

    /**
     * A command line that writes to these streams.
     *
     * @param out where answers go
     * @param err where messages go
     */
    public CommandLineProgram(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Runs one command.
     *
     * @param arguments the command line
     * @return exit code: 0 done, 1 internal fault, 2 wrong input, 3 done but some answer could not be found
     */
    public int run(String... arguments) {
        CommandLine line = new CommandLine(this);
        if (arguments.length == 0) {
            line.usage(err);
            return CommandLine.ExitCode.USAGE;
        }
        line.setOut(new java.io.PrintWriter(out, true, java.nio.charset.StandardCharsets.UTF_8));
        line.setErr(new java.io.PrintWriter(err, true, java.nio.charset.StandardCharsets.UTF_8));
        return line.execute(arguments);
    }
}
