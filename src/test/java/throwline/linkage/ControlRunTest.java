package throwline.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import throwline.linkage.ControlRun.Reach;

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

    /** A servo that stands 30 degrees back at neutral has 75 degrees of its 45 + 45 left for going down. */
    @Test
    void offset() {
        ControlRun run = run(new EvenLinkage(1), 45, 30);
        assertThat(run.at(Math.toRadians(75)).share()).isCloseTo(1, within(1e-12));
        assertThat(run.at(0).share()).isCloseTo(-30.0 / 45, within(1e-12));
        assertThat(run.at(Math.toRadians(-16)).reach()).isEqualTo(Reach.BEYOND_SWING);
    }
}
