package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.model.SetUp;

/** Every action of the window, and what is true after it. */
class SessionTest {

    private static final double EXACT = 1e-12;

    @TempDir
    private Path folder = Path.of("");

    private SessionFixture fixture = new SessionFixture(Path.of("."));
    private Session session = fixture.example();

    @BeforeEach
    void open() {
        fixture = new SessionFixture(folder);
        session = fixture.open();
    }

    private double flaps() {
        return Math.toDegrees(session.setUp().deflection("flaps"));
    }

    private List<String> names() {
        return session.model().setUps().stream().map(SetUp::name).toList();
    }

    @Test
    void a_hand_moves_a_surface_and_nothing_is_written_until_it_lets_go() {
        session.take("landing flap");
        session.drag("flaps", Math.toRadians(41.3), false);
        assertThat(flaps()).isEqualTo(41.5, within(EXACT));
        assertThat(session.document().isUnsaved()).isFalse();
        session.drag("flaps", Math.toRadians(41.33), true);
        assertThat(flaps()).isEqualTo(41.3, within(EXACT));
        assertThat(session.letGo()).isEmpty();
        assertThat(session.document().text().at(List.of("set-ups", "landing flap", "flaps")))
                .hasValue("41.3 deg down");
        assertThat(flaps()).isEqualTo(41.3, within(EXACT));
        assertThat(session.document().isUnsaved()).isTrue();
    }

    @Test
    void a_stop_holds_the_hand() {
        session.take("landing flap");
        session.drag("flaps", Math.toRadians(75), false);
        assertThat(flaps()).isEqualTo(60, within(EXACT));
        assertThat(movable("flaps").isAtStop(session.setUp().deflection("flaps")))
                .isTrue();
        session.drag("flaps", Math.toRadians(-10), false);
        assertThat(flaps()).isEqualTo(0, within(EXACT));
        session.giveUp();
        assertThat(flaps()).isEqualTo(35, within(EXACT));
        assertThat(session.document().canUndo()).isFalse();
    }

