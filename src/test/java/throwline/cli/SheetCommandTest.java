package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.report.data.SheetCsv;

/** Sheets from the command line. */
class SheetCommandTest {

    private static final String MODEL = "examples/saltmarsh.yaml";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void writes_the_sheets_and_marks_what_has_changed_since_them() throws IOException {
        Path first = folder.resolve("first");
        ProgramRun run = ProgramRun.of("sheet", MODEL, "--out", first.toString(), "--pack", "heavy");
        assertThat(run.exitCode()).isZero();
        assertThat(run.err()).isEmpty();
        try (Stream<Path> files = Files.list(first)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .contains("bench.pdf", "bench.html", "field-card.pdf", "pocket-card.html", "throws.csv");
        }
        CardDangers dangers =
                new CardDangers(Files.readString(first.resolve("field-card.html"), StandardCharsets.UTF_8));
        assertThat(dangers.count()).isPositive();
        assertThat(dangers.broken()).isEmpty();
        String csv = Files.readString(first.resolve("throws.csv"), StandardCharsets.UTF_8);
        SheetCsv.Read read = SheetCsv.read(csv);
        assertThat(SheetCsv.write(read.model(), read.pack(), read.entries())).isEqualTo(csv);
        assertThat(read.pack()).isEqualTo("heavy");

        Path changed = folder.resolve("changed.yaml");
        Files.writeString(
                changed,
                Files.readString(Path.of(MODEL))
                        .replace("landing flap: {flaps: 35 deg", "landing flap: {flaps: 30 deg"));
        Path second = folder.resolve("second");
        ProgramRun again = ProgramRun.of(
                "sheet",
                changed.toString(),
                "--out",
                second.toString(),
                "--paper",
                "letter",
                "--changes-from",
                first.resolve("throws.csv").toString());
        assertThat(again.exitCode()).isZero();
        assertThat(Files.readString(second.resolve("bench.html"), StandardCharsets.UTF_8)
                        .replace('\u00a0', ' '))
                .contains("down, 30.0\u00b0", "CHANGED, before: 35.0\u00b0 down");
    }

    @Test
    void what_is_no_sheet_is_said_in_one_sentence() {
        Path out = folder.resolve("none");
        for (String file :
                new String[] {MODEL, "examples", folder.resolve("missing.csv").toString()}) {
            ProgramRun run = ProgramRun.of("sheet", MODEL, "--out", out.toString(), "--changes-from", file);
            assertThat(run.exitCode()).isEqualTo(2);
            assertThat(run.err()).startsWith("--changes-from " + file + ": ").contains("throws.csv");
            assertThat(run.err().lines()).hasSize(1);
            assertThat(out).doesNotExist();
        }
    }

    @Test
    void a_folder_and_a_known_paper_are_needed() {
        assertThat(ProgramRun.of("sheet", MODEL).exitCode()).isEqualTo(2);
        ProgramRun run =
                ProgramRun.of("sheet", MODEL, "--out", folder.resolve("x").toString(), "--paper", "a5");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("A4", "LETTER");
    }
}
