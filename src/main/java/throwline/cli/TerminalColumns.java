package throwline.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Columns of the terminal that the person sits at. Java cannot tell, and shells keep COLUMNS for themselves, so the
 * system's own command is asked; beside the start of the program, because the first process of a Java machine takes
 * some 20 ms.
 */
final class TerminalColumns {

    private static final String TERMINAL = "/dev/tty";
    private static final long LONGEST_WAIT_MS = 300;

    private final FutureTask<OptionalInt> answer = new FutureTask<>(TerminalColumns::ask);

    private TerminalColumns() {}

    /** The question, on its way. */
    static TerminalColumns asked() {
        TerminalColumns columns = new TerminalColumns();
        Thread thread = new Thread(columns.answer, "terminal");
        thread.setDaemon(true);
        thread.start();
        return columns;
    }

    /** The answer; empty where the system has no such command, no such terminal, or no number for it. */
    OptionalInt get() {
        try {
            return answer.get(LONGEST_WAIT_MS, TimeUnit.MILLISECONDS);
        } catch (ExecutionException | TimeoutException e) {
            return OptionalInt.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return OptionalInt.empty();
        }
    }

    private static OptionalInt ask() throws IOException {
        if (!new File(TERMINAL).exists()) {
            return OptionalInt.empty();
        }
        Process process = new ProcessBuilder("stty", "size")
                .redirectInput(new File(TERMINAL))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        return columns(new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII));
    }

    /** Columns of an answer such as "24 80". */
    static OptionalInt columns(String said) {
        String[] parts = said.strip().split(" ", -1);
        return parts.length == 2 && parts[1].matches("[1-9]\\d{0,3}")
                ? OptionalInt.of(Integer.parseInt(parts[1]))
                : OptionalInt.empty();
    }
}
