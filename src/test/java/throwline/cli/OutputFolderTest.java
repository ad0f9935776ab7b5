package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.report.ReportFile;
import throwline.words.Words;

class OutputFolderTest {

    @TempDir
    private Path temporary = Path.of("");

    @Test
    void makes_the_folder_and_leaves_nothing_else_behind() throws IOException {
        Path folder = temporary.resolve("a/b");
        write(folder, false, file("table.txt", "one"));
        assertThat(folder.resolve("table.txt")).hasContent("one");
        assertThat(names(folder)).containsExactly("table.txt", "throwline-files.txt");
    }

    @Test
    void replaces_what_it_wrote_and_nobody_touched() {
        write(temporary, false, file("table.txt", "one"), file("load.svg", "x"));
        write(temporary, false, file("table.txt", "two"));
        write(temporary, false, file("load.svg", "y"));
        assertThat(temporary.resolve("table.txt")).hasContent("two");
        assertThat(temporary.resolve("load.svg")).hasContent("y");
    }

    @Test
    void keeps_a_file_that_was_changed_and_writes_nothing_at_all() throws IOException {
        write(temporary, false, file("a.svg", "one"), file("b.svg", "one"));
        Files.writeString(temporary.resolve("b.svg"), "mine");
        assertThatThrownBy(() -> write(temporary, false, file("a.svg", "two"), file("b.svg", "two")))
                .isInstanceOf(WrongInput.class)
                .hasMessageContaining("b.svg")
                .hasMessageContaining("--replace");
        assertThat(temporary.resolve("a.svg")).hasContent("one");
        assertThat(temporary.resolve("b.svg")).hasContent("mine");
        assertThat(names(temporary)).containsExactly("a.svg", "b.svg", "throwline-files.txt");
    }

    @Test
    void keeps_a_file_of_somebody_else_unless_told() throws IOException {
        Files.writeString(temporary.resolve("table.txt"), "mine");
        assertThatThrownBy(() -> write(temporary, false, file("table.txt", "two")))
                .isInstanceOf(WrongInput.class);
        assertThat(temporary.resolve("table.txt")).hasContent("mine");
        write(temporary, true, file("table.txt", "two"));
        assertThat(temporary.resolve("table.txt")).hasContent("two");
        write(temporary, false, file("table.txt", "three"));
        assertThat(temporary.resolve("table.txt")).hasContent("three");
    }

    @Test
    void a_file_where_the_folder_should_be_is_wrong_input() throws IOException {
        Path place = Files.writeString(temporary.resolve("charts"), "mine");
        assertThatThrownBy(() -> write(place, true, file("table.txt", "one")))
                .isInstanceOf(WrongInput.class)
                .hasMessageContaining("no folder");
        assertThat(place).hasContent("mine");
    }

    @Test
    void a_folder_where_a_file_should_be_is_wrong_input() throws IOException {
        Files.createDirectories(temporary.resolve("table.txt"));
        assertThatThrownBy(() -> write(temporary, true, file("table.txt", "one")))
                .isInstanceOf(WrongInput.class);
        assertThat(temporary.resolve("table.txt")).isDirectory();
    }

    private static void write(Path folder, boolean replace, ReportFile... files) {
        OutputFolder output = new OutputFolder(folder, replace, Words.load());
        output.add("", List.of(files));
        output.write();
    }

    private static ReportFile file(String name, String content) {
        return new ReportFile(name, content.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
