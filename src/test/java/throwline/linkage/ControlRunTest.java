package throwline.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.linkage.ControlRun.Reach;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.model.Surface;

/** Servo and linkage of one surface. */
class ControlRunTest {

    private static ControlRun run(Linkage linkage, double swingDegrees, double offsetDegrees) {
        return new ControlRun(
                "flaps",
                linkage,
                OptionalDouble.of(0.6),
                Math.toRadians(swingDegrees),
                Math.toRadians(offsetDegrees),
                false);
    }

    /**
     * Worked by hand (COMPUTED, methods manual 14.1): an aileron with 0.0910 N m at the hinge needs that through an even linkage over an
     * efficiency of 0.8 (common practice, no source).
     */
    @Test
    void evenLinkage() {
        assertThat(run(new EvenLinkage(1), 45, 0)
                        .servoTorque(Math.toRadians(15), -0.0910)
                        .orElseThrow())
                .isCloseTo(0.0910 / 0.8, withPercentage(1e-9));
    }

    /** Virtual work: torque at the servo is the hinge moment times the change of surface angle over servo angle. */
    @Test
    void workIsKept() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        double there = bar.surfaceAt(Math.toRadians(30)).orElseThrow();
        double step = 1e-6;
        double work = 0.5
                * (bar.surfaceAt(Math.toRadians(30) + step).orElseThrow()
                        - bar.surfaceAt(Math.toRadians(30) - step).orElseThrow())
                / (2 * step);
        assertThat(run(bar, 45, 0).servoTorque(there, 0.5).orElseThrow() * 0.8).isCloseTo(work, withPercentage(0.01));
    }

    /** Near the end the arm lies along the rod and holds by itself: then the way there is what loads the servo. */
    @Test
    void theWayThereCountsToo() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        double end = bar.surface().high();
        assertThat(run(bar, 90, 0).servoTorque(end, 1).orElseThrow()).isGreaterThan(0.3);
        assertThat(run(bar, 90, 0).evenness(end)).isCloseTo(0, within(1e-5));
    }

    @Test
    void reach() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        assertThat(run(bar, 45, 0).at(Math.toRadians(25)).reach()).isEqualTo(Reach.FREE);
        assertThat(run(bar, 45, 0).at(Math.toRadians(34)).reach()).isEqualTo(Reach.BEYOND_SWING);
        assertThat(run(bar, 45, 0).at(Math.toRadians(50)).reach()).isEqualTo(Reach.LOCKED);
        assertThat(run(bar, 45, 0).servoTorque(Math.toRadians(50), 1)).isEmpty();
    }

    /** Near its dead centre a linkage hardly moves the surface (common practice, no source); before it does, past it locks. */
    @Test
    void slackensBeforeItLocks() {
        ControlRun run = run(new FourBar(0.012, 0.018, 0.090, 0), 90, 0);
        double end = run.linkage().surface().high();
        assertThat(run.reach(Math.toRadians(25))).isEqualTo(Reach.FREE);
        assertThat(run.reach(end - 1e-6)).isEqualTo(Reach.SLACKENING);
        assertThat(run.reach(end + 1e-3)).isEqualTo(Reach.LOCKED);
        assertThat(run(run.linkage(), 30, 0).reach(end - 1e-6)).isEqualTo(Reach.BEYOND_SWING);
    }

    /** A servo that stands 30 degrees back at neutral has 75 degrees of its 45 + 45 left for going down. */
    @Test
    void offset() {
        ControlRun run = run(new EvenLinkage(1), 45, 30);
        assertThat(run.at(Math.toRadians(75)).share()).isCloseTo(1, within(1e-12));
        assertThat(run.at(0).share()).isCloseTo(-30.0 / 45, within(1e-12));
        assertThat(run.at(Math.toRadians(-16)).reach()).isEqualTo(Reach.BEYOND_SWING);
    }

    /** Methods manual 14.2 (COMPUTED): ratios 0.6667 at neutral and 0.6014 at 30 degrees of servo; even is even everywhere. */
    @Test
    void evenness() {
        FourBar bar = new FourBar(0.012, 0.018, 0.090, 0);
        double there = bar.surfaceAt(Math.toRadians(30)).orElseThrow();
        assertThat(run(bar, 45, 0).evenness(there)).isCloseTo(0.6014 / 0.6667, within(1e-4));
        assertThat(run(bar, 45, 0).evenness(Math.toRadians(50))).isZero();
        assertThat(run(new EvenLinkage(0.4), 45, 0).evenness(0.1)).isCloseTo(1, within(1e-12));
    }

    /** The whole swing gives the whole of the longer travel where the linkage is not known; where it is, it is that one. */
    @Test
    void ofAModel() {
        OptionalDouble none = OptionalDouble.empty();
        Model m = model(List.of(
                new Servo(
                        "flaps",
                        OptionalDouble.of(0.4),
                        OptionalDouble.of(0.012),
                        OptionalDouble.of(0.018),
                        none,
                        OptionalDouble.of(1),
                        0.2,
                        0.1),
                new Servo("ailerons", none, OptionalDouble.of(0.012), none, none, none, 0, 0)));
        Map<String, ControlRun> runs = ControlRun.of(m);
        assertThat(runs.keySet()).containsExactly("flaps", "ailerons", "elevator");
        ControlRun flaps = Objects.requireNonNull(runs.get("flaps"));
        assertThat(flaps.assumed()).isFalse();
        assertThat(flaps.swing()).isEqualTo(1);
        assertThat(flaps.offset()).isEqualTo(0.1);
        double rod = 5 * 0.018;
        double servo = 0.5;
        double surface = flaps.linkage().surfaceAt(servo).orElseThrow();
        double distance = Math.sqrt(rod * rod - Math.pow(0.006 * Math.cos(0.2), 2)) + 0.006 * Math.sin(0.2);
        double x = distance + 0.018 * Math.sin(surface - 0.2) - 0.012 * Math.sin(servo - 0.2);
        double y = 0.018 * Math.cos(surface - 0.2) - 0.012 * Math.cos(servo - 0.2);
        assertThat(Math.hypot(x, y)).as("five horns long, common practice").isCloseTo(rod, within(1e-12));
        Surface ailerons = m.wing().surfaces().get(1);
        ControlRun assumed = Objects.requireNonNull(runs.get("ailerons"));
        assertThat(assumed.assumed()).isTrue();
        assertThat(assumed.at(Math.max(ailerons.travelUp(), ailerons.travelDown()))
                        .share())
                .isCloseTo(1, within(1e-12));
        ControlRun elevator = Objects.requireNonNull(runs.get("elevator"));
        assertThat(elevator.at(m.tail().elevator().travelUp()).share()).isCloseTo(1, within(1e-12));
    }

    private static Model model(List<Servo> servos) {
        ReadModel.Project project =
                (ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), new PackedAirfoils());
        Model m = project.model();
        return new Model(
                m.name(),
                m.packs(),
                m.wing(),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks(),
                servos);
    }

    /** At the very end of its swing a servo still gets there. */
    @Test
    void theEndOfTheSwingIsReached() {
        assertThat(run(new EvenLinkage(0.5), 40, 0).at(Math.toRadians(20)).reach())
                .isEqualTo(Reach.FREE);
        assertThat(run(new EvenLinkage(0.5), 40, 0).at(Math.toRadians(-20.01)).reach())
                .isEqualTo(Reach.BEYOND_SWING);
    }
}
