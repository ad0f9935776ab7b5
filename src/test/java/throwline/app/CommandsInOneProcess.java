package throwline.app;

import throwline.cli.CommandLineProgram;
import throwline.cli.Terminal;

/** A process of its own that answers in several ways, one after the other. */
final class CommandsInOneProcess {

    private CommandsInOneProcess() {}

    /**
     * Runs the commands.
     *
     * @param files the model file
     */
    public static void main(String[] files) {
        System.setProperty("java.awt.headless", "true");
        String[][] calls = {
            {"check"}, {"fly", "--setup", "airbrake"}, {"compare"}, {"compare", "--json"}, {"compare", "--csv"}
        };
        for (String[] call : calls) {
            String[] whole = new String[call.length + 1];
            whole[0] = call[0];
            whole[1] = files[0];
            System.arraycopy(call, 1, whole, 2, call.length - 1);
            new CommandLineProgram(Terminal.ofProcess()).run(whole);
        }
    }
}
