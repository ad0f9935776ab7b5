package throwline.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * One flight of the invented aeroplane against the figures of an independent program (COMPUTED in Python), to a thousandth:
 * prediction, one straight step, what is known after, and the same with one wrong value.
 */
class WorkedFlightTest {

    private static final double TOLERANCE = 0.1;

    private final DemoAeroplane demo = new DemoAeroplane();
    private final DayFactors day = DayFactors.of(demo.factors, "one", 2.0, 1.0, 0);
    private final int cleanSpeed = demo.speed("ln speed clean", 11.806138, 0.10);
    private final int brakeSpeed = demo.speed("ln speed airbrake", 11.491251, 0.10);

    private List<Reading> readings(double stall) {
        Expected landing = new Expected(demo.in("landing flap"), day);
        Expected clean = new Expected(demo.in("clean"), day);
        Expected brake = new Expected(demo.in("airbrake"), day);
        return new ArrayList<>(List.of(
                new Reading(
                        "stall landing flap",
                        stall,
                        Math.hypot(
                                0.6, 0.03 * demo.in("landing flap").predicted().stallSpeed()),
                        landing.stallOverGround(1)),
                new Reading("glide clean", 1.5, 0.21478, clean.sink(cleanSpeed)),
                new Reading("glide clean", 10.5, 0.29548, clean.overGround(cleanSpeed, 1)),
                new Reading("path airbrake", Math.log(0.4), 0.15, brake.path(brakeSpeed, 1))));
    }

    private Posterior learn(double stall) {
        return MixtureUpdate.learn(demo.factors.all(), readings(stall));
    }

    private double z(Posterior posterior, String factor) {
        return posterior.state()[place(factor)];
    }

    private int place(String factor) {
        return demo.factors.all().stream().map(Factor::name).toList().indexOf(factor);
    }

    private void row(Posterior posterior, Kind kind, String setUp, double value, double low, double high) {
        RowBand band = kind.of(posterior, new FlownRows(demo.in(setUp), 1.3));
        assertThat(List.of(kind.show(band.after()), kind.show(band.lowAfter()), kind.show(band.highAfter())))
                .as(kind + " " + setUp)
                .usingComparatorForType(
                        (a, b) -> Math.abs(a - b) <= 1e-3 * Math.max(Math.abs(b), 1) ? 0 : Double.compare(a, b),
                        Double.class)
                .containsExactly(value, low, high);
    }

    private enum Kind {
        STALL,
        DESCENT,
        ELEVATOR,
        ROLL;

        RowBand of(Posterior posterior, FlownRows rows) {
            Expectation row =
                    switch (this) {
                        case STALL -> rows.stall();
                        case DESCENT -> rows.descent();
                        case ELEVATOR -> rows.elevator();
                        case ROLL -> rows.roll("full");
                    };
            return RowBand.of(posterior, row, 0, 1);
        }

        double show(double value) {
            return switch (this) {
                case STALL -> Math.exp(value);
                case DESCENT, ROLL -> Math.toDegrees(Math.exp(value));
                case ELEVATOR -> Math.toDegrees(value);
            };
        }
    }

    @Test
    void predictsTheNotes() {
        double[] means = demo.factors.means();
        List<Double> predicted = readings(8.61111).stream()
                .map(reading -> reading.expected().at(means))
                .toList();
        double[] expected = {6.58500, 1.39850, 9.72302, -1.05096};
        for (int i = 0; i < expected.length; i++) {
            assertThat(predicted.get(i)).isCloseTo(expected[i], withPercentage(TOLERANCE));
        }
        Posterior posterior = learn(8.61111);
        double[] misses = {1.6403, 0.2754, 0.4970, 0.4810};
        for (int i = 0; i < misses.length; i++) {
            assertThat(posterior.misses().get(i)).isCloseTo(misses[i], withPercentage(TOLERANCE));
        }
    }

    @Test
    void takesTheSlopes() {
        double[] means = demo.factors.means();
        double[] sds = demo.factors.all().stream().mapToDouble(Factor::sd).toArray();
        List<double[]> rows = readings(8.61111).stream()
                .map(reading -> reading.expected().slopes(means, sds))
                .toList();
        Map<String, double[]> expected = Map.of(
                "lift", new double[] {-.2818, 0, 0, 0},
                "lift of landing flap", new double[] {-.1365, 0, 0, 0},
                "drag", new double[] {0, .1749, -.0209, .1355},
                "drag of clean", new double[] {0, .1312, -.0157, 0},
                "drag of airbrake", new double[] {0, 0, 0, .1016},
                "density of one", new double[] {-4.2925, .3240, -.0386, .7221},
                "wind of one", new double[] {-1, 0, -1, .1105},
                "ln speed clean", new double[] {0, 2.0465, 11.6457, 0},
                "ln speed airbrake", new double[] {0, 0, 0, 1.2231});
        expected.forEach((factor, slopes) -> {
            for (int i = 0; i < slopes.length; i++) {
                assertThat(rows.get(i)[place(factor)])
                        .as(factor + " " + i)
                        .isCloseTo(slopes[i], Offset.offset(1e-3 * Math.max(0.1, Math.abs(slopes[i]))));
            }
        });
        double weight = demo.factors.all().get(place("weight with small")).sd();
        assertThat(rows.get(0)[place("weight with small")] * weight).isCloseTo(.0261, Offset.offset(6e-5));
    }

