package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.air.Gravity;

/** Round-outs with drag and wind: where they end, and energy and kinematics on the way. */
class RoundOutTest {

    private static final double STEP = 0.02;

    private static NearGroundFlight flight(double limit, double wind) {
        NearGroundPolar polar = new NearGroundPolar() {
            @Override
            public double drag(double lift, double height) {
                return 0.06 + 0.07 * lift * lift;
            }

            @Override
            public double limit(double height) {
                return limit;
            }
        };
        return new NearGroundFlight(3, 0.45, 1.225, 0.3, polar, new WindProfile(wind));
    }

    private static RoundOut.Flown fly(double limit, double wind, double load, double bottom) {
        NearGroundFlight flight = flight(limit, wind);
        double lift = flight.weight() * Math.cos(0.25) / flight.pressureArea(12);
        return new RoundOut(flight, new Approach(flight, lift, 12, 0.25, 0), load, bottom).fly();
    }

    /** Level, within five millimetres of the height that is wanted. */
    @ParameterizedTest
    @CsvSource({"0, 1.2, 0.1", "0, 1.5, 0.3", "4, 1.3, 0.2", "6, 1.2, 0.05"})
    void endsAtTheWantedHeight(double wind, double load, double bottom) {
        RoundOut.Flown flown = fly(9, wind, load, bottom);
        List<Landing.Spot> way = flown.way();
        Landing.Spot end = way.get(way.size() - 1);
        Landing.Spot before = way.get(way.size() - 2);
        assertThat(end.height()).isCloseTo(bottom, within(0.005));
        assertThat(way.get(0).height()).isEqualTo(flown.height());
        assertThat(flown.sink()).isZero();
        assertThat(flown.speed()).isEqualTo(end.speed());
        assertThat(flown.pulls()).hasSize(way.size() - 1);
        // The last of the path is nearly level: less than a whole step at the turning rate of the load over one g.
        double turning = (load - 1) * Gravity.STANDARD / end.speed();
        assertThat(before.height() - end.height()).isBetween(-1e-6, 0.6 * end.speed() * turning * STEP * STEP * 1.1);
    }

    /** In still air what is lost in energy is drag times way, drag held near that of the load flown. */
    @ParameterizedTest
    @ValueSource(doubles = {1.2, 1.4})
    void energy(double load) {
        RoundOut.Flown flown = fly(9, 0, load, 0.2);
        Landing.Spot first = flown.way().get(0);
        double lost = 3
                * (Gravity.STANDARD * (flown.height() - 0.2)
                        + (first.speed() * first.speed() - flown.speed() * flown.speed()) / 2);
        double mean = (first.speed() + flown.speed()) / 2;
        double area = 1.225 * mean * mean * 0.45 / 2;
        double lift = load * 3 * Gravity.STANDARD / area;
        double drag = (0.06 + 0.07 * lift * lift) * area;
        assertThat(lost).isCloseTo(drag * flown.distance(), withPercentage(6));
    }

    /** Where wing and elevator give no more than the weight it goes on sinking, as fast as its last step says. */
    @ParameterizedTest
    @ValueSource(doubles = {0.70, 0.74})
    void sinksOn(double limit) {
        RoundOut.Flown flown = fly(limit, 0, 1.3, 0.2);
        List<Landing.Spot> way = flown.way();
        int last = way.size() - 1;
        assertThat(flown.sink()).isPositive();
        if (last > 0) {
            double sink = (way.get(last - 1).height() - way.get(last).height()) / STEP;
            assertThat(flown.sink()).isCloseTo(sink, withPercentage(3));
        }
    }
}
