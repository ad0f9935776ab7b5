package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.model.Servo;
import throwline.model.Stick;
import throwline.window.session.StickMix.Way;

/** What a person types for a stick, and what the model has then. */
class StickMixTest {

    private static final double EXACT = 1e-9;

    @TempDir
    private Path folder = Path.of("");

    private Session session = new SessionFixture(Path.of(".")).example();

    @BeforeEach
    void open() {
        session = new SessionFixture(folder).open();
    }

    private Movable surface(String name) {
        return session.movables().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Stick.Throws rolled(String stick, String surface) {
        Stick.Roll roll = (Stick.Roll) new StickMix(session, stick).stick().orElseThrow();
        return Optional.ofNullable(roll.throwsBySurface().get(surface)).orElseThrow();
    }

    @Test
    void a_roll_is_typed_a_side_at_a_time_in_degrees_millimetres_or_as_a_share() {
        StickMix low = new StickMix(session, "low rates");
        Movable ailerons = surface("ailerons");
        assertThat(low.put(ailerons, Way.UP, "15 deg up")).isEmpty();
        assertThat(rolled("low rates", "ailerons").up()).isEqualTo(Math.toRadians(15), within(EXACT));
        assertThat(rolled("low rates", "ailerons").down()).isEqualTo(Math.toRadians(10), within(EXACT));
        assertThat(low.put(ailerons, Way.DOWN, "9 mm")).isEmpty();
        assertThat(low.written(ailerons, Way.DOWN)).isEqualTo("9 mm");
        assertThat(rolled("low rates", "ailerons").down())
                .isEqualTo(2 * Math.asin(0.009 / (2 * ailerons.chord())), within(EXACT));
        assertThat(low.put(ailerons, Way.UP, "50 %")).isEmpty();
        assertThat(rolled("low rates", "ailerons").up()).isEqualTo(Math.toRadians(14), within(EXACT));
        assertThat(low.added(ailerons, Way.UP).orElseThrow()).isEqualTo(-Math.toRadians(14), within(EXACT));
    }

    @Test
    void a_throw_that_holds_both_ways_keeps_the_other_one() {
        StickMix mix = new StickMix(session, "with flaps");
        assertThat(mix.written(surface("ailerons"), Way.DOWN)).isEqualTo("18 deg");
        assertThat(mix.put(surface("ailerons"), Way.UP, "20 deg")).isEmpty();
        assertThat(rolled("with flaps", "ailerons"))
                .isEqualTo(new Stick.Throws(Math.toRadians(20), Math.toRadians(18)));
    }

    @Test
    void a_pull_is_typed_with_its_way() {
        StickMix up = new StickMix(session, "full up");
        Movable elevator = surface(Servo.ELEVATOR);
        assertThat(up.put(elevator, Way.BOTH, "80 %")).isEmpty();
        assertThat(((Stick.Pull) up.stick().orElseThrow()).elevator()).isEqualTo(Math.toRadians(-20), within(EXACT));
        assertThat(up.put(surface("flaps"), Way.BOTH, "6 mm down")).isEmpty();
        assertThat(up.added(surface("flaps"), Way.BOTH).orElseThrow()).isPositive();
        assertThat(up.put(surface("flaps"), Way.BOTH, "")).isEmpty();
        assertThat(up.added(surface("flaps"), Way.BOTH)).isEmpty();
    }

    @Test
    void a_roll_leaves_the_elevator_alone() {
        assertThat(new StickMix(session, "low rates").movables())
                .extracting(Movable::name)
                .containsExactly("flaps", "ailerons");
        assertThat(new StickMix(session, "full up").movables())
                .extracting(Movable::name)
                .contains(Servo.ELEVATOR);
    }

    @Test
    void what_cannot_be_is_refused_and_changes_nothing() {
        String before = session.document().text().text();
        StickMix low = new StickMix(session, "low rates");
        Movable ailerons = surface("ailerons");
        assertThat(low.put(ailerons, Way.UP, "far")).isPresent();
        assertThat(low.put(ailerons, Way.UP, "x %")).isPresent();
        assertThat(low.put(ailerons, Way.DOWN, "35 deg")).isPresent();
        assertThat(low.put(ailerons, Way.DOWN, "")).isPresent();
        assertThat(new StickMix(session, "full up").put(surface(Servo.ELEVATOR), Way.BOTH, "40 deg up"))
                .isPresent();
        assertThat(session.document().text().text()).isEqualTo(before);
    }

    @Test
    void a_stick_works_in_the_set_ups_that_are_ticked() {
        StickMix low = new StickMix(session, "low rates");
        assertThat(low.in("clean", false)).isEmpty();
        assertThat(low.stick().orElseThrow().in()).containsExactly("take-off flap", "landing flap", "airbrake");
        assertThat(low.in("clean", true)).isEmpty();
        assertThat(low.stick().orElseThrow().in()).isEmpty();
        assertThat(session.document().text().at(List.of("sticks", "low rates", "in")))
                .isEmpty();
        for (String each : List.of("clean", "take-off flap", "landing flap")) {
            assertThat(low.in(each, false)).isEmpty();
        }
        assertThat(low.in("airbrake", false)).isPresent();
        assertThat(low.stick().orElseThrow().in()).containsExactly("airbrake");
        session.undo();
        assertThat(low.stick().orElseThrow().in()).containsExactly("landing flap", "airbrake");
    }

    @Test
    void rolls_and_pulls_are_added_and_no_name_twice() {
        assertThat(session.sticks().addRoll("more")).isEmpty();
        assertThat(rolled("more", "ailerons")).isEqualTo(new Stick.Throws(Math.toRadians(14), Math.toRadians(9)));
        assertThat(session.sticks().add("Low Rates")).isPresent();
        assertThat(session.sticks().addRoll("more")).isPresent();
        assertThat(session.sticks().rename("more", "full up")).isPresent();
        assertThat(session.sticks().copy("more", "more")).isPresent();
    }
}