    /** All readings right: the textbook's linear update of a normal state. */
    @Test
    void takesOneStraightStep() {
        double[] means = demo.factors.means();
        double[] sds = demo.factors.all().stream().mapToDouble(Factor::sd).toArray();
        Linearised.Update update =
                Linearised.at(means, means, sds, readings(8.61111)).update();
        assertThat(update.square()).isCloseTo(3.9435, withPercentage(TOLERANCE));
        Map.of(
                        "lift", -.5054,
                        "lift of landing flap", -.2448,
                        "drag", .6088,
                        "drag of clean", .0903,
                        "drag of airbrake", .3664,
                        "wind of one", .9158)
                .forEach((factor, z) ->
                        assertThat(update.mean()[place(factor)]).as(factor).isCloseTo(z, Offset.offset(1e-3)));
    }

    @Test
    void knowsThisAfterIt() {
        Posterior posterior = learn(8.61111);
        assertThat(posterior.converged()).isTrue();
        row(posterior, Kind.STALL, "clean", 9.2288, 8.7047, 9.7835);
        row(posterior, Kind.STALL, "take-off flap", 9.0166, 8.5046, 9.5585);
        row(posterior, Kind.STALL, "landing flap", 8.7568, 8.2672, 9.2740);
        row(posterior, Kind.STALL, "airbrake", 8.9826, 8.4726, 9.5225);
        row(posterior, Kind.DESCENT, "clean", 7.4381, 6.2106, 8.9034);
        row(posterior, Kind.DESCENT, "take-off flap", 8.5390, 6.8329, 10.6687);
        row(posterior, Kind.DESCENT, "landing flap", 10.8950, 8.7050, 13.6316);
        row(posterior, Kind.DESCENT, "airbrake", 18.0946, 14.7160, 22.2308);
        row(posterior, Kind.ELEVATOR, "clean", -3.3964, -5.5203, -1.2726);
        row(posterior, Kind.ELEVATOR, "airbrake", 6.4832, 3.8527, 9.1137);
        row(posterior, Kind.ROLL, "clean", 85.0616, 69.0627, 104.7659);
        row(posterior, Kind.ROLL, "airbrake", 63.9922, 51.9562, 78.8159);
        Map.of("stall landing flap", 0.0245, "glide clean", 0.0006, "path airbrake", 0.0082, "wind of one", 0.0165)
                .forEach((source, wrong) ->
                        assertThat(posterior.wrong().get(source)).as(source).isCloseTo(wrong, Offset.offset(1e-4)));
        assertThat(z(posterior, "wind of one")).isCloseTo(0.9117, withPercentage(TOLERANCE));
        assertThat(posterior.parts().get(0).weight()).isCloseTo(.95078, withPercentage(TOLERANCE));
    }

    @Test
    void doubtsOneWrongValue() {
        Posterior posterior = learn(55 / 3.6);
        row(posterior, Kind.STALL, "clean", 9.0887, 8.5578, 9.6525);
        row(posterior, Kind.STALL, "landing flap", 8.5933, 8.0914, 9.1263);
        row(posterior, Kind.STALL, "airbrake", 8.8463, 8.3295, 9.3951);
        row(posterior, Kind.DESCENT, "clean", 6.9642, 5.7565, 8.4258);
        row(posterior, Kind.DESCENT, "landing flap", 10.2875, 8.1742, 12.9470);
        row(posterior, Kind.DESCENT, "airbrake", 16.9047, 13.6452, 20.9399);
        assertThat(posterior.wrong().get("stall landing flap")).isCloseTo(1, Offset.offset(1e-4));
        assertThat(posterior.misses().get(0)).isCloseTo(7.0374, withPercentage(TOLERANCE));
        assertThat(z(posterior, "wind of one")).isCloseTo(1.7366, withPercentage(TOLERANCE));
    }

    /** Before any flight: the bands themselves. */
    @Test
    void saysTheBandsWithoutReadings() {
        Posterior posterior = MixtureUpdate.learn(demo.factors.all(), List.of());
        row(posterior, Kind.STALL, "clean", 9.0816, 8.5510, 9.6452);
        row(posterior, Kind.STALL, "landing flap", 8.5850, 8.0834, 9.1178);
        row(posterior, Kind.DESCENT, "landing flap", 9.9709, 7.6656, 12.9696);
        row(posterior, Kind.DESCENT, "airbrake", 15.9770, 12.1686, 20.9773);
        row(posterior, Kind.ELEVATOR, "take-off flap", -0.7400, -2.8898, 1.4098);
        row(posterior, Kind.ELEVATOR, "airbrake", 6.3, 3.6578, 8.9422);
        row(posterior, Kind.ROLL, "take-off flap", 80.6275, 65.4296, 99.3557);
    }

    @Test
    void doesNotCareForTheOrder() {
        Posterior one = learn(55 / 3.6);
        List<Reading> turned = readings(55 / 3.6);
        java.util.Collections.reverse(turned);
        Posterior other = MixtureUpdate.learn(demo.factors.all(), turned);
        assertThat(other.state()).containsExactly(one.state());
        assertThat(other.misses().get(3)).isEqualTo(one.misses().get(0));
    }
}
