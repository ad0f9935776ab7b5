package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the readme shows of the terminal is what the program says today. */
class ReadmeSampleTest {

    private static final String INDENT = "    ";

    @Test
    void theSampleIsTheBeginningOfTheAnswer() throws IOException {
        List<String> readme = Files.readAllLines(Path.of("README.md"));
        List<String> sample = readme.stream()
                .dropWhile(line -> !line.equals(INDENT + "Orchard"))
                .takeWhile(line -> line.isEmpty() || line.startsWith(INDENT))
                .map(line -> line.isEmpty() ? line : line.substring(INDENT.length()))
                .toList();
        String shown = String.join("\n", sample).strip();
        assertThat(shown.lines()).hasSizeGreaterThan(40);
        assertThat(ProgramRun.of("compare", "examples/orchard.yaml").out()).startsWith(shown + "\n");
    }
}
