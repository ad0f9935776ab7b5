package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Arguments that name what they should not: each gets its own sentence. */
class HostileArgumentsTest {

    private static final String MODEL = "examples/saltmarsh.yaml";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void an_argument_with_an_at_sign_is_no_file_of_arguments() throws IOException {
        Path file = Files.writeString(folder.resolve("secret"), "--secret\n");
        for (String command : new String[] {"compare", "check"}) {
            ProgramRun run = ProgramRun.of(command, "@" + file);
            assertThat(run.exitCode()).isEqualTo(2);
            assertThat(run.err())
                    .startsWith("@" + file + ": There is no such file.")
                    .doesNotContain("--secret");
        }
        assertThat(ProgramRun.of("@" + file).err()).doesNotContain("--secret");
    }

    @Test
    void names_without_letters() {
        for (String[] call : new String[][] {
            {"check", ""}, {"compare", " "}, {"check", MODEL, "--out", ""}, {"new", ""}, {"sheet", MODEL, "--out="}
        }) {
            ProgramRun run = ProgramRun.of(call);
            assertThat(run.exitCode()).isEqualTo(2);
            assertThat(run.err()).startsWith("A file or folder needs a name.");
        }
    }

    @Test
    @Timeout(60)
    void an_earlier_sheet_is_read_to_a_limit_and_only_from_a_file() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0, "there are no pipes here");
        for (String since : new String[] {"/dev/zero", pipe.toString()}) {
            ProgramRun run =
                    ProgramRun.of("sheet", MODEL, "--out", folder.resolve("out").toString(), "--changes-from", since);
            assertThat(run.exitCode()).isEqualTo(2);
            assertThat(run.err()).contains("is not a line of a sheet");
        }
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void a_folder_without_cases_is_told() throws IOException {
        Files.writeString(folder.resolve("other.csv"), "a,b\n1,2\n");
        ProgramRun run = ProgramRun.of("validate", "--cases", folder.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("there is no case");
    }

    @Test
    void messages_have_an_end() {
        ProgramRun run = ProgramRun.of("compare", "a".repeat(3000));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(500));
    }

    @Test
    @Timeout(20)
    void limits_of_several_models_add_up_before_the_work_starts() {
        String[] call = new String[40];
        Arrays.fill(call, "examples/orchard.yaml");
        call[0] = "compare";
        ProgramRun run = ProgramRun.of(call);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("312", "at most 64", "--pack");
    }

    @Test
    void what_is_allowed_survives_a_long_value() throws IOException {
        Path model = Files.writeString(
                folder.resolve("long.yaml"),
                Files.readString(Path.of(MODEL)).replaceFirst("position: \\w+", "position: " + "high".repeat(120)));
        ProgramRun run = ProgramRun.of("check", model.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip())
                .hasSizeLessThanOrEqualTo(500)
                .startsWith(model + ":")
                .contains("highhigh", " ... ", "high, middle, low");
    }

    @Test
    void long_lines_are_shortened_in_what_they_quote() {
        String wrong = "No file \"" + "x".repeat(900) + "\" here; one of a, b and c, for example \"b\".";
        assertThat(new LongLine(wrong, 100).shortened())
                .hasSize(100)
                .matches("No file \"x+ \\.\\.\\. x+\" here; one of a, b and c, for example \"b\"\\.");
        assertThat(new LongLine("y".repeat(60) + "z".repeat(60), 25).shortened())
                .matches("y{10} \\.\\.\\. z{10}");
        assertThat(new LongLine("short", 5).shortened()).isEqualTo("short");
        assertThat(new LongLine("\ud83d\ude80".repeat(300), 24).shortened().codePoints())
                .noneMatch(point -> Character.getType(point) == Character.SURROGATE);
    }

    @Test
    void a_new_file_follows_no_link_beside_it() throws IOException {
        Path outside = Files.writeString(folder.resolve("diary.txt"), "mine");
        Files.createSymbolicLink(folder.resolve(".plum.yaml.part"), outside);
        Path plum = folder.resolve("plum.yaml");
        assertThat(ProgramRun.of("new", plum.toString()).exitCode()).isZero();
        assertThat(outside).hasContent("mine");
        assertThat(plum).isRegularFile();
        assertThat(ProgramRun.of("new", plum.toString()).exitCode()).isEqualTo(2);
    }
}
