package throwline.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;

/** Terminal that the program talks to: the three streams of the process and what they can show. */
public final class Terminal {

    private static final String COLUMNS = "COLUMNS";
    private static final int USUAL_WIDTH = 80;
    private static final int NARROWEST = 20;
    private static final int WIDEST = 200;

    /** Below this width no line is laid out for it: all text is folded. */
    private static final int NARROW = 55;

    /** Longer lines of a message help nobody. */
    private static final int LONGEST_MESSAGE = 500;

    private final InputStream in;
    private final OutputStream out;
    private final OutputStream errors;
    private final PrintStream err;
    private final Charset charset;
    private final boolean interactive;
    private final Map<String, String> environment;
    private final IntSupplier columns;

    /**
     * A terminal on these streams, of usual width where the environment does not tell.
     *
     * @param in what {@code -} reads
     * @param out where answers go
     * @param err where messages go
     * @param charset what the person's terminal shows
     * @param interactive true where a person watches
     * @param environment the environment of the process
     */
    public Terminal(
            InputStream in,
            OutputStream out,
            OutputStream err,
            Charset charset,
            boolean interactive,
            Map<String, String> environment) {
        this(in, out, err, charset, interactive, environment, () -> USUAL_WIDTH);
    }

    private Terminal(
            InputStream in,
            OutputStream out,
            OutputStream err,
            Charset charset,
            boolean interactive,
            Map<String, String> environment,
            IntSupplier columns) {
        this.in = in;
        this.out = out;
        this.errors = err;
        this.err = new PrintStream(err, true, charset);
        this.charset = charset;
        this.interactive = interactive;
        this.environment = Map.copyOf(environment);
        this.columns = columns;
    }

    /** The terminal of this process. */
    public static Terminal ofProcess() {
        boolean interactive = isInteractive();
        Map<String, String> environment = System.getenv();
        IntSupplier columns = () -> USUAL_WIDTH;
        if (interactive && !isWidth(environment.getOrDefault(COLUMNS, ""))) {
            TerminalColumns asked = TerminalColumns.asked();
            columns = () -> asked.get().orElse(USUAL_WIDTH);
        }
        return new Terminal(
                new BufferedInputStream(new FileInputStream(FileDescriptor.in)),
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                charsetOfProcess(),
                interactive,
                environment,
                columns);
    }

    /** Standard input. */
    InputStream in() {
        return in;
    }

    /** The next line that the person types; empty at the end of the input. */
    Optional<String> line() {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        try {
            int next = in.read();
            if (next < 0) {
                return Optional.empty();
            }
            for (; next >= 0 && next != '\n'; next = in.read()) {
                line.write(next);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Optional.of(line.toString(charset).strip());
    }

    /** True where a person watches and types. */
    boolean interactive() {
        return interactive;
    }

    /**
     * Gives an answer on standard output. A reader that has gone away is no fault: the rest is dropped.
     *
     * @throws UnwrittenAnswer where the answer cannot be written for another reason
     */
    void answer(String text) {
        write(folded(text), charset);
    }

    /** Gives an answer that a program reads: always UTF-8. */
    void data(String text) {
        write(text, StandardCharsets.UTF_8);
    }

    /** Says something on standard error. */
    void message(String text) {
        String shown = folded(text.lines()
                .map(line -> new LongLine(line, LONGEST_MESSAGE).shortened())
                .collect(Collectors.joining("\n")));
        err.print(shown + (text.endsWith("\n") ? "\n" : System.lineSeparator()));
        err.flush();
    }

    /** A text as {@link #say} takes it. */
    byte[] encoded(String text) {
        return text.getBytes(charset);
    }

    /** Says something on standard error that was made ready before: nothing is made here. */
    void say(byte[] encoded) {
        try {
            errors.write(encoded);
        } catch (IOException nobodyListens) {
            return;
        }
    }

    /** Shows how far long work has come, overwritten by the next; nothing where nobody watches. */
    void progress(String text) {
        if (interactive) {
            // A line as wide as the terminal would go on in the next and stay there.
            err.print("\r\u001b[K" + new LongLine(text, width() - 1).shortened());
            err.flush();
        }
    }

    /** Columns that an answer may take. */
    int width() {
        String told = environment.getOrDefault(COLUMNS, "");
        int width = isWidth(told) ? Integer.parseInt(told) : columns.getAsInt();
        return Math.max(NARROWEST, Math.min(WIDEST, width));
    }

    private static boolean isWidth(String columns) {
        return columns.matches("[1-9]\\d{1,3}");
    }

    /** True where text may be set bold or dim. */
    boolean styled() {
        return interactive
                && width() >= NARROW
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }

    /** True where more than ASCII can be shown. */
    boolean unicode() {
        return charset.name().toUpperCase(Locale.ROOT).startsWith("UTF");
    }

    private String folded(String text) {
        return width() < NARROW ? new Narrow(width()).fold(text) : text;
    }

    private void write(String text, Charset encoding) {
        try {
            out.write(text.getBytes(encoding));
            out.flush();
        } catch (IOException e) {
            if (!readerHasGone(e)) {
                throw new UnwrittenAnswer(e);
            }
        }
    }

    private static boolean readerHasGone(IOException e) {
        String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        return message.contains("pipe");
    }

    /** The name of the property differs between Java versions. */
    private static Charset charsetOfProcess() {
        for (String property : new String[] {"stdout.encoding", "sun.stdout.encoding", "native.encoding"}) {
            String name = System.getProperty(property, "");
            if (!name.isEmpty() && Charset.isSupported(name)) {
                return Charset.forName(name);
            }
        }
        return StandardCharsets.US_ASCII;
    }

    /** From Java 22 on there is a console object without a person, and a method that tells. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isInteractive() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException beforeJava22) {
            return true;
        }
    }
}
