package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static throwline.study.Examples.value;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Facts of the trade on the invented examples: common practice, no source. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TradeFactsTest {

    private Comparison orchard;
    private List<Comparison> all;

    @BeforeAll
    void fly() {
        orchard = Examples.compare("orchard");
        all = List.of(orchard, Examples.compare("ridgeline"), Examples.compare("saltmarsh"));
    }

    private List<Comparison> all() {
        return all;
    }

    private static SetUpResult setUp(Comparison comparison, int pack, String name) {
        return comparison.packs().get(pack).setUps().stream()
                .filter(s -> s.setUp().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("all")
    void landingFlapLowersTheStallSpeed(Comparison comparison) {
        double clean = value(setUp(comparison, 0, "clean").stallSpeed());
        double flap = value(setUp(comparison, 0, "landing flap").stallSpeed());
        assertThat(1 - flap / clean).isBetween(0.04, 0.14);
    }

    @Test
    void landingFlapOnAHighWingAsksForDownElevator() {
        assertThat(value(setUp(orchard, 0, "landing flap").number(FlightQuantity.ELEVATOR_CHANGE)))
                .isPositive();
    }

    @ParameterizedTest
    @MethodSource("all")
    void airbrakeComesDownMoreSteeplyThanLandingFlap(Comparison comparison) {
        double flap = value(setUp(comparison, 0, "landing flap").descentAngle());
        double brake = value(setUp(comparison, 0, "airbrake").descentAngle());
        assertThat(brake / flap).isBetween(1.3, 2.2);
    }

    /**
     * The same throw about a raised aileron does no more than about a neutral one, so that of the roll at most the share of the
     * speeds is left (roll goes with speed: closed form of strip theory); a third of it would be no control.
     */
    @ParameterizedTest
    @MethodSource("all")
    void airbrakeKeepsPartOfTheRoll(Comparison comparison) {
        SetUpResult clean = setUp(comparison, 0, "clean");
        SetUpResult brake = setUp(comparison, 0, "airbrake");
        double left = value(brake.rollRates().get(0).rate())
                / value(clean.rollRates().get(0).rate());
        assertThat(left).isBetween(0.4, value(brake.approachSpeed()) / value(clean.approachSpeed()));
    }

    @ParameterizedTest
    @MethodSource("all")
    void theHeavierPackComesInFasterAtNearlyTheSameAngle(Comparison comparison) {
        SetUpResult light = setUp(comparison, 0, "landing flap");
        SetUpResult heavy = setUp(comparison, 1, "landing flap");
        assertThat(value(heavy.approachSpeed())).isGreaterThan(value(light.approachSpeed()));
        assertThat(value(heavy.descentAngle())).isCloseTo(value(light.descentAngle()), withPercentage(5));
    }
}
