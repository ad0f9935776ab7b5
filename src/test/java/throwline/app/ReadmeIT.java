package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.words.Words;

/** What the readme promises. */
class ReadmeIT {

    private static final Path README = Path.of("README.md");
    private static final String BUILD = "mvn -q package -DskipTests && ";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_first_command_leaves_charts() throws IOException {
        String command = commands().stream()
                .filter(line -> line.startsWith(BUILD))
                .findFirst()
                .orElseThrow()
                .substring(BUILD.length());
        List<String> words = new ArrayList<>(List.of(command.split(" ", -1)));
        assertThat(words)
                .startsWith("java", "-jar", "target/throwline.jar", "compare")
                .containsSubsequence("--out", "charts");
        Path charts = folder.resolve("charts");
        words.set(words.indexOf("charts"), charts.toString());
        words.set(0, JarRun.java().get(0));
        JarRun run = JarRun.process(words, "");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(charts.resolve("table.txt")).exists();
    }

    @Test
    void the_test_command_is_what_the_gate_runs() throws IOException {
        assertThat(commands()).contains("mvn verify");
        assertThat(Files.readString(Path.of(".ci/run"))).containsPattern("mvn [^\n]*clean verify");
    }

    @Test
    void pictures_and_files_that_it_names_are_there() throws IOException {
        Matcher links = Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(Files.readString(README));
        int found = 0;
        while (links.find()) {
            assertThat(Path.of(links.group(1))).exists();
            found++;
        }
        assertThat(found).isPositive();
    }

    @Test
    void rows_that_it_explains_are_rows_of_the_table() throws IOException {
        Words words = Words.load();
        List<String> labels = words.keys().stream()
                .filter(key -> key.startsWith("row."))
                .map(words::say)
                .toList();
        String meaning =
                Files.readString(README).split("## What the numbers mean", 2)[1].split("\n## ", 2)[0];
        List<String> rows = meaning.lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| row "))
                .map(line -> line.substring(2, line.indexOf(" |", 2)))
                .toList();
        assertThat(rows).isNotEmpty().allMatch(labels::contains);
    }

    /** Lines set as code. */
    private static List<String> commands() throws IOException {
        return Files.readAllLines(README).stream()
                .filter(line -> line.startsWith("    "))
                .map(String::strip)
                .toList();
    }
}
