package throwline.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one value that is off does to a stall band, and what several do that agree (COMPUTED in Python, own code). */
class WrongValuesTest {

    private static final double PREDICTED = 8.584998;

    private static Reading stall(DemoAeroplane demo, String source, double off, double sd) {
        DayFactors day = DayFactors.of(demo.factors, "one", 2, 1, 0);
        return new Reading(source, PREDICTED + off, sd, new Expected(demo.in("landing flap"), day).stall());
    }

    private static RowBand band(DemoAeroplane demo, List<Reading> readings) {
        Posterior posterior = MixtureUpdate.learn(demo.factors.all(), readings);
        return RowBand.of(posterior, new FlownRows(demo.in("landing flap"), 1.3).stall(), 0, 1);
    }

    private static double shift(RowBand band) {
        return Math.exp(band.after()) - PREDICTED;
    }

    private static double halfWidth(RowBand band) {
        return (Math.exp(band.highAfter()) - Math.exp(band.lowAfter())) / 2;
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 0.25, .307, .333, .014",
        "1.0, 0.25, .564, .490, .107",
        "1.5, 0.25, .158, .765, .842",
        "2.0, 0.25, .020, .517, .999",
        "3.0, 0.25, .028, .516, 1.0",
        "5.0, 0.25, .047, .518, 1.0",
        "10.0, 0.25, .095, .520, 1.0",
        "0.5, 0.65, .095, .470, .008",
        "1.0, 0.65, .191, .476, .017",
        "1.5, 0.65, .280, .491, .051",
        "2.0, 0.65, .311, .560, .217",
        "3.0, 0.65, .026, .541, .969",
        "5.0, 0.65, .015, .517, 1.0",
        "10.0, 0.65, .030, .518, 1.0"
    })
    void movesItOnlySoFar(double off, double sd, double shift, double half, double wrong) {
        DemoAeroplane demo = new DemoAeroplane();
        List<Reading> one = List.of(stall(demo, "stall", off, sd));
        RowBand band = band(demo, one);
        assertThat(shift(band)).isCloseTo(shift, Offset.offset(0.0015));
        assertThat(halfWidth(band)).isCloseTo(half, Offset.offset(0.0015));
        Posterior posterior = MixtureUpdate.learn(demo.factors.all(), one);
        assertThat(posterior.wrong().get("stall")).isCloseTo(wrong, Offset.offset(0.0015));
    }

    @ParameterizedTest
    @CsvSource({"1.5, .158, 1.105, 1.270, 1.321", "2.0, .020, .056, 1.511, 1.774", "3.0, .028, .056, .084, 2.694"})
    void givesWayToThreeOrFourThatAgree(double off, double one, double two, double three, double four) {
        double[] expected = {one, two, three, four};
        for (int n = 1; n <= 4; n++) {
            DemoAeroplane demo = new DemoAeroplane();
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                readings.add(stall(demo, "stall " + i, off, 0.25));
            }
            assertThat(shift(band(demo, readings)))
                    .as(n + " readings")
                    .isCloseTo(expected[n - 1], Offset.offset(0.0015));
        }
    }

    /** The largest shift by any single value up to 10 m/s off is 1.33 half-widths of the band before. */
    @Test
    void isNeverMovedFarByOneValue() {
        for (double sd : new double[] {0.1, 0.25, 0.65}) {
            for (double off = 0.1; off < 10; off += 0.1) {
                DemoAeroplane demo = new DemoAeroplane();
                RowBand band = band(demo, List.of(stall(demo, "stall", off, sd)));
                assertThat(shift(band)).isLessThan(1.345 * 0.517);
            }
        }
    }

    /**
     * A clean normal update in closed form: with gain k = s^2/(s^2 + r^2) the own row moves by k d and other set-ups by
     * c^2 k d, what is left of their standard deviations is sqrt(1 - k) and sqrt(1 - c^4 k).
     */
    @Test
    void agreesWithTheClosedFormOfOneReading() {
        double s = 0.06 / 1.6448536;
        double r = 0.04;
        double k = s * s / (s * s + r * r);
        assertThat(k).isCloseTo(0.454037, Offset.offset(1e-6));
        Factors factors = new Factors();
        Aeroplane aeroplane = new Aeroplane(factors);
        SetUpErrors errors = new SetUpErrors(
                SetUpErrors.Share.of(s, 0.9),
                SetUpErrors.Share.of(1, 0),
                SetUpErrors.Share.of(1, 0),
                SetUpErrors.Share.of(1, 0));
        aeroplane.add("own", errors);
        aeroplane.add("other", errors);
        List<Factor> all = factors.all();
        double[] means = factors.means();
        double[] sds = all.stream().mapToDouble(Factor::sd).toArray();
        Reading seen = new Reading("seen", Math.log(1.08), r, x -> aeroplane.lift(x, "own"));
        Linearised.Update update =
                Linearised.at(means, means, sds, List.of(seen)).update();
        Posterior normal = new Posterior(
                all,
                update.mean(),
                List.of(new Posterior.Part(List.of(), 1, update.mean(), update.covariance())),
                java.util.Map.of(),
                List.of(),
                0,
                1,
                true);
        RowBand own = RowBand.of(normal, x -> aeroplane.lift(x, "own"), 0, 1);
        RowBand other = RowBand.of(normal, x -> aeroplane.lift(x, "other"), 0, 1);
        assertThat(own.after()).isCloseTo(0.034943, Offset.offset(1e-6));
        assertThat(other.after()).isCloseTo(0.028304, Offset.offset(1e-6));
        assertThat((own.highAfter() - own.lowAfter()) / 2).isCloseTo(0.044334, Offset.offset(2e-6));
        assertThat((other.highAfter() - other.lowAfter()) / 2).isCloseTo(0.050275, Offset.offset(2e-6));
    }
}
