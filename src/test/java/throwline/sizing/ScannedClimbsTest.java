package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.flight.PoweredPoint;
import throwline.flight.Stall;
import throwline.model.SetUp;
import throwline.power.Drive;
import throwline.sizing.FoundClimb.Climb;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;

/** Throttle and flap for a climb against plain scans of the same flights. */
class ScannedClimbsTest {

    private static final double DEGREE = Math.PI / 180;

    private final Orchard orchard = Orchard.asItIs();
    private final SetUp clean = orchard.model().reference();

    private FoundClimb find(Orchard model, double value, As as) {
        return new ClimbSearch(model.airframe(), model.pack(), model.groups(), new WantedClimb(value, as)).in(clean);
    }

    private PoweredFlight powered(double flap) {
        SetUp setUp = new SetUp("scan", flap == 0 ? Map.of() : Map.of("flaps", flap), 0);
        Stall stall =
                new Flight(orchard.airframe(), setUp).stall(orchard.pack()).orElseThrow();
        Drive drive = orchard.airframe().drive(orchard.pack()).orElseThrow().drive();
        return new PoweredFlight(orchard.airframe(), setUp, orchard.pack(), drive, stall);
    }

    private static double best(PoweredFlight flight, double throttle, As as) {
        return (as == As.ANGLE
                        ? flight.steepestClimb(throttle).map(PoweredPoint::climbAngle)
                        : flight.bestClimb(throttle).map(PoweredPoint::climbRate))
                .orElse(-1.0);
    }

    /** A hundredth less throttle than was found does not climb so, and no tenth below it does. */
    @ParameterizedTest
    @CsvSource({"RATE, 1.5", "ANGLE, 0.14"})
    void leastThrottle(As as, double wanted) {
        FoundClimb found = find(orchard, wanted, as);
        PoweredFlight flight = powered(0);
        Climb enough = found.enough().orElseThrow();
        assertThat(found.met()).isTrue();
        assertThat(found.why()).isEmpty();
        assertThat(as == As.ANGLE ? enough.angle() : enough.speed() * Math.sin(enough.angle()))
                .isGreaterThanOrEqualTo(wanted)
                .isCloseTo(best(flight, enough.throttle(), as), within(1e-9));
        assertThat(best(flight, enough.throttle() - 0.01, as)).isLessThan(wanted);
        for (double throttle = 0.1; throttle < enough.throttle(); throttle += 0.1) {
            assertThat(best(flight, throttle, as)).isLessThan(wanted);
        }
        Climb full = found.full().orElseThrow();
        assertThat(full.worth(new WantedClimb(wanted, as))).isCloseTo(best(flight, 1, as), within(1e-9));
        assertThat(full.throttle()).isEqualTo(1);
    }

    /** Half a degree more flap than was found does not climb so at full throttle, and none of a scan beyond it does. */
    @ParameterizedTest
    @CsvSource({"RATE", "ANGLE"})
    void furthestFlap(As as) {
        double atEnd = best(powered(60 * DEGREE), 1, as);
        double wanted = (best(powered(0), 1, as) + 2 * atEnd) / 3;
        FoundClimb found = find(orchard, wanted, as);
        double flap = found.mostFlap().orElseThrow();
        assertThat(found.flapsEnd()).isFalse();
        assertThat(best(powered(flap), 1, as)).isGreaterThanOrEqualTo(wanted);
        for (double more = flap + 0.5 * DEGREE; more < 60 * DEGREE; more += 6 * DEGREE) {
            assertThat(best(powered(more), 1, as)).isLessThan(wanted);
        }
        FoundClimb less = find(orchard, 0.9 * atEnd, as);
        assertThat(less.flapsEnd()).isTrue();
        assertThat(less.mostFlap().orElseThrow()).isCloseTo(60 * DEGREE, within(1e-9));
        double most = IntStream.rangeClosed(0, 5)
                .mapToDouble(k -> best(powered(12 * k * DEGREE), 1, as))
                .max()
                .orElseThrow();
        assertThat(less.best().orElseThrow().climb().worth(new WantedClimb(wanted, as)))
                .isCloseTo(most, within(1e-6));
    }

    /** More than the best: nothing is enough, at any flap. */
    @Test
    void moreThanItCan() {
        FoundClimb found = find(orchard, best(powered(0), 1, As.RATE) + 20, As.RATE);
        assertThat(found.met()).isFalse();
        assertThat(found.mostFlap()).isEmpty();
        assertThat(found.flapsEnd()).isFalse();
        assertThat(found.why()).containsExactly(Limit.FULL_THROTTLE);
    }

    /**
     * With thrust above weight the steepest climb is straight up, where thrust is the weight and the drag; straight down the
     * drag is the weight, and it goes with the square of the speed (mechanics).
     */
    @Test
    void straightUp(@TempDir Path folder) {
        Orchard strong = Orchard.with(folder, "motor: {kv: 500}", "motor: {kv: 800}\nbench: {thrust: 4.5 kg}");
        FoundClimb found = find(strong, 60 * DEGREE, As.ANGLE);
        Climb full = found.full().orElseThrow();
        assertThat(full.angle()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(full.speed()).isPositive();
        assertThat(full.rate()).isCloseTo(full.speed(), within(1e-9));
        assertThat(full.throttle()).isEqualTo(1);
        Flight flight = new Flight(strong.airframe(), clean);
        double dive = flight.noseDownSpeed(
                        strong.pack(), flight.stall(strong.pack()).orElseThrow())
                .orElseThrow();
        double weight = strong.pack().mass() * 9.80665;
        double drag = weight * full.speed() * full.speed() / (dive * dive);
        assertThat(drag).isGreaterThan(0.01 * weight);
        assertThat(full.thrust()).isCloseTo(weight + drag, within(0.002 * weight));
        assertThat(found.enough().orElseThrow().throttle()).isLessThan(1);
        assertThat(found.enough().orElseThrow().angle()).isBetween(60 * DEGREE, 75 * DEGREE);
    }
}
