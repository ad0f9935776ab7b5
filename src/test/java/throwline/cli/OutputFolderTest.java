package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
                .hasMessageContaining("not a folder");
        assertThat(place).hasContent("mine");
    }

    @Test
    void a_folder_where_a_file_should_be_is_wrong_input() throws IOException {
        Files.createDirectories(temporary.resolve("table.txt"));
        assertThatThrownBy(() -> write(temporary, true, file("table.txt", "one")))
                .isInstanceOf(WrongInput.class);
        assertThat(temporary.resolve("table.txt")).isDirectory();
    }

    @Test
    void links_are_not_followed() throws IOException {
        Path outside = Files.writeString(temporary.resolve("diary.txt"), "mine");
        Path folder = Files.createDirectory(temporary.resolve("charts"));
        Files.createSymbolicLink(folder.resolve(".plan.svg.part"), outside);
        Files.createSymbolicLink(folder.resolve("." + Manifest.NAME + ".part"), outside);
        write(folder, false, file("plan.svg", "one"));
        assertThat(folder.resolve("plan.svg")).hasContent("one");
        Files.createSymbolicLink(folder.resolve("load.svg"), outside);
        assertThatThrownBy(() -> write(folder, false, file("load.svg", "one")))
                .isInstanceOf(WrongInput.class)
                .hasMessageContaining("load.svg");
        write(folder, true, file("load.svg", "one"));
        assertThat(folder.resolve("load.svg")).hasContent("one").isRegularFile();
        assertThat(Files.isSymbolicLink(folder.resolve("load.svg"))).isFalse();
        assertThat(outside).hasContent("mine");
    }

    @Test
    void a_link_to_a_folder_is_a_folder() throws IOException {
        Path folder = Files.createDirectory(temporary.resolve("charts"));
        Path link = Files.createSymbolicLink(temporary.resolve("link"), folder);
        write(link, false, file("plan.svg", "one"));
        assertThat(names(folder)).containsExactly("plan.svg", Manifest.NAME);
    }

    @Test
    void a_link_in_a_circle_is_no_folder() throws IOException {
        Path link = Files.createSymbolicLink(temporary.resolve("link"), Path.of("link"));
        assertThatThrownBy(() -> write(link, false, file("plan.svg", "one")))
                .isInstanceOf(WrongInput.class)
                .hasMessageContaining("is not a folder");
    }

    @Test
    void a_list_that_is_not_ours_gives_no_right_and_is_kept() throws IOException {
        write(temporary, false, file("plan.svg", "one"));
        String ours = Files.readString(temporary.resolve(Manifest.NAME));
        String theirs = "Things to build\n" + ours;
        Files.writeString(temporary.resolve(Manifest.NAME), theirs);
        assertThatThrownBy(() -> write(temporary, false, file("plan.svg", "two")))
                .isInstanceOf(WrongInput.class)
                .hasMessageContaining("plan.svg, " + Manifest.NAME);
        assertThat(temporary.resolve("plan.svg")).hasContent("one");
        assertThat(Files.readString(temporary.resolve(Manifest.NAME))).isEqualTo(theirs);
        assertThat(names(temporary)).containsExactly("plan.svg", Manifest.NAME);
    }

    @Test
    void hidden_files_of_somebody_else_stay() throws IOException {
        Path lock = Files.writeString(temporary.resolve(FolderLock.NAME), "mine");
        assertThatThrownBy(() -> write(temporary, true, file("plan.svg", "one")))
                .isInstanceOf(WrongInput.class)
                .hasMessageContaining(FolderLock.NAME);
        assertThat(lock).hasContent("mine");
        Files.delete(lock);
        Path hidden = Files.createDirectory(temporary.resolve(".throwline-new-mine"));
        Files.writeString(hidden.resolve("plan.svg"), "mine");
        write(temporary, false, file("plan.svg", "one"));
        assertThat(hidden.resolve("plan.svg")).hasContent("mine");
    }

    /** What is left when the process dies between two moves: one file new, one on its way out, one still old. */
    @Test
    void recovers_from_a_death_between_two_moves() throws IOException {
        write(temporary, false, file("a.svg", "one"), file("b.svg", "one"), file("c.svg", "one"));
        String heading = Words.load().say("cli.out.manifest");
        ReportFile[] second = {file("a.svg", "two"), file("b.svg", "two"), file("c.svg", "two")};
        Manifest after = Manifest.read(temporary.resolve(Manifest.NAME), heading);
        for (ReportFile file : second) {
            after = after.with(file);
        }
        StagingFolder.create(temporary, heading).fill(List.of(second), after);
        Path staging = temporary.resolve(names(temporary).get(0));
        Files.move(temporary.resolve("a.svg"), staging.resolve("old/a.svg"));
        Files.move(staging.resolve("new/a.svg"), temporary.resolve("a.svg"));
        Files.move(temporary.resolve("b.svg"), staging.resolve("old/b.svg"));

        write(temporary, false, file("other.svg", "three"));
        assertThat(names(temporary)).containsExactly("a.svg", "b.svg", "c.svg", "other.svg", Manifest.NAME);
        assertThat(temporary.resolve("b.svg")).hasContent("one");
        write(temporary, false, file("a.svg", "4"), file("b.svg", "4"), file("c.svg", "4"));
        assertThat(temporary.resolve("a.svg")).hasContent("4");
    }

    @Test
    void a_move_that_fails_takes_all_back() throws IOException {
        write(temporary, false, file("a.svg", "one"));
        String heading = Words.load().say("cli.out.manifest");
        StagingFolder staging = StagingFolder.create(temporary, heading);
        Manifest after = new Manifest(heading, Map.of()).with(file("a.svg", "two"));
        staging.fill(List.of(file("a.svg", "two")), after);
        assertThatThrownBy(() -> staging.publish(List.of("a.svg", "never-written.svg")))
                .isInstanceOf(IOException.class);
        staging.remove();
        assertThat(temporary.resolve("a.svg")).hasContent("one");
        assertThat(names(temporary)).containsExactly("a.svg", Manifest.NAME);
    }

    @Test
    void two_files_of_one_name_are_refused() {
        OutputFolder output = new OutputFolder(temporary, false, Words.load());
        output.add("pack2-", List.of(file("plan.svg", "one")));
        assertThatThrownBy(() -> output.add("pack2-", List.of(file("plan.svg", "two"))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_folder_that_cannot_be_filled_is_not_left_behind() {
        String tooLong = "a".repeat(300);
        Path folder = temporary.resolve("a/b");
        assertThatThrownBy(() -> write(folder, false, file("plan.svg", "one"), file(tooLong, "one")))
                .isInstanceOf(WrongInput.class);
        assertThat(temporary).isEmptyDirectory();
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
