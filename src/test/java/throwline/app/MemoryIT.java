package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command for which there is too little memory ends in one sentence, whatever thread runs out of it first. */
class MemoryIT {

    private static final int LEAST_MEGABYTES = 12;
    private static final int MOST_MEGABYTES = 26;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void one_sentence_and_no_file() throws IOException {
        List<Integer> refused = new ArrayList<>();
        for (int megabytes = LEAST_MEGABYTES; megabytes <= MOST_MEGABYTES; megabytes += 2) {
            Path out = folder.resolve(String.valueOf(megabytes));
            JarRun run = JarRun.with(
                    List.of("-Xmx" + megabytes + "m"), "", "compare", "examples/orchard.yaml", "--out", out.toString());
            if (run.exitCode() == 0) {
                assertThat(run.err()).isEmpty();
                continue;
            }
            refused.add(megabytes);
            assertThat(run.exitCode()).as(run.err()).isEqualTo(2);
            assertThat(run.err().lines())
                    .as(run.err())
                    .singleElement()
                    .asString()
                    .startsWith("There is not enough memory for this: ")
                    .contains("-Xmx1g");
            assertThat(filesIn(out)).isEmpty();
        }
        assertThat(refused).contains(LEAST_MEGABYTES);
    }

    private static List<Path> filesIn(Path out) throws IOException {
        if (!Files.exists(out)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(out)) {
            return files.toList();
        }
    }
}
