package throwline.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import throwline.words.Words;

/** The command line: parses, runs, turns every outcome into an exit code. */
public final class CommandLineProgram {

    private final Context context;
    private final Commands commands;
    private final Screen screen;
    private final Faults faults;

    /**
     * A command line on this terminal.
     *
     * @param terminal where answers and messages go
     */
    public CommandLineProgram(Terminal terminal) {
        this(terminal, Screen.none());
    }

    /**
     * A command line on this terminal.
     *
     * @param terminal where answers and messages go
     * @param screen where the window opens
     */
    public CommandLineProgram(Terminal terminal, Screen screen) {
        this(new Context(terminal, Words.load()), Commands.all(screen), screen);
    }

    CommandLineProgram(Context context, Commands commands) {
        this(context, commands, Screen.none());
    }

    private CommandLineProgram(Context context, Commands commands, Screen screen) {
        this.context = context;
        this.commands = commands;
        this.screen = screen;
        faults = new Faults(context);
    }

    /**
     * Ends the process where a thread fails on which nobody waits, or for which waiting would never end, such as one of
     * those that work for a command.
     */
    public void endsWithItsThreads() {
        // Asked once beforehand for something that is not there, the end of the process needs no new class without
        // memory.
        Runtime.getRuntime().removeShutdownHook(Thread.currentThread());
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> end(fault));
    }

    private void end(Throwable fault) {
        int code = failed(fault);
        try {
            Runtime.getRuntime().exit(code);
        } catch (OutOfMemoryError e) {
            Runtime.getRuntime().halt(failed(e));
        }
    }

    private int failed(Throwable fault) {
        try {
            return faults.internal(fault);
        } catch (OutOfMemoryError e) {
            return faults.internal(e);
        }
    }

    /**
     * Runs one command.
     *
     * @param arguments the command line
     * @return exit code: 0 done, 1 internal fault, 2 wrong input or more than there is memory for, 3 done but some answer could not be found
     */
    public int run(String... arguments) {
        try {
            StringWriter help = new StringWriter();
            String[] given = FormerOptions.replaced(arguments);
            CommandLine line = commandLine(given, new PrintWriter(help));
            int code;
            Optional<LoneFile> alone = LoneFile.of(arguments);
            if (arguments.length == 0 && screen.isThere()) {
                screen.open(Optional.empty());
                return ExitCode.DONE.number();
            }
            if (alone.isPresent()) {
                return open(alone.get());
            }
            if (arguments.length == 0) {
                context.terminal().message(line.getUsageMessage());
                code = ExitCode.WRONG_INPUT.number();
            } else {
                code = line.execute(given);
            }
            if (help.getBuffer().length() > 0) {
                context.terminal().answer(help.toString());
            }
            return code;
        } catch (RuntimeException e) {
            return faults.failed(e);
        } catch (Error e) {
            return failed(e);
        }
    }

    /** A file that is dropped on the program opens; without a screen, a sentence names the commands. */
    private int open(LoneFile file) {
        if (!file.isThere()) {
            throw new WrongInput(context.words().say("cli.alone.missing", file.path()));
        }
        if (!screen.isThere()) {
            throw new WrongInput(context.words().say("cli.alone.no-screen", file.path()));
        }
        screen.open(Optional.of(file.path()));
        return ExitCode.DONE.number();
    }

    /** All commands with their options and help, for what an installed program says about itself. */
    CommandLine described() {
        return commandLine(new String[0], new PrintWriter(Writer.nullWriter()));
    }

    private CommandLine commandLine(String[] arguments, PrintWriter help) {
        CommandLine line = new CommandLine(new Root());
        commands.wanted(Arrays.asList(arguments), context).forEach(line::addSubcommand);
        line.setColorScheme(Help.defaultColorScheme(context.terminal().styled() ? Help.Ansi.ON : Help.Ansi.OFF));
        line.setOut(help);
        line.setParameterExceptionHandler(faults::wrongCommandLine);
        line.setExecutionExceptionHandler((fault, command, parsed) -> faults.failed(fault));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExpandAtFiles(false);
        line.registerConverter(Path.class, this::path);
        HelpLayout layout = new HelpLayout(context);
        layout.apply(line);
        line.getSubcommands().values().forEach(layout::apply);
        return line;
    }

    private Path path(String text) {
        if (text.isBlank()) {
            throw new WrongInput(context.words().say("cli.path.blank"));
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new WrongInput(context.words().say("cli.model.path", text));
        }
    }

    /** What stands before a command's name. */
    @Command(name = "throwline")
    private static final class Root {}
}
