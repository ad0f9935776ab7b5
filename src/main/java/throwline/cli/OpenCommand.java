package throwline.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens a model in the window. */
@Command(name = "open")
final class OpenCommand implements Callable<Integer> {

    private final Context context;
    private final Screen screen;

    @Parameters(arity = "0..1", paramLabel = "MODEL", description = "${bundle:cli.open.model}")
    private @Nullable Path model;

    OpenCommand(Context context, Screen screen) {
        this.context = context;
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (!screen.isThere()) {
            throw new WrongInput(context.words().say("cli.open.no-screen"));
        }
        screen.open(Optional.ofNullable(model));
        return ExitCode.DONE.number();
    }
}
