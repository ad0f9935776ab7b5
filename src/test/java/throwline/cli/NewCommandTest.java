package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewCommandTest {

    private static final List<String> ANSWERS = List.of(
            "Plum", "1,8 m", "1.8 m", "280 mm", "220 mm", "2", "flat", "33 mm", "high", "3.2 kg", "80 mm", "", "70 mm",
            "440 mm", "450 mm", "870 mm", "780 mm", "560 mm", "160 mm", "", "?", "", "45 deg", "", "330 mm", "", "fold",
            "600", "2", "4S", "4", "", "1 mm", "1 mm up", "none", "", "", "", "", "back", "", "", "45 deg", "", "", "",
            "none", "", "none");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void asks_and_writes_a_file_that_can_be_checked() {
        Path file = folder.resolve("plum.yaml");
        ProgramRun run = typed(String.join("\n", ANSWERS) + "\n", file);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out())
                .contains("What is your model called?\n> ")
                .contains("\"1,8 m\" has a comma. Use a point")
                .contains("kv of the motor, in rpm per volt, as on its label? For example 500.\n[not known] > ")
                .contains("This does not say which way. Write 1 mm up or 1 mm down.\n")
                .contains("\"4S\" is not a whole number. For example 4.\n")
                .contains("  1  high\n  2  middle\n  3  low\n> ")
                .contains("Weight with another battery, if you have one?\n[none] > ")
                .endsWith("throwline check " + file + "\n");
        ProgramRun check = ProgramRun.of("check", file.toString());
        assertThat(check.err()).isEmpty();
        assertThat(check.exitCode()).isZero();
        assertThat(file)
                .content()
                .contains("motor: {kv: 600}\n", "kind: thin electric", "cells: 4}", "cruise: 1 mm up");
        assertThat(check.out()).contains("Worked out from the elevator in cruise");
        ProgramRun compare = ProgramRun.of("compare", file.toString());
        assertThat(compare.exitCode()).isZero();
        assertThat(compare.out())
                .contains("Take-off run", "Climb", "Going around")
                .doesNotContain("add motor:");
    }

    /** A model that pulls three times its weight hangs on its propeller: it has no slowest flight to be found. */
    @Test
    void a_motor_far_too_strong_is_compared_all_the_same() throws IOException {
        Path file = folder.resolve("plum.yaml");
        typed(String.join("\n", ANSWERS) + "\n", file);
        String text = Files.readString(file);
        assertThat(text).contains("kv: 600");
        Path strong = Files.writeString(folder.resolve("strong.yaml"), text.replace("kv: 600", "kv: 3000"));
        ProgramRun compare = ProgramRun.of("compare", strong.toString());
        assertThat(compare.err()).doesNotContain("failed inside");
        assertThat(compare.exitCode()).isZero();
        assertThat(compare.out()).contains("Take-off run");
    }

    @Test
    void keeps_the_answers_of_one_who_stops_and_goes_on_with_them() throws IOException {
        Path file = folder.resolve("plum.yaml");
        ProgramRun run = typed("Plum\n1.8 m\n", file);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("Stopped. No model file was written; your answers are kept.");
        assertThat(names()).containsExactly(".plum.yaml.answers");
        ProgramRun again = typed("yes\n" + String.join("\n", ANSWERS.subList(3, ANSWERS.size())) + "\n", file);
        assertThat(again.err()).isEmpty();
        assertThat(again.out()).contains("There are 2 answers from an earlier time (Plum).");
        assertThat(names()).containsExactly("plum.yaml");
    }

    @Test
    void leaves_a_file_alone_that_only_has_the_name_of_kept_answers() throws IOException {
        Path other = Files.writeString(folder.resolve(".plum.yaml.answers"), "mine");
        ProgramRun run = typed("Plum\n", folder.resolve("plum.yaml"));
        assertThat(run.err()).contains("Stopped. Nothing was written.");
        assertThat(other).hasContent("mine");
    }

    @Test
    void never_overwrites() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "mine");
        ProgramRun run = typed("", file);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err())
                .isEqualTo("There is a file \"" + file + "\" already, and it is not overwritten. Name another.\n");
        assertThat(file).hasContent("mine");
        assertThat(ProgramRun.of("new", file.toString()).exitCode()).isEqualTo(2);
        assertThat(file).hasContent("mine");
        assertThat(names()).containsExactly("mine.yaml");
    }

    @Test
    void gives_the_empty_form_where_nobody_types() throws IOException {
        ProgramRun run = ProgramRun.of("new");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).startsWith("# An empty model file for Throwline.").contains("\nname:\n");
        Path file = folder.resolve("form.yaml");
        assertThat(ProgramRun.of("new", file.toString()).exitCode()).isZero();
        assertThat(file).hasContent(run.out());
        assertThat(names()).containsExactly("form.yaml");
    }

    @Test
    void a_folder_that_is_not_there_is_said() {
        Path file = folder.resolve("nowhere/plum.yaml");
        ProgramRun run = ProgramRun.of("new", file.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("\"" + file + "\" cannot be written there. Name another place.\n");
    }

    private ProgramRun typed(String input, Path file) {
        return ProgramRun.typed(input, Map.of("NO_COLOR", "1"), "new", file.toString());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
