package throwline.app;

import java.nio.file.Path;
import java.util.Optional;
import throwline.cli.CommandLineProgram;
import throwline.cli.LoneFile;
import throwline.cli.Terminal;
import throwline.window.Screen;

/** The program. */
public final class Throwline {

    private Throwline() {}

    /**
     * Opens the window where there is nothing else to do, else runs the command line, where the plain jar was started in a
     * Java of its own; ends the process with its exit code.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        boolean mayOpen = arguments.length == 0
                || arguments[0].equals("open")
                || LoneFile.of(arguments).isPresent();
        if (!mayOpen) {
            // Drawing without a window is quicker to begin, and works where there is no screen.
            System.setProperty("java.awt.headless", "true");
            ShortRun.ofProcess().flatMap(ShortRun::exitCode).ifPresent(System::exit);
        }
        CommandLineProgram program = new CommandLineProgram(Terminal.ofProcess(), new ScreenOfProcess(mayOpen));
        if (!mayOpen) {
            program.endsWithItsThreads();
        }
        System.exit(program.run(arguments));
    }

    /** The screen, looked at only where a window may be wanted. */
    private record ScreenOfProcess(boolean mayOpen) implements throwline.cli.Screen {

        @Override
        public boolean isThere() {
            return mayOpen && new Screen().isThere();
        }

        @Override
        public void open(Optional<Path> model) {
            new Screen().open(model);
        }
    }
}
