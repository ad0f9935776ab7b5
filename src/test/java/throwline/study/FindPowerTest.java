package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.section.MeasuredSections;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundTakeOff;
import throwline.sizing.Limit;
import throwline.sizing.PoweredWants;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;

/** Take-off runs and climbs that are asked for: through a comparison, against a grid, and what cannot be had. */
class FindPowerTest {

    private static final double DEGREE = Math.toRadians(1);
    private static final Model MODEL = Examples.read("orchard");

    private static FindResult find(PoweredWants wants) {
        FindQuestion question = new FindQuestion(
                MODEL.packs().get(0),
                "found",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                wants);
        return new FindStudy(new MeasuredSections(), Bands.load()).find(MODEL, Examples.AIRFOILS, question);
    }

    private static FindResult takeOff(double run) {
        return find(new PoweredWants(Optional.of(run), Optional.empty()));
    }

    private static FindResult climb(double value, As as) {
        return find(new PoweredWants(Optional.empty(), Optional.of(new WantedClimb(value, as))));
    }

    private static double number(SetUpResult result, FlightQuantity quantity) {
        return ((Headline.Known) result.number(quantity)).value();
    }

    /** Take-off runs of the model with its flaps at these angles, as a comparison has them. */
    private static List<Double> runs(double... flaps) {
        List<SetUp> setUps = DoubleStream.of(flaps)
                .mapToObj(flap -> new SetUp("flap " + flap, Map.of("flaps", flap), 0))
                .toList();
        return new ComparisonStudy(new MeasuredSections(), Bands.load())
                        .compare(
                                MODEL.withSetUps(setUps),
                                Examples.AIRFOILS,
                                List.of(MODEL.packs().get(0)))
                        .packs()
                        .get(0)
                        .setUps()
                        .stream()
                        .map(result -> number(result, FlightQuantity.TAKE_OFF_RUN))
                        .toList();
    }

    @Test
    void a_comparison_takes_off_within_the_wanted_run_and_less_flap_does_not() {
        double clean = runs(0, 0.1).get(0);
        double wanted = 0.975 * clean;
        FindResult result = takeOff(wanted);
        FoundTakeOff found = result.takeOff().orElseThrow().found().orElseThrow();
        assertThat(result.isMet()).isTrue();
        SetUpResult flown = result.flown().orElseThrow().packs().get(0).setUps().get(1);
        assertThat(number(flown, FlightQuantity.TAKE_OFF_RUN)).isLessThanOrEqualTo(wanted);
        double flap = found.found().flap();
        assertThat(flap).isPositive();
        // Every whole share of the flap less is not enough; a finer answer is not promised.
        assertThat(runs(0.2 * flap, 0.4 * flap, 0.6 * flap, 0.8 * flap, flap - 0.5 * DEGREE))
                .allMatch(run -> run > wanted);
        assertThat(result.proposed()).extracting(SetUp::name).containsExactly("found");
    }

    @Test
    void no_flap_is_needed_where_the_clean_model_is_short_enough() {
        FindResult result = takeOff(30);
        assertThat(result.isMet()).isTrue();
        assertThat(result.proposed()).isEmpty();
        assertThat(result.takeOff().orElseThrow().throwBand()).isEmpty();
    }

    @Test
    void the_nearest_to_a_run_that_cannot_be_had_is_the_shortest_of_a_grid() {
        FindResult result = takeOff(1);
        FoundTakeOff found = result.takeOff().orElseThrow().found().orElseThrow();
        assertThat(result.isMet()).isFalse();
        assertThat(found.why()).containsExactly(Limit.BEST_REACHED);
        assertThat(runs(0, 10 * DEGREE, 20 * DEGREE, 30 * DEGREE, 40 * DEGREE, 50 * DEGREE, 60 * DEGREE))
                .allMatch(run -> run > found.found().run() - 0.02);
    }

    /** The hand's throttle flies the same model: at the throttle found and its speed it climbs as wanted, with less it does not. */
    @Test
    void the_throttle_for_a_climb() {
        for (As as : As.values()) {
            double wanted = as == As.ANGLE ? 8 * DEGREE : 1.5;
            FoundClimb found = climb(wanted, as).climb().orElseThrow().found();
            WantedClimb want = new WantedClimb(wanted, as);
            FoundClimb.Climb enough = found.enough().orElseThrow();
            assertThat(enough.worth(want)).isBetween(wanted, wanted * 1.03);
            assertThat(enough.throttle()).isLessThan(found.full().orElseThrow().throttle());
            assertThat(found.mostFlap().orElseThrow()).isPositive();
        }
    }

    @Test
    void a_climb_in_the_take_off_set_up_is_that_of_a_comparison() {
        double clean = runs(0, 0.1).get(0);
        FindResult result =
                find(new PoweredWants(Optional.of(0.975 * clean), Optional.of(new WantedClimb(1, As.RATE))));
        SetUpResult flown = result.flown().orElseThrow().packs().get(0).setUps().get(1);
        FoundClimb climb = result.climb().orElseThrow().found();
        assertThat(climb.in().name()).isEqualTo("found");
        assertThat(climb.full().orElseThrow().rate()).isCloseTo(number(flown, FlightQuantity.CLIMB_RATE), within(1e-3));
    }

    @Test
    void a_climb_that_cannot_be_had_names_the_best() {
        FoundClimb found = climb(12, As.RATE).climb().orElseThrow().found();
        assertThat(found.met()).isFalse();
        assertThat(found.why()).containsExactly(Limit.FULL_THROTTLE);
        assertThat(found.mostFlap()).isEmpty();
        assertThat(found.best().orElseThrow().climb().rate())
                .isGreaterThanOrEqualTo(found.full().orElseThrow().rate());
    }

    @Test
    void a_model_without_a_motor_is_told_what_to_add() {
        Model glider = Examples.read("saltmarsh");
        FindQuestion question = new FindQuestion(
                glider.packs().get(0),
                "found",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new PoweredWants(Optional.of(10.0), Optional.empty()));
        assertThat(FindRefusal.of(glider, question).orElseThrow().code()).isEqualTo("note.find.no-motor");
    }
}
