package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The output folder under several processes, and under processes that die. */
class OutputFolderProcessesTest {

    private static final long SEED = 17;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void processes_at_once_leave_the_files_of_one_of_them() throws IOException, InterruptedException {
        List<Process> processes = new ArrayList<>();
        for (String name : List.of("first", "second", "third")) {
            processes.add(start(name, 15));
        }
        for (Process process : processes) {
            assertThat(said(process)).isEqualTo("begins\n");
            assertThat(process.waitFor()).isZero();
        }
        assertThat(contents()).hasSize(1);
        assertThat(names()).hasSize(FolderWriter.FILES + 1);
    }

    @Test
    void after_a_death_at_any_time_the_next_run_writes_all() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        int halves = 0;
        for (int round = 0; round < 12; round++) {
            Process process = start("round" + round + "-", 100_000);
            assertThat(process.getInputStream().read()).isEqualTo('b');
            Thread.sleep(60 + random.nextInt(120));
            process.destroyForcibly().waitFor();
            halves += names().stream().anyMatch(name -> name.startsWith(".")) ? 1 : 0;
            FolderWriter.write(folder, "after" + round);
            assertThat(contents()).containsExactly("after" + round);
            assertThat(names()).hasSize(FolderWriter.FILES + 1).contains(Manifest.NAME);
        }
        assertThat(halves).as("deaths in the middle").isPositive();
    }

    private Process start(String content, int times) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FolderWriter.class.getName(),
                        folder.toString(),
                        content,
                        String.valueOf(times))
                .redirectErrorStream(true)
                .start();
    }

    private static String said(Process process) throws IOException {
        try (InputStream out = process.getInputStream()) {
            return new String(out.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
        }
    }

    /** The first lines of all files. */
    private Set<String> contents() throws IOException {
        Set<String> contents = new TreeSet<>();
        for (int i = 0; i < FolderWriter.FILES; i++) {
            contents.addAll(Files.readAllLines(folder.resolve("file" + i + ".svg")));
        }
        return contents;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
