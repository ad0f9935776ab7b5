package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Same file, same bytes: ten processes, each with a random order of its own for maps that keep none, and with other
 * languages and character sets of the machine.
 */
class RepeatabilityIT {

    private static final List<List<String>> MACHINES = List.of(
            List.of(),
            List.of("-Duser.language=tr", "-Duser.country=TR"),
            List.of("-Duser.language=de", "-Duser.country=DE", "-Dfile.encoding=ISO-8859-1"),
            List.of("-Duser.language=ar", "-Duser.country=EG"),
            List.of("-Dfile.encoding=UTF-16"),
            List.of("-Duser.language=hi", "-Duser.country=IN", "-Dfile.encoding=US-ASCII"),
            List.of("-Duser.timezone=Asia/Kathmandu"),
            List.of(),
            List.of(),
            List.of());

    private static final String NOTES = """
            throwline flights: 1
            model: ridgeline.yaml
            flights:
              - date: 2026-10-04
                wind: {speed: 1 m/s, told by: flag}
                noticed:
                  - {what: stall, set-up: clean, ground speed: [24 km/h, 30 km/h], going: both ways, told by: GPS}
                  - {what: roll, set-up: clean, stick: rates, rolls: 1, time: 6 s, told by: stopwatch}
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void tenProcessesAnswerAlike() throws IOException {
        Path file = Files.writeString(folder.resolve("ridgeline.yaml"), model());
        Path notes = Files.writeString(folder.resolve("notes.yaml"), NOTES);
        List<String> answers = IntStream.range(0, MACHINES.size())
                .parallel()
                .mapToObj(i -> answer(MACHINES.get(i), file, notes, folder.resolve("written-" + i)))
                .toList();
        assertThat(answers.get(0))
                .contains(
                        "further down (5 deg) than up",
                        "model,pack,setup,quantity",
                        "bench.pdf",
                        "ridgeline-airbrake.html")
                .contains("compare/1", "fly/1", "find/1", "learn/1");
        for (int i = 1; i < answers.size(); i++) {
            assertThat(answers.get(i)).as("%s", MACHINES.get(i)).isEqualTo(answers.get(0));
        }
    }

    /** One pack, two set-ups, and a stick that gives two notes, one a surface. */
    private static String model() throws IOException {
        return Files.readString(Path.of("examples/ridgeline.yaml"))
                .replaceAll("(?m)^ *(three cells|take-off flap|landing flap):.*\\R", "")
                .replace(
                        "ailerons: {up: 14 deg, down: 8 deg}}",
                        "flaps: {up: 2 deg, down: 5 deg}, ailerons: {up: 8 deg, down: 14 deg}}");
    }

    /** Folders have names of their own, which the answers tell. */
    private static String answer(List<String> machine, Path file, Path notes, Path written) {
        List<String> command = new ArrayList<>(JarRun.java());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(machine);
        String path = JarRun.JAR + File.pathSeparator + Path.of("target/test-classes");
        command.addAll(List.of("-cp", path, CommandsInOneProcess.class.getName()));
        command.addAll(List.of(file.toString(), notes.toString(), written.toString()));
        JarRun run = JarRun.process(command, "");
        assertThat(run.err()).as("%s", machine).isEmpty();
        return run.out().replace(written.toString(), "");
    }
}
