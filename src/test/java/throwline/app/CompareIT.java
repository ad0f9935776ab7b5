package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.Parsed;

/** {@code throwline compare} as a person or a script runs it. */
class CompareIT {

    private static final String ORCHARD = "examples/orchard.yaml";

    @TempDir
    private Path folder = Path.of("");

    /** Seven charts a pack, three more where the motor may run. */
    @ParameterizedTest
    @CsvSource({"orchard, 10", "ridgeline, 7", "saltmarsh, 7"})
    void every_example_gives_a_table_and_all_charts(String example, int each) throws Exception {
        JarRun run = JarRun.of("compare", "examples/" + example + ".yaml", "--out", folder.toString(), "--svg");
        assertThat(run.exitCode()).as(run.err()).isIn(0, 3);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Stall speed", "Descent angle", "An estimate, not proof.");
        List<Path> charts = files(".svg");
        assertThat(charts).hasSize(2 * each);
        for (Path chart : charts) {
            DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(Files.readAllBytes(chart)));
        }
        assertThat(files(".png")).hasSize(2 * each).allMatch(CompareIT::isPicture);
        assertThat(files(".part")).isEmpty();
        assertThat(Files.readString(folder.resolve("table.txt"))).contains("Stall speed");
    }

    @Test
    void a_second_run_replaces_its_own_files_but_not_one_that_was_changed() throws IOException {
        String[] call = {"compare", ORCHARD, "--pack", "small", "--out", folder.toString()};
        assertThat(JarRun.of(call).exitCode()).isZero();
        assertThat(JarRun.of(call).exitCode()).isZero();
        Files.writeString(folder.resolve("load.png"), "mine");
        JarRun run = JarRun.of(call);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("load.png").contains("--replace");
        assertThat(folder.resolve("load.png")).hasContent("mine");
    }

    @Test
    void json_is_one_document_and_nothing_else() {
        JarRun run = JarRun.of("compare", ORCHARD, "--json");
        assertThat(run.exitCode()).as(run.err()).isZero();
        Parsed json = Parsed.of(run.out());
        assertThat(json.at("format").text()).isEqualTo("compare/1");
        assertThat(json.at("packs").size()).isEqualTo(2);
        assertThat(run.out()).doesNotContain("NaN");
    }

    @Test
    void csv_has_one_line_a_number() {
        JarRun run = JarRun.of("compare", ORCHARD, "--csv", "--pack", "LARGE");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out().lines().skip(1)).allMatch(line -> line.startsWith("Orchard,large,"));
    }

    @Test
    void standard_input_is_read() throws IOException {
        JarRun run = JarRun.with(List.of(), Files.readString(Path.of(ORCHARD)), "compare", "-", "--pack", "small");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("Orchard");
    }

    @Test
    void a_wrong_file_is_told_by_line_and_column_and_nothing_is_written() throws IOException {
        Path wrong = Files.writeString(
                folder.resolve("wrong.yaml"),
                Files.readString(Path.of(ORCHARD)).replace("chord: 300 mm", "chord: 300"));
        Path out = folder.resolve("charts");
        JarRun run = JarRun.of("compare", wrong.toString(), "--out", out.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .containsPattern("wrong\\.yaml:\\d+:\\d+: ")
                .contains("chord: \"300\" has no unit")
                .doesNotContain("\tat ");
        assertThat(out).doesNotExist();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_closed_pipe_ends_silently() {
        String java = JarRun.java().get(0);
        JarRun run = JarRun.process(
                List.of("sh", "-c", java + " -jar " + JarRun.JAR + " compare " + ORCHARD + " --json | head -c 1"), "");
        assertThat(run.out()).isEqualTo("{");
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "compare " + ORCHARD + " --pack small",
                "compare " + ORCHARD + " --pack small --json",
                "wing " + ORCHARD + " --setup clean --incidence 4",
                "section clark-y --re 150000 --flap -6"
            })
    void commands_that_draw_nothing_load_no_drawing_classes(String call) {
        JarRun run = JarRun.with(List.of("-Xlog:class+load:stdout"), "", call.split(" ", -1));
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("throwline.cli.CommandLineProgram source:");
        assertThat(run.out().lines())
                .noneMatch(line -> line.contains("] java.awt.")
                        || line.contains("] javax.swing.")
                        || line.contains("] sun.awt.")
                        || line.contains("] org.jfree.")
                        || line.contains("] org.apache.batik."));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void a_machine_without_fonts_is_told_so_in_one_sentence_and_nothing_is_written() throws IOException {
        Path none = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig></fontconfig>");
        Path out = folder.resolve("charts");
        List<String> command = new ArrayList<>(List.of("env", "FONTCONFIG_FILE=" + none));
        command.addAll(JarRun.java());
        command.addAll(List.of("-Duser.home=" + folder, "-jar", JarRun.JAR.toString()));
        command.addAll(List.of("compare", ORCHARD, "--pack", "small", "--out", out.toString()));
        JarRun run = JarRun.process(command, "");
        assertThat(run.exitCode()).as(run.out()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("There is no font on this machine").hasLineCount(1);
        assertThat(out).doesNotExist();
    }

    private List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    private static boolean isPicture(Path file) {
        try {
            return ImageIO.read(file.toFile()).getWidth() > 0;
        } catch (IOException e) {
            return false;
        }
    }
}
