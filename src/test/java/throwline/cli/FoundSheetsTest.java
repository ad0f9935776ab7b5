package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of what was found, without the way over a file. */
class FoundSheetsTest {

    private static final String MODEL = "examples/saltmarsh.yaml";

    @TempDir
    private Path folder = Path.of("");

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void are_those_that_a_copy_of_the_file_gives() throws IOException {
        ProgramRun found = ProgramRun.of(
                "find",
                MODEL,
                "--stall-at",
                "8.5 m/s",
                "--name",
                "slow",
                "--sheet",
                at("direct"),
                "--write",
                at("slow.yaml"));
        assertThat(found.exitCode()).isIn(0, 3);
        assertThat(found.err()).contains("bench.pdf").contains("slow.yaml");
        ProgramRun sheet = ProgramRun.of("sheet", at("slow.yaml"), "--out", at("detour"));
        assertThat(sheet.err()).isEmpty();
        for (String file :
                new String[] {"throws.csv", "bench.html", "field-card.html", "pocket-card.html", "bench.pdf"}) {
            assertThat(folder.resolve("direct").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("detour").resolve(file));
        }
        assertThat(Files.readString(folder.resolve("direct/throws.csv"))).contains(",slow,flaps,");
    }

    @Test
    void take_no_file_away() throws IOException {
        Path mine = Files.createDirectories(folder.resolve("full")).resolve("bench.pdf");
        Files.writeString(mine, "mine");
        ProgramRun run = ProgramRun.of(
                "find",
                MODEL,
                "--stall-at",
                "8.5 m/s",
                "--sheet",
                at("full"),
                "--out",
                at("page"),
                "--write",
                at("copy.yaml"));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("bench.pdf").contains("--replace");
        assertThat(mine).hasContent("mine");
        assertThat(folder.resolve("full/throws.csv")).doesNotExist();
        assertThat(folder.resolve("page")).doesNotExist();
        assertThat(folder.resolve("copy.yaml")).doesNotExist();
    }
}
