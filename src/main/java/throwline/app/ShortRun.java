package throwline.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Run of one command of the plain jar in a Java of its own that is set for short work: the first compiler alone and the
 * simplest collector take half the processor time and half the memory of a Java's usual choice (measured), and a jar
 * cannot ask for them. Where the person chose any option of Java, or the system does not tell how this one was started,
 * there is none.
 */
record ShortRun(List<String> command) {

    /** The option with which a jar is started; before it would stand what the person chose. */
    private static final String JAR = "-jar";

    private static final List<String> SET = List.of(
            "-XX:+IgnoreUnrecognizedVMOptions", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-Xmn48m");

    /** Choices of Java's options for every program of a person. */
    private static final Set<String> CHOSEN = Set.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "_JAVA_OPTIONS");

    /** The commands that compute for minutes, where the second compiler is worth its time. */
    private static final Set<String> LONG = Set.of("validate");

    /** The run that the start of this process asks for; empty where it is to go on itself. */
    static Optional<ShortRun> ofProcess() {
        ProcessHandle.Info info = ProcessHandle.current().info();
        return info.command()
                .flatMap(java -> info.arguments().flatMap(given -> of(java, List.of(given), System.getenv())));
    }

    /**
     * The run that a start of Java asks for.
     *
     * @param java its program
     * @param given its arguments
     * @param environment of the process
     * @return empty where it is to go on itself
     */
    static Optional<ShortRun> of(String java, List<String> given, Map<String, String> environment) {
        boolean plain = given.size() > 2 && given.get(0).equals(JAR) && !LONG.contains(given.get(2));
        if (!plain || CHOSEN.stream().anyMatch(environment::containsKey)) {
            return Optional.empty();
        }
        List<String> command = new ArrayList<>();
        command.add(java);
        command.addAll(SET);
        command.addAll(List.of("-cp", given.get(1), Throwline.class.getName()));
        command.addAll(given.subList(2, given.size()));
        return Optional.of(new ShortRun(List.copyOf(command)));
    }

    /**
     * Runs the command with the streams of this process, and ends it with this process.
     *
     * @return its exit code; empty where the system starts none
     */
    Optional<Integer> exitCode() {
        try {
            Process process = new ProcessBuilder(command).inheritIO().start();
            Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
            return Optional.of(process.waitFor());
        } catch (IOException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
