package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.Golden;

/** What the person reads when a want is wrong, and what happens to files. */
class FindCommandTest {

    private static final String MODEL = "examples/orchard.yaml";

    /** Invented wings with less than the wants ask for. */
    private static final String BARE = "  surfaces: {}\n";

    private static final String NO_FLAPS = "  surfaces: {ailerons: {from: 470 mm, to: 880 mm, chord: 25 %}}\n";

    private static final List<List<String>> CALLS = List.of(
            List.of(),
            List.of("--at", "12 m/s"),
            List.of("--stall-at", "9"),
            List.of("--stall-at", "0.2 m/s"),
            List.of("--stall-at", "9 m/s", "--name", "airbrake"),
            List.of("--come-down", "15"),
            List.of("--come-down", "95", "--at", "12 m/s"),
            List.of("--come-down", "-3", "--at", "12 m/s"),
            List.of("--come-down", "15", "--at", "10 m/s", "--stall-at", "12 m/s"),
            List.of("--come-down", "15", "--at", "10 m/s", "--at", "12 m/s"),
            List.of("--at", "10 m/s", "--come-down", "15", "--roll", "60 deg/s", "--at", "12 m/s"),
            List.of("--roll", "60 deg/s"),
            List.of("--roll", "60", "--at", "12 m/s"),
            List.of("--roll", "0 deg/s", "--at", "12 m/s"),
            List.of("--roll", "60 deg/s", "--at", "9 m/s", "--stall-at", "9.5 m/s"),
            List.of("--no-trim-change", "crow"),
            List.of("--no-trim-change", "clean"),
            List.of("--no-trim-change", "airbrake", "--points", "2"),
            List.of("--roll-help", "--pack", "huge"));

    @TempDir
    private Path folder = Path.of("");

    @Test
    void one_sentence_each() throws IOException {
        StringBuilder said = new StringBuilder();
        for (List<String> call : CALLS) {
            said.append(refused(MODEL, MODEL, call));
        }
        Path bare = variant("bare", BARE);
        said.append(refused(bare.toString(), "bare.yaml", List.of("--stall-at", "9 m/s")));
        said.append(refused(bare.toString(), "bare.yaml", List.of("--roll", "60 deg/s", "--at", "12 m/s")));
        Path noFlaps = variant("no-flaps", NO_FLAPS);
        said.append(refused(noFlaps.toString(), "no-flaps.yaml", List.of("--roll-help")));
        said.append(refused(noFlaps.toString(), "no-flaps.yaml", List.of("--tightest-loop")));
        Golden.check("wrong-input-find.txt", said.toString());
    }

    private static String refused(String model, String shown, List<String> wants) {
        List<String> call = new java.util.ArrayList<>(List.of("find", model));
        call.addAll(wants);
        ProgramRun run = ProgramRun.of(call.toArray(String[]::new));
        assertThat(run.exitCode()).as(call.toString()).isEqualTo(2);
        assertThat(run.out()).as(call.toString()).isEmpty();
        assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
        return "$ throwline find " + shown + " " + String.join(" ", wants) + "\n" + run.err() + "\n";
    }

    /** Orchard with other surfaces, no stick, and set-ups that move what is left. */
    private Path variant(String name, String surfaces) throws IOException {
        Path file = folder.resolve(name + ".yaml");
        boolean ailerons = surfaces.contains("ailerons");
        Files.writeString(
                file,
                Files.readString(Path.of(MODEL))
                        .replaceAll("(?s)  surfaces:.*?\n\n", surfaces + "\n")
                        .replaceAll("(?s)servos:.*?\n\n", "")
                        .replaceAll(
                                "(?s)set-ups:.*",
                                "set-ups:\n  clean: {}\n  other: {"
                                        + (ailerons ? "ailerons: 5 deg up" : "elevator: 1 deg down")
                                        + "}\n"
                                        + (ailerons ? "sticks: {low: {does: roll, ailerons: 12 deg}}\n" : "")));
        return file;
    }

