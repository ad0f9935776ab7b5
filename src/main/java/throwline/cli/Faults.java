package throwline.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import throwline.report.NoFontException;
import throwline.words.Words;

/** Turns what went wrong into one sentence and an exit code. */
final class Faults {

    /** System property that makes an internal fault show its stack trace; for those who work on the program. */
    private static final String TRACE = "throwline.trace";

    /** A chain of causes may run in a circle. */
    private static final int MOST_CAUSES = 20;

    private final Terminal terminal;
    private final Words words;
    private final MemoryEnd memory;

    Faults(Context context) {
        this.terminal = context.terminal();
        this.words = context.words();
        memory = new MemoryEnd(terminal, words.say("cli.fault.memory"));
    }

    /** A command threw. */
    int failed(Exception fault) {
        if (fault instanceof WrongInput wrong) {
            terminal.message(String.valueOf(wrong.getMessage()));
            return ExitCode.WRONG_INPUT.number();
        }
        if (fault instanceof UnwrittenAnswer unwritten) {
            terminal.message(words.say("cli.fault.unwritten", String.valueOf(unwritten.getMessage())));
            return ExitCode.WRONG_INPUT.number();
        }
        return internal(fault);
    }

    /** Something that must not happen. */
    int internal(Throwable fault) {
        if (memory.isSaid() || MemoryEnd.isCauseOf(fault)) {
            return memory.say();
        }
        if (lacksFont(fault)) {
            terminal.message(words.say("cli.fault.font"));
        } else {
            terminal.message(words.say("cli.fault.internal", describe(fault)));
        }
        if (Boolean.getBoolean(TRACE)) {
            StringWriter trace = new StringWriter();
            fault.printStackTrace(new PrintWriter(trace, true));
            terminal.message(trace.toString());
        }
        return ExitCode.INTERNAL_FAULT.number();
    }

    /** Templates wrap what their pictures throw. */
    private static boolean lacksFont(Throwable fault) {
        return Stream.iterate(fault, Objects::nonNull, Throwable::getCause)
                .limit(MOST_CAUSES)
                .anyMatch(NoFontException.class::isInstance);
    }

    /** The command line cannot be read. */
    int wrongCommandLine(ParameterException fault, String[] arguments) {
        String command = fault.getCommandLine().getCommandSpec().qualifiedName();
        terminal.message(sentence(fault, List.of(arguments)));
        terminal.message(words.say("cli.fault.try", command));
        return ExitCode.WRONG_INPUT.number();
    }

    private String sentence(ParameterException fault, List<String> arguments) {
        if (fault.getCause() instanceof WrongInput wrong) {
            return String.valueOf(wrong.getMessage());
        }
        if (fault instanceof UnmatchedArgumentException unmatched) {
            String what = unmatched.getUnmatched().get(0);
            List<String> near = unmatched.getSuggestions();
            if (!near.isEmpty()) {
                return words.say("cli.fault.unknown.near", what, near.get(0));
            }
            return words.say(what.startsWith("-") ? "cli.fault.unknown.option" : "cli.fault.unknown.word", what);
        }
        if (fault instanceof MissingParameterException missing) {
            return lacking(missing.getMissing(), arguments);
        }
        return String.valueOf(fault.getMessage());
    }

    private String lacking(List<ArgSpec> missing, List<String> arguments) {
        for (ArgSpec spec : missing) {
            if (arguments.contains(name(spec))) {
                return words.say("cli.fault.missing.value", name(spec), spec.paramLabel());
            }
        }
        return words.say("cli.fault.missing", missing.stream().map(Faults::name).collect(Collectors.joining(", ")));
    }

    private static String name(ArgSpec spec) {
        return spec instanceof OptionSpec option ? option.longestName() : spec.paramLabel();
    }

    private static String describe(Throwable fault) {
        String message = fault.getMessage();
        String name = fault.getClass().getSimpleName();
        return message == null
                ? name
                : name + ": " + message.lines().findFirst().orElse("");
    }
}
