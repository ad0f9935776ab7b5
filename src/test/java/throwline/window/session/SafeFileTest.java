package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.input.PackedAirfoils;
import throwline.words.Words;

/** Nothing that a person has is ever lost: not by a fault of the disk, not by another program, not by a crash. */
class SafeFileTest {

    @TempDir
    private Path folder = Path.of("");

    private static final class FullDisk extends Disk {
        @Override
        protected void put(Path file, byte[] bytes) throws IOException {
            Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
            throw new IOException("No space left on device");
        }
    }

    @Test
    void saving_keeps_comments_and_order_and_changes_one_value() {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        String before = fixture.letters();
        session.take("landing flap");
        session.type("flaps", "41 deg down");
        assertThat(session.save()).isInstanceOf(SafeFile.Saved.class);
        assertThat(fixture.letters()).isEqualTo(before.replace("{flaps: 35 deg down}", "{flaps: 41 deg down}"));
        assertThat(session.document().isUnsaved()).isFalse();
        session.undo();
        assertThat(session.document().isUnsaved()).isTrue();
        session.save();
        assertThat(fixture.letters()).isEqualTo(before);
    }

    @Test
    void a_byte_order_mark_and_lines_of_windows_stay() {
        SessionFixture fixture = new SessionFixture(folder);
        fixture.open();
        String windows = "\ufeff" + fixture.letters().replace("\n", "\r\n");
        fixture.write(windows);
        Session session = fixture.again();
        session.take("landing flap");
        session.nudge("flaps", 2, false);
        session.save();
        assertThat(fixture.letters()).isEqualTo(windows.replace("{flaps: 35 deg down}", "{flaps: 36 deg down}"));
    }

    @Test
    void a_full_disk_leaves_the_file_as_it_was_and_nothing_beside_it() throws IOException {
        SessionFixture fixture = new SessionFixture(folder);
        fixture.open();
        String before = fixture.letters();
        SessionFixture full = new SessionFixture(folder, new FullDisk());
        Session session = full.again();
        session.nudge("flaps", 2, false);
        assertThat(session.save())
                .isInstanceOfSatisfying(
                        SafeFile.Refused.class,
                        refused -> assertThat(refused.why().code()).isEqualTo("window.disk.full"));
        assertThat(fixture.letters()).isEqualTo(before);
        assertThat(session.document().isUnsaved()).isTrue();
        try (var files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .doesNotContain(".tmp")
                    .hasSizeLessThanOrEqualTo(2);
        }
    }

    @Test
    void a_read_only_file_and_a_missing_folder_get_a_sentence() {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        session.nudge("flaps", 2, false);
        assertThat(session.saveAs(folder.resolve("nowhere/x.yaml"), false))
                .isInstanceOfSatisfying(
                        SafeFile.Refused.class,
                        refused -> assertThat(refused.why().code()).isEqualTo("window.disk.no-folder"));
        boolean readOnly = fixture.file().toFile().setWritable(false) && !Files.isWritable(fixture.file());
        org.junit.jupiter.api.Assumptions.assumeTrue(readOnly, "this user may write everything");
        assertThat(session.save())
                .isInstanceOfSatisfying(
                        SafeFile.Refused.class,
                        refused -> assertThat(refused.why().code()).isEqualTo("window.disk.read-only"));
    }

    @Test
    void another_file_is_never_written_over_unasked() throws IOException {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        Path other = folder.resolve("other.yaml");
        Files.writeString(other, "mine");
        assertThat(session.saveAs(other, false)).isEqualTo(new SafeFile.Taken(other));
        assertThat(other).hasContent("mine");
        assertThat(session.saveAs(other, true)).isEqualTo(new SafeFile.Saved(other));
        assertThat(session.document().place()).hasValue(other);
        assertThat(session.document().isUnsaved()).isFalse();
    }

    @Test
    void a_model_without_a_file_asks_for_one() {
        Session session = new SessionFixture(folder).example();
        assertThat(session.document().isUnsaved()).isTrue();
        assertThat(session.save()).isEqualTo(new SafeFile.NoPlace());
        assertThat(session.saveAs(folder.resolve("new.yaml"), false)).isInstanceOf(SafeFile.Saved.class);
        assertThat(folder.resolve("new.yaml")).hasSameTextualContentAs(SessionFixture.ORCHARD);
    }

    @Test
    void a_file_that_changed_on_the_disk_is_noticed_and_kept() {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        String mine = session.document().text().text();
        session.take("landing flap");
        session.nudge("flaps", 2, false);
        String theirs = mine.replace("name: Orchard", "name: Meadow");
        fixture.write(theirs);
        assertThat(session.elsewhere(fixture.file(), fixture.letters()))
                .hasValue(new SafeFile.Other(fixture.file(), theirs));
        SafeFile.Other other = (SafeFile.Other) session.save();
        assertThat(fixture.letters()).isEqualTo(theirs);
        session.reload(other);
        assertThat(session.model().name()).isEqualTo("Meadow");
        assertThat(session.document().isUnsaved()).isFalse();
        session.undo();
        assertThat(session.model().name()).isEqualTo("Orchard");
        assertThat(session.setUp().deflection("flaps")).isEqualTo(Math.toRadians(36));
    }

