package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static throwline.study.Examples.value;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.flight.PathPoint;
import throwline.model.Field;
import throwline.model.Model;
import throwline.model.Stick;
import throwline.section.MeasuredSections;
import throwline.study.FieldAnswer.FitFor;
import throwline.study.FieldAnswer.Legs;

/** Landings that flyers ask about (PRACTICE, methods manual 18.3 to 18.5, 18.13 and 18.14). */
class LandingStoriesTest {

    private static List<SetUpResult> results;

    private static Model with(Model m, Field field) {
        return new Model(
                m.name(),
                m.packs().subList(0, 1),
                m.wing(),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                field,
                m.setUps(),
                m.sticks());
    }

    private static Field field(double obstacle, double wind) {
        return new Field(Field.Ground.SHORT_GRASS, OptionalDouble.of(60), obstacle, 0, OptionalDouble.empty(), wind);
    }

    /** Methods manual 18.4: a 60 m strip behind a 5 m hedge, short grass (friction 0.08), still air and 3 m/s. */
    @BeforeAll
    static void land() {
        Model model = with(Examples.read("orchard"), field(5, 3));
        results = Examples.compare(model, new MeasuredSections()).packs().get(0).setUps();
    }

    private static Legs still(SetUpResult result) {
        return result.field().stillAir().orElseThrow();
    }

