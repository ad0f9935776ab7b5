package throwline.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** One run of the packaged program as a process of its own. */
record JarRun(int exitCode, String out, String err) {

    static final Path JAR = Path.of("target/throwline.jar");

    private static final int PATIENCE_MINUTES = 5;

    static JarRun of(String... arguments) {
        return with(List.of(), "", arguments);
    }

    static JarRun with(List<String> javaOptions, String input, String... arguments) {
        List<String> command = new ArrayList<>(java());
        command.addAll(javaOptions);
        command.addAll(List.of("-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return process(command, input);
    }

    /** The Java that runs the tests. */
    static List<String> java() {
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    }

    static JarRun process(List<String> command, String input) {
        try {
            Path out = Files.createTempFile("throwline", ".out");
            Path err = Files.createTempFile("throwline", ".err");
            ProcessBuilder builder =
                    new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
            // Where there is a screen, no arguments open the window.
            builder.environment().remove("DISPLAY");
            Process process = builder.start();
            try (OutputStream in = process.getOutputStream()) {
                in.write(input.getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                // A program that does not read its input may have closed it.
                if (process.isAlive() && !input.isEmpty()) {
                    throw e;
                }
            }
            if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                throw new AssertionError("does not end: " + command);
            }
            JarRun run = new JarRun(process.exitValue(), text(out), text(err));
            Files.delete(out);
            Files.delete(err);
            return run;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static String text(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