    @Test
    void keeping_mine_takes_one_more_save() {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        session.take("landing flap");
        session.nudge("flaps", 2, false);
        fixture.write("name: other\n");
        session.keepMine((SafeFile.Other) session.save());
        assertThat(fixture.letters()).isEqualTo("name: other\n");
        assertThat(session.document().isUnsaved()).isTrue();
        assertThat(session.save()).isInstanceOf(SafeFile.Saved.class);
        assertThat(fixture.letters()).contains("36 deg down");
    }

    @Test
    void a_file_that_is_gone_is_noticed_and_can_be_saved_again() throws IOException {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        Files.delete(fixture.file());
        SafeFile.Other gone = session.elsewhere(fixture.file(), "").orElseThrow();
        assertThat(gone.letters()).isEmpty();
        session.keepMine(gone);
        assertThat(session.document().isUnsaved()).isTrue();
        assertThat(session.save()).isInstanceOf(SafeFile.Saved.class);
        assertThat(fixture.letters()).contains("name: Orchard");
    }

    @Test
    void what_was_not_saved_is_offered_after_a_crash() {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        session.take("landing flap");
        session.nudge("flaps", 2, false);
        Journal next = new Journal(folder.resolve("state"), 2, new Disk());
        // Process 1 is always there; one that cannot exist stands for the one that crashed.
        assertThat(next.lost()).isEmpty();
        long crashed = 999_999_999_999L;
        new Journal(folder.resolve("state"), crashed, new Disk())
                .keep(session.document().place(), session.document().text().text());
        List<Journal.Lost> lost = next.lost();
        assertThat(lost).hasSize(1);
        assertThat(lost.get(0).place()).hasValue(fixture.file().toAbsolutePath());
        assertThat(lost.get(0).text()).isEqualTo(session.document().text().text());
        next.drop(lost.get(0));
        assertThat(next.lost()).isEmpty();
    }

    @Test
    void the_journal_is_dropped_once_all_is_saved() throws IOException {
        SessionFixture fixture = new SessionFixture(folder);
        Session session = fixture.open();
        session.nudge("flaps", 2, false);
        assertThat(journals()).isEqualTo(1);
        session.save();
        assertThat(journals()).isZero();
        session.nudge("flaps", 2, false);
        assertThat(journals()).isEqualTo(1);
        session.close();
        assertThat(journals()).isZero();
    }

    private long journals() throws IOException {
        try (var files = Files.list(folder.resolve("state"))) {
            return files.count();
        }
    }

    @Test
    void what_cannot_be_opened_gets_a_sentence() throws IOException {
        Opening opening = new Opening(new Disk());
        PackedAirfoils airfoils = new PackedAirfoils();
        assertThat(opening.file(folder.resolve("none.yaml"), airfoils)).isInstanceOf(Opening.Unread.class);
        assertThat(opening.file(folder, airfoils)).isInstanceOf(Opening.Unread.class);
        Path odd = folder.resolve("odd.yaml");
        Files.write(odd, new byte[] {'a', (byte) 0xff, (byte) 0xfe});
        assertThat(opening.file(odd, airfoils)).isInstanceOf(Opening.Unread.class);
        Files.write(odd, "name: x\n".getBytes(StandardCharsets.UTF_8));
        assertThat(opening.file(odd, airfoils))
                .isInstanceOfSatisfying(
                        Opening.Faulty.class,
                        faulty -> assertThat(faulty.problems()).isNotEmpty());
        Words words = Words.load();
        assertThat(List.of("no-file", "missing", "large", "letters", "denied", "unread", "folder-read-only"))
                .allMatch(code -> words.has("window.disk." + code));
    }

    @Test
    void state_stands_where_the_system_keeps_it() {
        Path home = Path.of("home");
        assertThat(StateFolder.of("Linux", home, Map.of())).isEqualTo(home.resolve(".local/state/throwline"));
        assertThat(StateFolder.of("Linux", home, Map.of("XDG_STATE_HOME", "state")))
                .isEqualTo(Path.of("state/throwline"));
        assertThat(StateFolder.of("Mac OS X", home, Map.of()))
                .isEqualTo(home.resolve("Library/Application Support/throwline"));
        assertThat(StateFolder.of("Windows 11", home, Map.of("LOCALAPPDATA", "local")))
                .isEqualTo(Path.of("local/throwline"));
    }

    @Test
    void settings_are_remembered() {
        Settings settings = new Settings(folder, new Disk());
        assertThat(settings.number("width", 7)).isEqualTo(7);
        settings.put("width", "900");
        settings.save();
        assertThat(new Settings(folder, new Disk()).number("width", 7)).isEqualTo(900);
        assertThat(new Settings(folder, new Disk()).get("none")).isEmpty();
    }
}
