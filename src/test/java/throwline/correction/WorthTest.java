package throwline.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What further measurements would leave of four bands, after the worked flight (COMPUTED in Python, own code). */
class WorthTest {

    private final DemoAeroplane demo = new DemoAeroplane();
    private Posterior known = MixtureUpdate.learn(List.of(), List.of());

    @BeforeEach
    void flyTheWorkedFlight() {
        DayFactors day = DayFactors.of(demo.factors, "one", 2.0, 1.0, 0);
        int cleanSpeed = demo.speed("ln speed clean", 11.806138, 0.10);
        int brakeSpeed = demo.speed("ln speed airbrake", 11.491251, 0.10);
        Expected clean = new Expected(demo.in("clean"), day);
        known = MixtureUpdate.learn(
                demo.factors.all(),
                List.of(
                        new Reading(
                                "stall",
                                8.61111,
                                0.65294,
                                new Expected(demo.in("landing flap"), day).stallOverGround(1)),
                        new Reading("glide", 1.5, 0.21478, clean.sink(cleanSpeed)),
                        new Reading("glide", 10.5, 0.29548, clean.overGround(cleanSpeed, 1)),
                        new Reading(
                                "path",
                                Math.log(0.4),
                                0.15,
                                new Expected(demo.in("airbrake"), day).path(brakeSpeed, 1))));
    }

    private DayFactors day(double wind, double sd) {
        return DayFactors.of(demo.factors, "next", wind, sd, 0);
    }

    private void leaves(List<Reading> readings, double stall, double descent, double roll, double elevator) {
        leaves(readings, 1e-3, stall, descent, roll, elevator);
    }

    private void leaves(
            List<Reading> readings, double within, double stall, double descent, double roll, double elevator) {
        Worth worth = new Worth(known, demo.factors);
        FlownRows landing = new FlownRows(demo.in("landing flap"), 1.3);
        FlownRows brake = new FlownRows(demo.in("airbrake"), 1.3);
        double[] expected = {stall, descent, roll, elevator};
        List<Expectation> rows = List.of(landing.stall(), brake.descent(), brake.roll("full"), brake.elevator());
        for (int i = 0; i < expected.length; i++) {
            assertThat(worth.left(rows.get(i), 0, readings))
                    .as("row " + i)
                    .isCloseTo(expected[i], Offset.offset(within));
        }
    }

    private Reading stall(String setUp, double sd, DayFactors day) {
        return new Reading("next", 8, sd, new Expected(demo.in(setUp), day).stallOverGround(1));
    }

    @Test
    void tellsLittleByOneStallInAWindToldByEye() {
        leaves(List.of(stall("landing flap", 0.65294, day(2, 1))), 0.9687, 0.9981, 0.9985, 0.9988);
    }

    @Test
    void tellsMoreInCalmAir() {
        leaves(List.of(stall("landing flap", 0.65294, day(0, 0.3))), 0.9202, 0.9952, 0.9962, 0.9970);
    }

    @Test
    void tellsMoreBothWays() {
        leaves(List.of(stall("landing flap", Math.hypot(0.45, 0.2575), day(0, 0.3))), 0.8908, 0.9936, 0.9948, 0.9959);
    }

    @Test
    void tellsOfOneSetUpByAnother() {
        leaves(List.of(stall("clean", Math.hypot(0.45, 0.2725), day(0, 0.3))), 0.9252, 0.9922, 0.9943, 0.9955);
    }

    @Test
    void tellsOfWeightOnAScale() {
        int weight = demo.aeroplane.weight("small");
        leaves(List.of(new Reading("scale", 0, 0.005 / DemoAeroplane.MASS, x -> x[weight])), 0.9969, 1, 0.9998, 1);
    }

    @Test
    void tellsOfTheTrimOnTheBench() {
        int speed = demo.speed("ln speed trim", 11.160498, 0.08);
        Expected landing = new Expected(demo.in("landing flap"), day(2, 1));
        leaves(List.of(new Reading("next", 0, Math.toRadians(0.9), landing.elevator(speed))), 1, 1, 1, 0.9041);
    }

