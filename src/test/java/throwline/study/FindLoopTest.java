package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Stick;
import throwline.section.MeasuredSections;
import throwline.sizing.LoopHelp;
import throwline.sizing.LoopHelp.Pull;
import throwline.sizing.LoopSearch;

/** Methods manual 18.13 (PRACTICE): the tightest loop with and without flap help, its limiter named. */
class FindLoopTest {

    private static final double DEGREE = Math.toRadians(1);
    private static final double GRAVITY = 9.80665;

    private static FindResult find(Model model, Optional<Double> speed) {
        FindQuestion question = new FindQuestion(
                model.packs().get(0),
                "found",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new FindQuestion.LoopWanted(speed)));
        return new FindStudy(new MeasuredSections(), Bands.load()).find(model, Examples.AIRFOILS, question);
    }

    private static LoopHelp help(Model model, Optional<Double> speed) {
        return find(model, speed).loop().orElseThrow().help().orElseThrow();
    }

    /** Flown with {@code fly}, the stick that was found gives the same radius; flaps help; full stick keeps its margin. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void the_stick_through_fly(String name) {
        Model model = Examples.read(name);
        FindResult result = find(model, Optional.empty());
        LoopHelp help = result.loop().orElseThrow().help().orElseThrow();
        FlyResult flown = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(result.model(), Examples.AIRFOILS, result.pack(), model.reference(), FlyQuestion.open());
        assertThat(flown.handling().loops().stream()
                        .filter(l -> !l.withoutFlaps() && l.stick().equals("found") && l.speed() == help.speed()))
                .singleElement()
                .satisfies(l -> assertThat(l.radius()).isCloseTo(help.best().radius(), withPercentage(1)));
        assertThat(help.best().radius()).isLessThan(help.points().get(0).radius());
        assertThat(help.points())
                .allMatch(p -> p.setBy() == PullUp.Limit.ELEVATOR && p.angleLeft() >= LoopSearch.MARGIN);
        assertThat(help.stoppedBy()).isNotEmpty();
    }

    /**
     * At entry speeds of 15, 20 and 25 m/s: the radius is V^2 / (g (n - 1)), and without flaps the load does not exceed
     * (V / Vs)^2 but for what a higher Reynolds number and an elevator that ends the stall early bring (methods manual 12.1,
     * closed form).
     */
    @ParameterizedTest
    @CsvSource({
        "orchard, 15",
        "orchard, 20",
        "orchard, 25",
        "saltmarsh, 15",
        "saltmarsh, 25",
        "ridgeline, 15",
        "ridgeline, 20"
    })
    void closed_form(String name, double speed) {
        Model model = Examples.read(name);
        LoopHelp help = help(model, Optional.of(speed));
        double stall = new Flight(new Airframe(model, Examples.AIRFOILS, new MeasuredSections()), model.reference())
                .stall(model.packs().get(0))
                .orElseThrow()
                .speed();
        for (Pull pull : help.points()) {
            assertThat(pull.radius()).isCloseTo(speed * speed / (GRAVITY * (pull.load() - 1)), within(1e-6));
        }
        assertThat(help.points().get(0).load()).isLessThan(1.1 * Math.pow(speed / stall, 2));
    }

    /**
     * Entered slower, the same throws leave less of the angle of attack, because straight flight needs more of it already:
     * just above the speed that is named full stick is still what sets the pull, just below it is the wing. Where none is
     * named, full stick sets the pull at 1.2 stall speeds as well.
     */
    @ParameterizedTest
    @ValueSource(strings = {"saltmarsh", "orchard"})
    void the_speed_below_which_full_stick_stalls_the_wing(String name) {
        Model model = Examples.read(name);
        Pack pack = model.packs().get(0);
        FindResult result = find(model, Optional.of(25.0));
        LoopHelp help = result.loop().orElseThrow().help().orElseThrow();
        Flight flight = new Flight(new Airframe(model, Examples.AIRFOILS, new MeasuredSections()), model.reference());
        Stall stall = flight.stall(pack).orElseThrow();
        Stick.Pull stick = (Stick.Pull) result.sticks().get(0);
        if (help.stallsBelow().isEmpty()) {
            assertThat(flight.pull(stick, pack, stall, 1.2 * stall.speed())
                            .orElseThrow()
                            .limit())
                    .isEqualTo(PullUp.Limit.ELEVATOR);
            return;
        }
        double limit = help.stallsBelow().orElseThrow();
        assertThat(limit).isLessThan(help.speed());
        assertThat(flight.pull(stick, pack, stall, 1.02 * limit).orElseThrow().limit())
                .isEqualTo(PullUp.Limit.ELEVATOR);
        assertThat(flight.pull(stick, pack, stall, 0.97 * limit).orElseThrow().limit())
                .isEqualTo(PullUp.Limit.WING);
    }

    /** No other throw of elevator and flaps that keeps the margin pulls more than 1 per cent harder. */
    @ParameterizedTest
    @CsvSource({"orchard, 19", "saltmarsh, 19"})
    void nothing_pulls_harder(String name, double speed) {
        Model model = Examples.read(name);
        Pack pack = model.packs().get(0);
        LoopHelp help = help(model, Optional.of(speed));
        double mostFlap = help.points().get(help.points().size() - 1).flap();
        double travel = model.tail().elevator().travelUp();
        double best = IntStream.rangeClosed(0, 3)
                .parallel()
                .boxed()
                .flatMap(i -> {
                    Flight flight = new Flight(
                            new Airframe(model, Examples.AIRFOILS, new MeasuredSections()), model.reference());
                    Stall stall = flight.stall(pack).orElseThrow();
                    return Stream.iterate(travel, e -> e > travel / 3, e -> e - 1.5 * DEGREE)
                            .flatMap(e -> flight
                                    .pull(
                                            new Stick.Pull("grid", Map.of("flaps", mostFlap * i / 3), -e, List.of()),
                                            pack,
                                            stall,
                                            speed)
                                    .stream());
                })
                .filter(p -> p.limit() == PullUp.Limit.ELEVATOR && p.angleLeft() >= LoopSearch.MARGIN)
                .mapToDouble(PullUp::load)
                .max()
                .orElseThrow();
        assertThat(best).isLessThan(1.01 * help.best().load());
    }

    /**
     * Little more than one g bends no path into a loop: without thrust none gets round below three (Lanchester's phugoid,
     * methods manual 12.2). Well above it, the loop that is found does, flown with {@code fly}.
     */
    @ParameterizedTest
    @CsvSource({"orchard, 9.4, false", "orchard, 25, true", "ridgeline, 12, false", "saltmarsh, 26, true"})
    void a_loop_gets_over_the_top(String name, double speed, boolean round) {
        FindResult result = find(Examples.read(name), Optional.of(speed));
        FindResult.LoopFound loop = result.loop().orElseThrow();
        assertThat(loop.round() == FindResult.LoopFound.Round.THROTTLE_CLOSED).isEqualTo(round);
        assertThat(result.isMet()).isEqualTo(round);
        assertThat(result.sticks()).hasSize(round ? 1 : 0);
        assertThat(loop.help().orElseThrow().best().load())
                .satisfies(load -> assertThat(load > 3).isEqualTo(round));
    }
}