    private Movable movable(String name) {
        return session.movables().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void arrow_keys_move_by_half_a_degree_or_a_tenth() {
        session.take("landing flap");
        assertThat(session.nudge("flaps", 1, false)).isEmpty();
        assertThat(flaps()).isEqualTo(35.5, within(EXACT));
        session.nudge("flaps", -2, true);
        assertThat(flaps()).isEqualTo(35.3, within(EXACT));
        session.nudge("elevator", 3, false);
        assertThat(Math.toDegrees(session.setUp().elevator())).isEqualTo(1.5, within(EXACT));
    }

    @Test
    void a_throw_is_typed_in_millimetres_degrees_or_as_a_share() {
        session.take("landing flap");
        assertThat(session.type("ailerons", "12 mm up")).isEmpty();
        assertThat(session.document().text().at(List.of("set-ups", "landing flap", "ailerons")))
                .hasValue("12 mm up");
        double chord = movable("ailerons").chord();
        assertThat(session.setUp().deflection("ailerons"))
                .isEqualTo(-2 * Math.asin(0.012 / (2 * chord)), within(EXACT));
        assertThat(session.type("flaps", "80 %")).isEmpty();
        assertThat(flaps()).isEqualTo(48, within(EXACT));
        assertThat(session.type("ailerons", "50 % down")).isEmpty();
        assertThat(Math.toDegrees(session.setUp().deflection("ailerons"))).isEqualTo(9, within(EXACT));
        assertThat(session.type("flaps", "0")).isEmpty();
        assertThat(flaps()).isZero();
    }

    @Test
    void what_cannot_be_is_refused_in_a_sentence_and_changes_nothing() {
        session.take("landing flap");
        String before = session.document().text().text();
        assertThat(session.type("flaps", "70 deg down"))
                .hasValueSatisfying(said -> assertThat(said).contains("flaps").contains("60 deg down"));
        assertThat(session.type("flaps", "far")).isPresent();
        assertThat(session.type("flaps", "1,5 mm down")).isPresent();
        assertThat(session.type("flaps", "x %")).isPresent();
        assertThat(session.setUps().add("Clean")).isPresent();
        assertThat(session.setUps().rename("airbrake")).isPresent();
        assertThat(session.set(List.of("field", "wind"), "99 m/s")).isPresent();
        assertThat(session.document().text().text()).isEqualTo(before);
        assertThat(session.document().canUndo()).isFalse();
    }

    @Test
    void what_it_was_before_it_was_touched_stays_until_it_is_let_go() {
        session.take("landing flap");
        assertThat(session.against().map(SetUp::name)).hasValue("clean");
        session.nudge("flaps", 10, false);
        session.nudge("flaps", 10, false);
        assertThat(session.isAgainstBefore()).isTrue();
        assertThat(session.against().orElseThrow().deflection("flaps")).isEqualTo(Math.toRadians(35), within(EXACT));
        session.holdAgainst("airbrake");
        assertThat(session.against().map(SetUp::name)).hasValue("airbrake");
        session.holdAgainst("");
        assertThat(session.backToBefore()).isEmpty();
        assertThat(flaps()).isEqualTo(35, within(EXACT));
        session.forgetBefore();
        assertThat(session.before()).isEmpty();
        assertThat(session.against().map(SetUp::name)).hasValue("clean");
    }

    @Test
    void set_ups_are_added_copied_renamed_ordered_and_removed() {
        session.take("landing flap");
        assertThat(session.setUps().copy("steep")).isEmpty();
        assertThat(names()).containsExactly("clean", "take-off flap", "landing flap", "steep", "airbrake");
        assertThat(session.setUp().name()).isEqualTo("steep");
        assertThat(session.setUps().move(true)).isEmpty();
        assertThat(names()).endsWith("airbrake", "steep");
        assertThat(session.setUps().move(true)).isEmpty();
        assertThat(session.setUps().move(false)).isEmpty();
        assertThat(names()).endsWith("steep", "airbrake");
        assertThat(session.setUps().add("thermal")).isEmpty();
        assertThat(session.setUp()).isEqualTo(new SetUp("thermal", java.util.Map.of(), 0));
        assertThat(session.setUps().remove()).isEmpty();
        assertThat(names()).doesNotContain("thermal");
    }

    @Test
    void sticks_follow_the_name_of_a_set_up() {
        session.take("landing flap");
        assertThat(session.setUps().rename("slow")).isEmpty();
        assertThat(names()).contains("slow").doesNotContain("landing flap");
        assertThat(session.model().sticks().get(1).in()).containsExactly("clean", "take-off flap", "slow");
        assertThat(session.setUps().remove()).isEmpty();
        assertThat(session.model().sticks().get(1).in()).containsExactly("clean", "take-off flap");
    }

    @Test
    void sticks_are_added_copied_renamed_ordered_and_removed() {
        StickEdits sticks = session.sticks();
        assertThat(sticks.add("half up")).isEmpty();
        assertThat(sticks.copy("low rates", "high rates")).isEmpty();
        assertThat(sticks.rename("half up", "some up")).isEmpty();
        assertThat(sticks.move("some up", false)).isEmpty();
        assertThat(sticks.remove("with camber")).isEmpty();
        assertThat(session.model().sticks().stream().map(s -> s.name()))
                .containsExactly("low rates", "high rates", "with flaps", "full up", "some up");
        assertThat(sticks.remove("nobody")).isPresent();
    }

    @Test
    void conditions_are_values_of_the_file() {
        assertThat(session.set(List.of("field", "wind"), "4 m/s")).isEmpty();
        assertThat(session.model().field().wind()).isEqualTo(4, within(EXACT));
        assertThat(session.set(List.of("field", "obstacle", "height"), "9 m")).isEmpty();
        assertThat(session.model().field().obstacle()).isEqualTo(9, within(EXACT));
        assertThat(session.set(List.of("field", "temperature"), "")).isEmpty();
        assertThat(session.model().field().temperature()).isEmpty();
        session.carry("large");
        assertThat(session.pack().name()).isEqualTo("large");
    }

    @Test
    void the_last_good_model_flies_on_while_a_field_is_wrong() {
        assertThat(session.setAnyhow(List.of("tail", "span"), "56")).isEmpty();
        assertThat(session.document().problems()).isNotEmpty();
        assertThat(session.model().tail().span()).isEqualTo(0.56, within(EXACT));
        assertThat(session.setAnyhow(List.of("tail", "span"), "570 mm")).isEmpty();
        assertThat(session.document().problems()).isEmpty();
        assertThat(session.model().tail().span()).isEqualTo(0.57, within(EXACT));
    }

    @Test
    void the_throttle_is_heard_of_and_no_part_of_the_file() {
        List<String> heard = new ArrayList<>();
        session.onChange(() -> heard.add("x"));
        session.throttle(0.6);
        assertThat(session.throttle()).isEqualTo(0.6);
        session.throttle(1.4);
        assertThat(session.throttle()).isEqualTo(1);
        session.throttle(-1);
        assertThat(session.throttle()).isZero();
        assertThat(heard).hasSize(3);
        assertThat(session.document().canUndo()).isFalse();
    }

    @Test
    void listeners_hear_of_every_change() {
        List<String> heard = new ArrayList<>();
        session.onChange(() -> heard.add("x"));
        session.take("airbrake");
        session.drag("flaps", 0.1, false);
        session.letGo();
        session.undo();
        session.redo();
        session.save();
        assertThat(heard).hasSizeGreaterThanOrEqualTo(6);
    }

    @Test
    void a_thousand_random_edits_undone_leave_the_same_bytes() {
        String before = fixture.letters();
        Random random = new Random(17);
        int made = 0;
        for (int i = 0; i < 1000; i++) {
            edit(random, i);
            made += session.document().canUndo() ? 1 : 0;
        }
        assertThat(made).isGreaterThan(900);
        String after = session.document().text().text();
        assertThat(after).isNotEqualTo(before);
        int steps = 0;
        while (session.document().canUndo()) {
            session.undo();
            steps++;
        }
        assertThat(steps).isGreaterThan(500);
        assertThat(session.document().text().text()).isEqualTo(before);
        assertThat(session.document().isUnsaved()).isFalse();
        while (session.document().canRedo()) {
            session.redo();
        }
        assertThat(session.document().text().text()).isEqualTo(after);
    }

    private Optional<String> edit(Random random, int number) {
        List<Movable> movables = session.movables();
        Movable movable = movables.get(random.nextInt(movables.size()));
        double angle = movable.stopped(random.nextGaussian());
        return switch (random.nextInt(10)) {
            case 0 -> {
                session.take(names().get(random.nextInt(names().size())));
                yield Optional.empty();
            }
            case 1 -> session.type(movable.name(), random.nextInt(100) + " %");
            case 2 -> session.nudge(movable.name(), random.nextInt(9) - 4, random.nextBoolean());
            case 3 ->
                names().size() < 9
                        ? session.setUps().copy("copy " + number)
                        : session.setUps().remove();
            case 4 -> session.setUps().rename("name " + number);
            case 5 -> session.setUps().move(random.nextBoolean());
            case 6 -> session.set(List.of("field", "wind"), random.nextInt(7) + " m/s");
            case 7 -> session.set(List.of("field", "length"), random.nextBoolean() ? "" : 50 + number + " m");
            default -> {
                session.drag(movable.name(), angle, random.nextBoolean());
                session.drag(movable.name(), angle / 2, random.nextBoolean());
                yield session.letGo();
            }
        };
    }
}
