package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.BenchThrow;
import throwline.section.MeasuredSections;
import throwline.sizing.MixCurve;
import throwline.sizing.RollHelp;
import throwline.sizing.SetUpWants.WantedRoll;

/** Questions that flyers ask (PRACTICE, methods manual 18): mix curves, throws and rates. */
class FindStoriesTest {

    private static final double DEGREE = Math.toRadians(1);

    private static FindResult find(Model model, Optional<WantedRoll> roll, Optional<FindQuestion.LevelTrim> trim) {
        FindQuestion question = new FindQuestion(
                model.packs().get(0), "found", Optional.empty(), roll, trim, Optional.empty(), Optional.empty());
        return new FindStudy(new MeasuredSections(), Bands.load()).find(model, Examples.AIRFOILS, question);
    }

    private static MixCurve mix(Model model, String setUp, Optional<Double> speed, Optional<Integer> points) {
        SetUp to = model.setUps().stream()
                .filter(s -> s.name().equals(setUp))
                .findFirst()
                .orElseThrow();
        return find(model, Optional.empty(), Optional.of(new FindQuestion.LevelTrim(Optional.of(to), speed, points)))
                .levelTrim()
                .flatMap(FindResult.TrimFound::curve)
                .orElseThrow();
    }

    /**
     * Methods manual 18.7: the elevator of each mode at three speeds at least, and with its sign: down elevator when flaps come down
     * on these models, more of it at first than at the end (methods manual 17.2: the curve of an airbrake is steep in its first
     * third and flattens; common practice, no source).
     */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void compensation_of_an_airbrake(String name) {
        MixCurve curve = mix(Examples.read(name), "airbrake", Optional.empty(), Optional.of(7));
        assertThat(curve.points()).hasSize(7);
        assertThat(curve.points().get(0).elevator()).isZero();
        double third = curve.points().get(2).elevator();
        double end = curve.points().get(6).elevator();
        assertThat(third).isGreaterThan(end / 3);
        assertThat(end).isPositive();
        assertThat(curve.otherSpeeds()).hasSizeGreaterThanOrEqualTo(2).allMatch(s -> s.elevator() > 0);
    }

    /** Where a curve is asked for without a number of points, straight lines between its points are good to 0.2 degrees. */
    @ParameterizedTest
    @CsvSource({"orchard, take-off flap", "orchard, landing flap", "ridgeline, landing flap", "saltmarsh, airbrake"})
    void as_few_points_as_are_good_enough(String name, String setUp) {
        MixCurve curve = mix(Examples.read(name), setUp, Optional.empty(), Optional.empty());
        assertThat(curve.points()).hasSizeBetween(3, 9);
        if (curve.points().size() < 9) {
            assertThat(curve.straightError()).isLessThanOrEqualTo(0.2 * DEGREE);
        }
        // The exact elevator between two points, asked for by a finer curve, lies on the straight line to that.
        MixCurve fine = mix(Examples.read(name), setUp, Optional.of(curve.speed()), Optional.of(9));
        for (MixCurve.Point point : fine.points()) {
            assertThat(point.elevator())
                    .isCloseTo(read(curve.points(), point.lever()), within(curve.straightError() + 0.02 * DEGREE));
        }
    }

    private static double read(List<MixCurve.Point> points, double lever) {
        int i = 1;
        while (points.get(i).lever() < lever - 1e-9) {
            i++;
        }
        MixCurve.Point a = points.get(i - 1);
        MixCurve.Point b = points.get(i);
        return a.elevator() + (lever - a.lever()) / (b.lever() - a.lever()) * (b.elevator() - a.elevator());
    }

    /** Methods manual 18.9: per cent of the travel and degrees are the same throw, without loss; 18.8: the straight distance. */
    @Test
    void a_point_in_degrees_millimetres_and_per_cent() {
        Model model = Examples.read("orchard");
        MixCurve curve = mix(model, "airbrake", Optional.empty(), Optional.empty());
        double travel = 25 * DEGREE;
        double chord = 0.4 * 165;
        for (MixCurve.Point point : curve.points()) {
            BenchThrow bench = BenchThrow.ofElevator(model, "elevator", point.elevator());
            assertThat(bench.share() * travel).isCloseTo(Math.abs(point.elevator()), within(1e-9));
            assertThat(1000 * bench.distance()).isCloseTo(2 * chord * Math.sin(point.elevator() / 2), within(0.05));
        }
    }

    /**
     * Methods manual 18.12: at a fixed speed the rate is nearly linear in a small throw (NACA Report 715, READ in part): half the
     * rate takes half the throw.
     */
    @ParameterizedTest
    @CsvSource({"orchard, 12, 40", "ridgeline, 10, 20", "saltmarsh, 14, 60"})
    void half_the_rate_takes_half_the_throw(String name, double speed, double rate) {
        Model model = Examples.read(name);
        double whole = up(model, rate, speed);
        double half = up(model, rate / 2, speed);
        assertThat(half).isCloseTo(whole / 2, withPercentage(3));
    }

    private static double up(Model model, double rate, double speed) {
        Stick.Roll stick = find(model, Optional.of(new WantedRoll(rate * DEGREE, speed)), Optional.empty())
                .roll()
                .flatMap(FindResult.RollFound::found)
                .orElseThrow()
                .stick();
        return Objects.requireNonNull(stick.throwsBySurface().get("ailerons")).up();
    }

    /** Flaps that help: none is the stick alone, and every degree up to the ailerons' own throw adds. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void flaps_help_to_roll(String name) {
        Model model = Examples.read(name);
        FindQuestion question = new FindQuestion(
                model.packs().get(0),
                "found",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new FindQuestion.RollHelpWanted(Optional.empty())),
                Optional.empty());
        FindResult result =
                new FindStudy(new MeasuredSections(), Bands.load()).find(model, Examples.AIRFOILS, question);
        RollHelp help = result.rollHelp().orElseThrow().help().orElseThrow();
        SetUpResult clean = result.flown().orElseThrow().packs().get(0).setUps().get(0);
        assertThat(rate(clean, model.sticks().get(0).name()))
                .isCloseTo(help.points().get(0).rate(), withPercentage(1));
        assertThat(rate(clean, "found")).isCloseTo(help.best().rate(), withPercentage(1));
        assertThat(help.best().rate())
                .isEqualTo(help.points().stream()
                        .mapToDouble(RollHelp.Point::rate)
                        .max()
                        .orElseThrow());
    }

    private static double rate(SetUpResult setUp, String stick) {
        return setUp.rollRates().stream()
                .filter(r -> r.stick().equals(stick))
                .mapToDouble(r -> Examples.value(r.rate()))
                .findFirst()
                .orElseThrow();
    }
}