    @Test
    void tellsOfTheRollByAStopwatch() {
        int speed = demo.speed("ln speed roll", 11.806138, 0.08);
        Expected clean = new Expected(demo.in("clean"), day(2, 1));
        leaves(List.of(new Reading("next", 4, 0.25, clean.rollTime("full", 1, speed, 0.15))), 1, 1, 0.8791, 1);
    }

    /** Thirty metres in nine seconds, timed by hand; how the figures add up to a sink rate is not told with the table. */
    @Test
    void tellsOfTheDescentByOneGlide() {
        leaves(glide(1.0, 5, 0.3, 0.2, day(2, 1)), 0.01, 0.9992, 0.8588, 1, 1);
    }

    @Test
    void tellsMuchByFourGlidesBothWays() {
        leaves(glide(0.5, 2.5, 0.15, 0.1, day(0, 0.3)), 0.03, 0.9983, 0.6559, 0.9999, 0.9999);
    }

    private List<Reading> glide(double height, double distance, double time, double air, DayFactors day) {
        double seconds = 9;
        int speed = demo.speed("ln speed next", 11.491251, 0.10);
        Expected brake = new Expected(demo.in("airbrake"), day);
        double along =
                11.491251 * Math.cos(Math.toRadians(15.977)) - demo.factors.means()[day.wind()];
        double sink =
                Math.sqrt(Math.pow(height / seconds, 2) + Math.pow(30 * time / (seconds * seconds), 2) + air * air);
        double ground = Math.hypot(distance / seconds, along * time / seconds);
        return List.of(
                new Reading("next", 3, sink, brake.sink(speed)),
                new Reading("next", 9, ground, brake.overGround(speed, 1)));
    }

    /** So many stalls in landing flap before anything else was flown: what is left of its own band and of another's. */
    @ParameterizedTest
    @CsvSource({
        "GPS, 1, 0.97, 0.98",
        "GPS, 2, 0.96, 0.98",
        "GPS, 4, 0.96, 0.97",
        "GPS, 10, 0.96, 0.97",
        "BOTH_WAYS, 1, 0.87, 0.92",
        "BOTH_WAYS, 2, 0.82, 0.88",
        "BOTH_WAYS, 4, 0.77, 0.86",
        "BOTH_WAYS, 6, 0.75, 0.84",
        "BOTH_WAYS, 10, 0.73, 0.83"
    })
    void tellsMoreByMoreStalls(Way way, int times, double own, double other) {
        DemoAeroplane fresh = new DemoAeroplane();
        Posterior nothing = MixtureUpdate.learn(fresh.factors.all(), List.of());
        Reading reading = stalls(fresh, way, times);
        Worth worth = new Worth(nothing, fresh.factors);
        Expectation landing = new FlownRows(fresh.in("landing flap"), 1.3).stall();
        Expectation brake = new FlownRows(fresh.in("airbrake"), 1.3).stall();
        assertThat(worth.left(landing, 0, List.of(reading))).isCloseTo(own, Offset.offset(0.0051));
        assertThat(worth.left(brake, 0, List.of(reading))).isCloseTo(other, Offset.offset(0.0051));
    }

    /** Ways to read a stall speed. */
    enum Way {
        GPS,
        BOTH_WAYS
    }

    private static Reading stalls(DemoAeroplane fresh, Way way, int times) {
        double called = Math.hypot(0.6, 0.03 * 8.585);
        boolean guessed = way == Way.GPS;
        DayFactors day = DayFactors.of(fresh.factors, "next", guessed ? 2 : 0, guessed ? 1 : 0.3, 0);
        Expected landing = new Expected(fresh.in("landing flap"), day);
        double sd = called / Math.sqrt((guessed ? 1 : 2) * times);
        return new Reading("next", 8, sd, landing.stallOverGround(1));
    }
}
