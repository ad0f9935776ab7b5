package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.model.Pack;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.window.session.PartEdits.Kind;

/** Packs and surfaces that come, go and take other names. */
class PartEditsTest {

    @TempDir
    private Path folder = Path.of("");

    private Session session = new SessionFixture(Path.of(".")).example();
    private PartEdits edits = new PartEdits(session);

    @BeforeEach
    void open() {
        session = new SessionFixture(folder).open();
        edits = new PartEdits(session);
    }

    private List<String> packs() {
        return session.model().packs().stream().map(Pack::name).toList();
    }

    @Test
    void a_pack_begins_as_the_one_at_hand() {
        assertThat(edits.add(Kind.PACK, "ballast")).isEmpty();
        assertThat(packs()).containsExactly("small", "ballast", "large");
        assertThat(session.model().packs().get(1).mass()).isEqualTo(3.05, within(1e-12));
        assertThat(edits.rename(Kind.PACK, "small", "light")).isEmpty();
        assertThat(session.pack().name()).isEqualTo("light");
        assertThat(edits.remove(Kind.PACK, "ballast")).isEmpty();
        assertThat(packs()).containsExactly("light", "large");
        assertThat(edits.remove(Kind.PACK, "large")).isEmpty();
        assertThat(edits.remove(Kind.PACK, "light")).isPresent();
        assertThat(packs()).containsExactly("light");
    }

    @Test
    void a_surface_takes_the_widest_room_there_is() {
        assertThat(edits.add(Kind.SURFACE, "tips"))
                .hasValueSatisfying(said -> assertThat(said).contains("100 mm"));
        assertThat(session.set(List.of("wing", "surfaces", "ailerons", "to"), "700 mm"))
                .isEmpty();
        assertThat(edits.add(Kind.SURFACE, "tips")).isEmpty();
        Surface tips = session.model().wing().surface("tips").orElseThrow();
        assertThat(tips.from()).isEqualTo(0.71, within(1e-9));
        assertThat(tips.to()).isEqualTo(0.91, within(1e-9));
        assertThat(session.movables()).extracting(Movable::name).contains("tips");
    }

    @Test
    void a_surface_changes_its_name_wherever_it_is_named() {
        assertThat(edits.rename(Kind.SURFACE, "flaps", "inner flaps")).isEmpty();
        assertThat(session.model().wing().surface("inner flaps")).isPresent();
        assertThat(session.model().setUps().get(2).deflection("inner flaps"))
                .isEqualTo(Math.toRadians(35), within(1e-12));
        assertThat(((Stick.Roll) session.model().sticks().get(1)).throwsBySurface())
                .containsKey("inner flaps");
        assertThat(session.document().text().names(List.of("servos"))).contains("inner flaps");
        session.undo();
        assertThat(session.model().wing().surface("flaps")).isPresent();
        assertThat(session.document().canUndo()).isFalse();
    }

    @Test
    void a_surface_goes_with_all_that_names_it() {
        assertThat(edits.remove(Kind.SURFACE, "ailerons")).isEmpty();
        assertThat(session.model().wing().surface("ailerons")).isEmpty();
        assertThat(session.model().sticks()).extracting(Stick::name).doesNotContain("low rates");
        assertThat(((Stick.Roll) session.model().sticks().get(0)).throwsBySurface())
                .containsOnlyKeys("flaps");
        assertThat(session.document().text().names(List.of("servos"))).doesNotContain("ailerons");
        assertThat(session.model().setUps().get(3).deflection("ailerons")).isZero();
    }

    @Test
    void no_name_is_given_twice_or_oddly() {
        String before = session.document().text().text();
        assertThat(edits.add(Kind.PACK, "Large")).isPresent();
        assertThat(edits.add(Kind.SURFACE, "flaps")).isPresent();
        assertThat(edits.rename(Kind.SURFACE, "flaps", "ailerons")).isPresent();
        assertThat(edits.add(Kind.PACK, "a\u0007b")).isPresent();
        assertThat(session.document().text().text()).isEqualTo(before);
    }

    @Test
    void a_value_of_the_file_belongs_to_a_part_or_to_none() {
        assertThat(PartEdits.kindOf(List.of("packs", "small", "weight"))).hasValue(Kind.PACK);
        assertThat(PartEdits.kindOf(List.of("wing", "surfaces", "flaps", "from")))
                .hasValue(Kind.SURFACE);
        assertThat(PartEdits.kindOf(List.of("wing", "position"))).isEmpty();
        assertThat(PartEdits.nameIn(Kind.SURFACE, List.of("wing", "surfaces", "flaps", "from")))
                .isEqualTo("flaps");
    }

    @Test
    void answers_about_an_own_model_outlive_the_window() {
        KeptAnswers kept = new KeptAnswers(folder.resolve("state"), new Disk());
        assertThat(kept.read()).isEmpty();
        assertThat(kept.keep(Map.of("name", "Heron", "span", "1840 mm", "tip", "")))
                .isTrue();
        assertThat(new KeptAnswers(folder.resolve("state"), new Disk()).read())
                .isEqualTo(Map.of("name", "Heron", "span", "1840 mm", "tip", ""));
        assertThat(kept.keep(Map.of())).isTrue();
        assertThat(kept.read()).isEmpty();
    }
}
