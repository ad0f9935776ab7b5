package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Descent.Outcome;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.model.SetUp;
import throwline.sizing.CandidateEvaluator.Place;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;

/** What a flown set-up is told to be: its path, and why it cannot be flown. */
class CandidateFlightTest {

    private static final double DEGREE = Math.PI / 180;
    private static final Orchard ORCHARD = Orchard.asItIs();
    private static final SetUp CLEAN = ORCHARD.model().reference();
    private static final Flight FLIGHT = new Flight(ORCHARD.airframe(), CLEAN);
    private static final Stall STALL = FLIGHT.stall(ORCHARD.pack()).orElseThrow();
    private static final Attitude STEADY = ORCHARD.steady(FLIGHT, 14).orElseThrow();

    private static Attitude withTailMargin(double margin) {
        Attitude a = STEADY;
        return new Attitude(
                a.speed(),
                a.alpha(),
                a.lift(),
                a.drag(),
                a.elevator(),
                a.elevatorLimit(),
                margin,
                a.tailInWake(),
                a.downwash(),
                a.tailPressure(),
                a.moments(),
                a.wing(),
                a.converged());
    }

    private static CandidateFlight flown(Outcome outcome, Attitude attitude) {
        return CandidateFlight.of(
                0.1, -0.05, CLEAN, Optional.of(STALL), Optional.of(new Descent(outcome, Optional.of(attitude))));
    }

    /** Less than two degrees before the tail stalls is not safe (PRACTICE, methods manual 7.6). */
    @Test
    void tailMargin() {
        CandidateFlight safe = flown(Outcome.STEADY, withTailMargin(2.01 * DEGREE));
        assertThat(safe.fault()).isEmpty();
        assertThat(safe.angle()).isCloseTo(Math.atan2(STEADY.drag(), STEADY.lift()), within(1e-12));
        assertThat(safe.elevator().orElseThrow()).isEqualTo(STEADY.elevator());
        assertThat(safe.stallSpeed()).isEqualTo(STALL.speed());
        assertThat(flown(Outcome.STEADY, withTailMargin(1.99 * DEGREE)).fault()).contains(Limit.TAIL_MARGIN);
    }

    @ParameterizedTest
    @CsvSource({
        "TOO_SLOW, WING_STALL",
        "TOO_FAST, TOO_MUCH_DRAG",
        "ELEVATOR_SHORT, ELEVATOR_TRAVEL",
        "NOT_FOUND, NO_SOLUTION"
    })
    void faults(Outcome outcome, Limit limit) {
        CandidateFlight flown = flown(outcome, STEADY);
        assertThat(flown.fault()).contains(limit);
        assertThat(flown.elevator()).isEmpty();
        if (outcome == Outcome.TOO_FAST) {
            assertThat(flown.angle()).isEqualTo(Math.PI / 2);
        }
    }

    @Test
    void withoutAStall() {
        CandidateFlight flown = CandidateFlight.of(0, 0, CLEAN, Optional.empty(), Optional.empty());
        assertThat(flown.fault()).contains(Limit.NO_SOLUTION);
        assertThat(flown.stallSpeed()).isNaN();
        assertThat(flown.angle()).isNaN();
    }

    /** The evaluator flies the very set-up. */
    @Test
    void flownByTheModel() {
        CandidateEvaluator bench = new CandidateEvaluator(
                ORCHARD.airframe(), ORCHARD.pack(), ORCHARD.groups(), "wanted", Optional.of(14.0));
        CandidateFlight flown = bench.at(new Place(0, 0));
        assertThat(flown.angle()).isCloseTo(STEADY.descentAngle(), within(1e-6));
        assertThat(flown.stallSpeed()).isCloseTo(STALL.speed(), within(1e-6));
        assertThat(flown.setUp().name()).isEqualTo("wanted");
        assertThat(bench.at(new Place(30 * DEGREE, 0)).angle()).isGreaterThan(flown.angle());
    }

    @Test
    void nothingWanted() {
        assertThat(PoweredWants.none().isEmpty()).isTrue();
        assertThat(new PoweredWants(Optional.of(10.0), Optional.empty()).isEmpty())
                .isFalse();
        assertThat(new PoweredWants(Optional.empty(), Optional.of(new WantedClimb(1, As.RATE))).isEmpty())
                .isFalse();
    }
}