    /** Methods manual 10.6: the legs add up to the total; the wind shortens it; steeper set-ups need less field. */
    @Test
    void howMuchField() {
        for (SetUpResult result : results) {
            Legs legs = still(result);
            assertThat(legs.clearsObstacle()).isTrue();
            assertThat(legs.touchdown() + legs.roll())
                    .isCloseTo(value(result.number(FlightQuantity.LANDING_DISTANCE)), withPercentage(1e-9));
            assertThat(value(result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND)))
                    .isLessThan(0.85 * value(result.number(FlightQuantity.LANDING_DISTANCE)));
            double straight = (5 - legs.roundOutHeight()) / Math.tan(value(result.descentAngle()));
            assertThat(legs.approach()).as(result.setUp().name()).isCloseTo(straight, withPercentage(3));
        }
        assertThat(results.stream()
                        .map(r -> -value(r.number(FlightQuantity.LANDING_DISTANCE)))
                        .toList())
                .isSorted();
    }

    /** A stick that brings the elevator nearly nowhere is named; one that brings it to its stop is not. */
    @ParameterizedTest
    @CsvSource({"2, true", "45, false"})
    void aStickThatDoesNotReach(double degrees, boolean named) {
        Model orchard = with(Examples.read("orchard"), field(5, 0));
        Stick stick = new Stick.Pull("pull", Map.of(), -Math.toRadians(degrees), List.of());
        Model model = new Model(
                orchard.name(),
                orchard.packs(),
                orchard.wing(),
                orchard.tail(),
                orchard.body(),
                orchard.wheels(),
                orchard.propeller(),
                orchard.field(),
                orchard.setUps(),
                List.of(stick));
        for (SetUpResult result :
                Examples.compare(model, new MeasuredSections()).packs().get(0).setUps()) {
            assertThat(result.isNoted("note.stick-short")).isEqualTo(named);
        }
    }

    /** An error of the airspeed is one of the speed over the ground, which is less against the wind (closed form). */
    @Test
    void theBandIsWiderAgainstTheWind() {
        for (SetUpResult result : results) {
            double ahead = value(result.approachSpeed()) * Math.cos(value(result.descentAngle()));
            Headline.Known still = (Headline.Known) result.number(FlightQuantity.LANDING_DISTANCE);
            Headline.Known windy = (Headline.Known) result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND);
            assertThat(windy.high() / windy.value() - 1)
                    .isCloseTo((still.high() / still.value() - 1) * ahead / (ahead - 3), withPercentage(1e-6));
        }
    }

    /** Wind up to what a model file may say: where it is faster than the model there is no landing, and all else stays. */
    @ParameterizedTest
    @ValueSource(doubles = {9, 12, 13, 18, 25})
    void windFasterThanTheModel(double wind) {
        Model model = with(Examples.read("orchard"), field(6, wind));
        for (SetUpResult result :
                Examples.compare(model, new MeasuredSections()).packs().get(0).setUps()) {
            FieldAnswer answer = result.field();
            assertThat(value(result.stallSpeed())).isPositive();
            assertThat(value(result.number(FlightQuantity.LANDING_DISTANCE))).isPositive();
            if (wind >= value(result.approachSpeed())) {
                assertThat(result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND))
                        .isEqualTo(new Headline.Unknown("why.wind-faster"));
                assertThat(answer.inWind()).isEmpty();
            } else if (result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND) instanceof Headline.Known known) {
                assertThat(known.value()).isPositive();
                List<PathPoint> way = answer.inWind().orElseThrow().way();
                for (int i = 1; i < way.size(); i++) {
                    assertThat(way.get(i).along())
                            .isGreaterThanOrEqualTo(way.get(i - 1).along());
                }
            }
        }
    }

    /** Methods manual 18.4: a hedge lower than the round-out must be told about; its height decides. */
    @Test
    void theRoundOutBeginsAboveALowHedge() {
        Model low = with(Examples.read("orchard"), field(1, 0));
        List<SetUpResult> overLow =
                Examples.compare(low, new MeasuredSections()).packs().get(0).setUps();
        SetUpResult airbrake = overLow.get(3);
        assertThat(still(airbrake).roundOutHeight()).isGreaterThan(1);
        assertThat(still(airbrake).clearsObstacle()).isFalse();
        assertThat(airbrake.notes().stream().map(n -> n.code())).contains("note.flare-above-obstacle");
        assertThat(overLow.get(0).notes().stream().map(n -> n.code())).doesNotContain("note.flare-above-obstacle");
    }

    /** Methods manual 10.2: the round-out of every set-up is near the arc of its own speed and angle at 1.3 g. */
    @Test
    void whereToRoundOut() {
        for (SetUpResult result : results) {
            double speed = value(result.approachSpeed());
            double arc = speed * speed / (9.80665 * 0.3) * (1 - Math.cos(value(result.descentAngle())));
            assertThat(value(result.number(FlightQuantity.FLARE_HEIGHT)) - 0.15)
                    .as(result.setUp().name())
                    .isBetween(0.7 * arc, 1.3 * arc);
        }
    }

    /** Methods manual 18.5: ranked, and set-ups less than 15 % apart are not told apart. */
    @Test
    void whichLandsShortest() {
        for (SetUpResult a : results) {
            Headline.Known band = (Headline.Known) a.number(FlightQuantity.LANDING_DISTANCE);
            assertThat(band.high() / band.value()).isGreaterThanOrEqualTo(1.15);
            assertThat(band.low() / band.value()).isLessThanOrEqualTo(0.85);
        }
        Model model = with(Examples.read("orchard"), field(5, 3));
        FlyResult fly = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(
                        model,
                        Examples.AIRFOILS,
                        model.packs().get(0),
                        model.setUps().get(2),
                        FlyQuestion.open());
        List<Handling.Rank> ranking = fly.handling().ranking();
        assertThat(ranking).hasSize(4);
        assertThat(ranking.stream().map(rank -> rank.landing().value()).toList())
                .isSorted();
        for (Handling.Rank rank : ranking) {
            SetUpResult same = results.stream()
                    .filter(r -> r.setUp().name().equals(rank.setUp()))
                    .findFirst()
                    .orElseThrow();
            assertThat(rank.landing().value())
                    .isCloseTo(value(same.number(FlightQuantity.LANDING_DISTANCE)), withPercentage(1));
        }
    }

    /**
     * Methods manual 18.14: from 1.5 m down to 0.1 m each set-up glides further with the ground below than without, and the float with
     * it is longer; a flat glider gains more than a steep one.
     */
    @Test
    void howItFloats() {
        for (SetUpResult result : results) {
            Legs legs = still(result);
            double free = 1.4 / Math.tan(value(result.descentAngle()));
            assertThat(legs.glideWithoutGround()).as(result.setUp().name()).isCloseTo(free, withPercentage(1));
            assertThat(legs.glideLow()).isGreaterThan(legs.glideWithoutGround());
            assertThat(legs.floated()).isGreaterThanOrEqualTo(legs.floatedWithoutGround());
        }
        Legs clean = still(results.get(0));
        Legs airbrake = still(results.get(3));
        assertThat(clean.floated()).isGreaterThan(5 * airbrake.floated());
        assertThat(clean.glideLow() / clean.glideWithoutGround())
                .isGreaterThan(airbrake.glideLow() / airbrake.glideWithoutGround());
    }

    /** Methods manual 18.13: entry at 15, 20 and 25 m/s, with and without flaps mixed to the stick; what limits it is named. */
    @Test
    void howTightItLoops() {
        Model model = Examples.read("saltmarsh");
        throwline.flight.Airframe airframe =
                new throwline.flight.Airframe(model, Examples.AIRFOILS, new MeasuredSections());
        throwline.flight.Flight flight = new throwline.flight.Flight(airframe, model.reference());
        throwline.flight.Stall stall = flight.stall(model.packs().get(0)).orElseThrow();
        List<Handling.Loop> loops = new PullStudy(flight, model.packs().get(0), model.reference(), stall, Bands.load())
                .at(List.of(15.0, 20.0, 25.0))
                .loops();
        assertThat(loops).hasSize(6);
        for (int i = 0; i < 3; i++) {
            Handling.Loop plain = loops.get(i);
            Handling.Loop flapped = loops.get(i + 3);
            assertThat(plain.speed()).isEqualTo(flapped.speed()).isEqualTo(15 + 5 * i);
            assertThat(flapped.wingLoad()).as("flaps give the wing more").isGreaterThan(plain.wingLoad());
            for (Handling.Loop loop : List.of(plain, flapped)) {
                double limit =
                        switch (loop.limit()) {
                            case WING -> loop.wingLoad();
                            case ELEVATOR -> loop.elevatorLoad().orElseThrow();
                            case TAIL -> loop.tailLoad().orElseThrow();
                        };
                assertThat(loop.load()).isEqualTo(limit);
                assertThat(loop.radius())
                        .isCloseTo(loop.speed() * loop.speed() / (9.80665 * (limit - 1)), withPercentage(0.01));
            }
        }
    }

    /** Methods manual 18.3: less than 2 m/s of gust is for calm air, and six tenths of the approach speed is the most wind. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline"})
    void whatWindItTakes(String name) {
        for (SetUpResult result : Examples.compare(name).packs().get(0).setUps()) {
            FieldAnswer.Margins margins = result.field().margins().orElseThrow();
            double gust = value(result.number(FlightQuantity.GUST_LIMIT));
            assertThat(margins.fitFor() == FitFor.CALM).isEqualTo(gust < 2);
            assertThat(result.notes().stream().anyMatch(n -> n.code().equals("note.gusts-calm")))
                    .isEqualTo(gust < 2);
            assertThat(margins.headwindLimit()).isCloseTo(0.6 * value(result.approachSpeed()), withPercentage(0.01));
            assertThat(gust).isCloseTo(value(result.approachSpeed()) * Math.tan(margins.angle()), withPercentage(0.01));
            assertThat(margins.speed() / value(result.approachSpeed())).isCloseTo(0.3 / 1.3, withPercentage(0.1));
        }
    }
}
