package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.model.Wing;

/** Stations of the wing come and go; a new one changes nothing by itself. */
class StationEditsTest {

    @TempDir
    private Path folder = Path.of("");

    private Session open(String text) {
        SessionFixture fixture = new SessionFixture(folder);
        fixture.write(text);
        return fixture.again();
    }

    private static String example(String name) {
        try {
            return Files.readString(Path.of("examples", name + ".yaml"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<Double> ats(Session session) {
        return session.model().wing().sections().stream()
                .map(section -> Math.rint(section.at() * 1e6) / 1e6)
                .toList();
    }

    /** The wing is straight between stations, so one halfway between two of them changes no place of any edge. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void a_new_station_changes_nothing_by_itself(String example) {
        Session session = open(example(example));
        Wing before = session.model().wing();
        StationEdits edits = new StationEdits(session);
        for (int i = 0; i < 3; i++) {
            assertThat(edits.add(OptionalInt.empty())).isEmpty();
        }
        Wing after = session.model().wing();
        assertThat(after.sections()).hasSize(before.sections().size() + 3);
        for (int i = 0; i <= 40; i++) {
            double y = before.semiSpan() * i / 40;
            assertThat(after.chordAt(y)).isCloseTo(before.chordAt(y), within(3e-4));
            assertThat(after.leadingEdgeAt(y)).isCloseTo(before.leadingEdgeAt(y), within(3e-4));
        }
        assertThat(after.sections().get(after.sections().size() - 1).airfoil())
                .isEqualTo(before.sections().get(before.sections().size() - 1).airfoil());
        for (int i = 0; i < 3; i++) {
            session.undo();
        }
        assertThat(session.document().text().text()).isEqualTo(example(example));
    }

    @Test
    void it_stands_where_it_is_asked_for() {
        Session session = open(example("ridgeline"));
        assertThat(ats(session)).containsExactly(0.0, 0.7, 1.3);
        StationEdits edits = new StationEdits(session);
        assertThat(edits.add(OptionalInt.of(2))).isEmpty();
        assertThat(ats(session)).containsExactly(0.0, 0.7, 1.0, 1.3);
        assertThat(edits.add(OptionalInt.of(4))).isEmpty();
        assertThat(ats(session).get(3)).isCloseTo(1.15, within(1e-9));
        assertThat(edits.remove(4)).isEmpty();
        assertThat(edits.remove(3)).isEmpty();
        assertThat(session.document().text().text()).isEqualTo(example("ridgeline"));
    }

    @Test
    void what_cannot_be_is_said() {
        Session session = open(example("orchard"));
        StationEdits edits = new StationEdits(session);
        assertThat(edits.remove(2)).hasValueSatisfying(said -> assertThat(said).contains("two"));
        assertThat(edits.add(OptionalInt.of(1))).isEmpty();
        assertThat(edits.remove(1)).hasValueSatisfying(said -> assertThat(said).contains("middle"));
        // Without its tip the wing would end where the ailerons are.
        String before = session.document().text().text();
        assertThat(edits.remove(3)).isPresent();
        assertThat(session.document().text().text()).isEqualTo(before);
        for (int i = 0; i < 5; i++) {
            edits.add(OptionalInt.of(1));
        }
        assertThat(edits.add(OptionalInt.of(1)))
                .hasValueSatisfying(said -> assertThat(said).contains("40 mm"));
    }

    /** A station without an airfoil has that of the one further in, and keeps it when that one goes. */
    @Test
    void the_station_further_out_keeps_its_airfoil() {
        String text = example("ridgeline")
                .replace(
                        "{at: 700 mm,  chord: 215 mm, airfoil: sd7037",
                        "{at: 700 mm,  chord: 215 mm, airfoil: clark-y-b")
                .replace("chord: 140 mm, airfoil: sd7037", "chord: 140 mm");
        Session session = open(text);
        assertThat(new StationEdits(session).remove(2)).isEmpty();
        assertThat(session.model().wing().sections()).hasSize(2);
        assertThat(session.model().wing().sections().get(1).airfoil().text()).isEqualTo("clark-y-b");
    }

    /** Lists in brackets, and entries over several lines, with comments. */
    @ParameterizedTest
    @ValueSource(
            strings = {"  sections: [{at: 0 mm, chord: 300 mm, airfoil: clark-y-b}, {at: 920 mm, chord: 235 mm}]\n", """
                  sections:
                    # root
                    - at: 0 mm
                      chord: 300 mm   # measured
                      airfoil: clark-y-b
                    - at: 920 mm   # tip
                      chord: 235 mm
                """
            })
    void every_layout_of_a_list_is_kept(String sections) {
        String orchard = example("orchard");
        int start = orchard.indexOf("  sections:");
        int end = orchard.indexOf("  surfaces:");
        String text = orchard.substring(0, start) + sections + orchard.substring(end);
        Session session = open(text);
        StationEdits edits = new StationEdits(session);
        assertThat(edits.add(OptionalInt.of(1))).isEmpty();
        assertThat(ats(session)).containsExactly(0.0, 0.46, 0.92);
        assertThat(edits.remove(2)).isEmpty();
        assertThat(session.model().wing().sections().get(1).airfoil().text()).isEqualTo("clark-y-b");
        assertThat(session.document().text().text()).isEqualTo(text);
    }

    @Test
    void a_value_of_the_file_belongs_to_a_station_or_to_none() {
        assertThat(StationEdits.stationOf(List.of("wing", "sections", "[2]", "chord")))
                .hasValue(2);
        assertThat(StationEdits.stationOf(List.of("wing", "surfaces", "flaps", "from")))
                .isEmpty();
        assertThat(StationEdits.stationOf(List.of("wing", "position"))).isEmpty();
    }
}
