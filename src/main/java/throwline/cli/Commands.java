package throwline.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;

/**
 * The commands by name, in the order of the help text. A command is made only when it is asked for, so that a short
 * command does not pay for the others.
 *
 * <p>A command is a class with {@code @Command(name = "...")} whose {@code call} answers through
 * {@link Context#terminal} and returns an {@link ExitCode}. Its help comes from the file of words:
 * {@code cli.NAME.what}, {@code cli.NAME.example}, and {@code cli.NAME.OPTION} or {@code cli.OPTION} for each option.
 */
final class Commands {

    private final Map<String, Function<Context, Callable<Integer>>> makers = new LinkedHashMap<>();

    /** The commands of the product. */
    static Commands all() {
        return all(Screen.none());
    }

    /** The commands of the product on a machine with this screen. */
    static Commands all(Screen screen) {
        return new Commands()
                .with("compare", CompareCommand::new)
                .with("fly", FlyCommand::new)
                .with("find", FindCommand::new)
                .with("learn", LearnCommand::new)
                .with("wing", WingCommand::new)
                .with("section", SectionCommand::new)
                .with("check", CheckCommand::new)
                .with("sheet", SheetCommand::new)
                .with("new", NewCommand::new)
                .with("validate", ValidateCommand::new)
                .with("open", context -> new OpenCommand(context, screen));
    }

    /** These and one more. */
    Commands with(String name, Function<Context, Callable<Integer>> maker) {
        Commands more = new Commands();
        more.makers.putAll(makers);
        more.makers.put(name, maker);
        return more;
    }

    /** The command that this command line starts with, alone; all of them where it starts with none. */
    Map<String, Callable<Integer>> wanted(List<String> arguments, Context context) {
        Map<String, Callable<Integer>> made = new LinkedHashMap<>();
        boolean one = !arguments.isEmpty() && makers.containsKey(arguments.get(0));
        makers.forEach((name, maker) -> {
            if (!one || name.equals(arguments.get(0))) {
                made.put(name, maker.apply(context));
            }
        });
        return made;
    }
}