    @Test
    void a_model_without_flaps_is_answered_with_its_ailerons() throws IOException {
        ProgramRun run =
                ProgramRun.of("find", variant("no-flaps", NO_FLAPS).toString(), "--come-down", "8", "--at", "12 m/s");
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("ailerons", "Come down 8.0");
        assertThat(run.exitCode()).isIn(0, 3);
    }

    /** With less down elevator than an airbrake takes, both answers end where the elevator does, and say so. */
    @Test
    void an_elevator_that_ends_early_is_what_stops() throws IOException {
        Path file = folder.resolve("short.yaml");
        Files.writeString(
                file,
                Files.readString(Path.of("examples", "ridgeline.yaml"))
                        .replace("travel: {up: 22 deg, down: 20 deg}", "travel: {up: 22 deg, down: 6 deg}"));
        ProgramRun run = ProgramRun.of(
                "find", file.toString(), "--come-down", "15", "--at", "10 m/s", "--no-trim-change", "airbrake");
        assertThat(run.exitCode()).isEqualTo(3);
        assertThat(run.out())
                .containsPattern("(?s)Come down 15.0° at 10.0 m/s: not possible.*?the elevator's travel does not")
                .contains("The lever may come only 50 % of its way");
    }

    @Test
    void a_file_that_is_there_is_never_written_to() throws IOException {
        Path taken = folder.resolve("taken.yaml");
        Files.writeString(taken, "mine");
        ProgramRun run = ProgramRun.of("find", MODEL, "--stall-at", "8.8 m/s", "--write", taken.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("not overwritten");
        assertThat(taken).hasContent("mine");
        ProgramRun itself = ProgramRun.of("find", MODEL, "--stall-at", "8.8 m/s", "--write", MODEL);
        assertThat(itself.exitCode()).isEqualTo(2);
    }

    @Test
    void a_model_from_standard_input_is_copied_too() throws IOException {
        ProgramRun run = ProgramRun.of(
                Commands.all(),
                Files.readString(Path.of(MODEL)),
                "find",
                "-",
                "--stall-at",
                "8.8 m/s",
                "--write",
                folder.resolve("copy.yaml").toString());
        assertThat(run.exitCode()).isZero();
        assertThat(Files.readString(folder.resolve("copy.yaml"))).contains("\n  found: {flaps: ");
    }

    /** Each speed belongs to the want before it; one alone belongs to all. */
    @Test
    void speeds_go_to_their_wants() {
        ProgramRun two =
                ProgramRun.of("find", MODEL, "--roll", "60 deg/s", "--at=13 m/s", "--come-down=12", "--at", "12 m/s");
        assertThat(two.out()).contains("Come down 12.0° at 12.0 m/s", "Roll 60°/s at 13.0 m/s, in found");
        ProgramRun one = ProgramRun.of("find", MODEL, "--at", "12 m/s", "--roll", "60 deg/s", "--come-down", "12");
        assertThat(one.out()).contains("Come down 12.0° at 12.0 m/s", "Roll 60°/s at 12.0 m/s, in found");
    }

    @Test
    void the_folder_holds_the_table_and_the_curve() {
        Path out = folder.resolve("out");
        ProgramRun run = ProgramRun.of("find", MODEL, "--no-trim-change", "landing flap", "--out", out.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(out.resolve("find.txt")).isNotEmptyFile();
        assertThat(out.resolve("mix-curve.png")).isNotEmptyFile();
        assertThat(out.resolve("mix-curve.png")).isNotEmptyFile();
    }

    @Test
    void a_name_that_no_model_file_may_hold_is_refused_before_the_work() {
        for (String name : new String[] {"a\u202eb", "a\u0007b", "x".repeat(80), "_"}) {
            ProgramRun run = ProgramRun.of("find", "examples/orchard.yaml", "--stall-at", "8.8m/s", "--name=" + name);
            assertThat(run.exitCode()).as(name).isEqualTo(2);
            assertThat(run.err()).startsWith("--name: ").hasLineCount(1);
        }
    }
}
