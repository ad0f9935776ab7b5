package throwline.app;

import throwline.cli.CommandLineProgram;
import throwline.cli.Terminal;

/** The program. */
public final class Throwline {

    private Throwline() {}

    /**
     * Runs the command line and ends the process with its exit code.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        System.setProperty("java.awt.headless", "true");
        System.exit(new CommandLineProgram(Terminal.ofProcess()).run(arguments));
    }
}
