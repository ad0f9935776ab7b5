package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PoweredFlight;
import throwline.flight.Stall;
import throwline.model.CruiseTrim;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Tail;
import throwline.section.MeasuredSections;
import throwline.study.CruiseTrimStudy.Rigged;

/** The tail's incidence from the elevator in cruise: made-up angles, closed forms of a linear tail, what is not used. */
class CruiseTrimStudyTest {

    private static final double DEGREE = Math.PI / 180;
    private static final CruiseTrimStudy STUDY = new CruiseTrimStudy(new MeasuredSections(), Bands.load());
    private static final double SPEED = 16;

    private static Model read(Model model, double elevator, OptionalDouble speed) {
        Tail t = model.tail();
        return model.with(new Tail(
                t.span(),
                t.chord(),
                t.arm(),
                t.height(),
                0,
                2 * DEGREE,
                t.fins(),
                t.position(),
                t.airfoil(),
                t.elevator(),
                java.util.Optional.of(new CruiseTrim(elevator, speed))));
    }

    private static Rigged rigged(Model model, double elevator, OptionalDouble speed) {
        return STUDY.rigged(read(model, elevator, speed), Examples.AIRFOILS);
    }

    private static Flight flight(Model model) {
        return new Flight(new Airframe(model, Examples.AIRFOILS, new MeasuredSections()), model.reference());
    }

    /** Elevator of a glide at a speed. */
    private static double gliding(Model model, double speed) {
        Flight flight = flight(model);
        Pack pack = model.packs().get(0);
        Stall stall = flight.stall(pack).orElseThrow();
        return flight.descent(pack, stall, speed).steady().orElseThrow().elevator();
    }

    /** Elevator of the level flight at the throttle of a cruise. */
    private static double cruising(Model model) {
        Flight flight = flight(model);
        Pack pack = model.packs().get(0);
        return new PoweredFlight(
                        flight.airframe(),
                        model.reference(),
                        pack,
                        flight.airframe().drive(pack).orElseThrow().drive(),
                        flight.stall(pack).orElseThrow())
                .fastest(model.motor().orElseThrow().cruise())
                .orElseThrow()
                .attitude()
                .elevator();
    }

    @ParameterizedTest
    @CsvSource({"ridgeline, -3.1", "ridgeline, 1.7", "saltmarsh, -1.2", "saltmarsh, 2.6"})
    void a_made_up_angle_comes_back_from_a_glide(String name, double degrees) {
        Model model = Examples.read(name);
        Model built = model.with(model.tail().turned(degrees * DEGREE));
        Rigged rigged = rigged(model, gliding(built, SPEED), OptionalDouble.of(SPEED));
        assertThat(rigged.model().tail().incidence()).isCloseTo(degrees * DEGREE, within(0.05 * DEGREE));
        assertThat(rigged.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.code())
                        .isEqualTo("note.cruise-trim." + (degrees < 0 ? "down" : "up") + "-closed"));
    }

    @ParameterizedTest
    @CsvSource({"-1.5", "0.8"})
    void a_made_up_angle_comes_back_from_level_flight(double degrees) {
        Model model = Examples.read("orchard");
        Model built = model.with(model.tail().turned(degrees * DEGREE));
        Rigged rigged = rigged(model, cruising(built), OptionalDouble.empty());
        assertThat(rigged.model().tail().incidence()).isCloseTo(degrees * DEGREE, within(0.1 * DEGREE));
    }

    /** Where the whole tail moves, its angle and that of the elevator are one: closed form, slope -1. */
    @Test
    void a_tail_that_moves_as_a_whole_stands_where_the_elevator_says() {
        Model model = Examples.read("ridgeline");
        Tail t = model.tail();
        Elevator whole = new Elevator(1, 0.3, 0.3, t.elevator().hinge());
        Model moving =
                model.with(new Tail(t.span(), t.chord(), t.arm(), t.height(), 0, t.position(), t.airfoil(), whole));
        double level =
                rigged(moving, 0, OptionalDouble.of(SPEED)).model().tail().incidence();
        double read = 1.5 * DEGREE;
        double turned =
                rigged(moving, read, OptionalDouble.of(SPEED)).model().tail().incidence();
        assertThat(turned - level).isCloseTo(-read, within(0.01 * DEGREE));
    }

    /**
     * Linear trim: a degree of elevator stands for so much of the tail's angle as the elevator's effectiveness says. Glauert, R
     * and M 1095 (1927): 1 - (q - sin q)/pi with cos q = 2 E - 1 is 0.748 for 40 % of chord; models reach 0.6 to 1 of it.
     */
    @Test
    void a_hinged_elevator_tells_its_effectiveness() {
        Model model = Examples.read("ridgeline");
        double hinge = Math.acos(2 * model.tail().elevator().chordFraction() - 1);
        double theory = 1 - (hinge - Math.sin(hinge)) / Math.PI;
        assertThat(theory).isCloseTo(0.748, within(0.001));
        double up =
                rigged(model, -DEGREE, OptionalDouble.of(SPEED)).model().tail().incidence();
        double down =
                rigged(model, DEGREE, OptionalDouble.of(SPEED)).model().tail().incidence();
        assertThat((up - down) / (2 * DEGREE)).isBetween(0.6 * theory, 1.0 * theory);
    }

    /** A reading that is off by what the band holds, at a speed told 8 % too high: the truth stays inside. */
    @ParameterizedTest
    @CsvSource({"0.7, 1.0", "-0.7, 1.0", "0, 1.08", "0, 0.93"})
    void the_band_holds_the_truth(double millimetres, double speedTold) {
        Model model = Examples.read("ridgeline");
        double truth = -1.4 * DEGREE;
        double seen = gliding(model.with(model.tail().turned(truth)), SPEED)
                + millimetres / 1000 / model.tail().throwChord();
        Tail tail = rigged(model, seen, OptionalDouble.of(speedTold * SPEED))
                .model()
                .tail();
        assertThat(tail.incidence()).isCloseTo(truth, within(tail.incidenceDoubt()));
        assertThat(tail.incidenceDoubt()).isBetween(0.3 * DEGREE, 2 * DEGREE);
    }

    /** Just above the stall no flight is a tenth slower: what that would have told is not left out as if it were nothing. */
    @Test
    void a_cruise_next_to_the_stall_tells_no_more_than_an_unknown_angle() {
        Model model = Examples.read("ridgeline");
        double slow =
                1.03 * flight(model).stall(model.packs().get(0)).orElseThrow().speed();
        Tail tail = rigged(model, gliding(model, slow), OptionalDouble.of(slow))
                .model()
                .tail();
        assertThat(tail.incidence()).isCloseTo(0, within(0.05 * DEGREE));
        assertThat(tail.incidenceDoubt()).isEqualTo(2 * DEGREE);
    }

    /** What the reading tells narrows the elevator in trim, and no more than that. */
    @Test
    void the_band_of_the_elevator_in_trim_is_narrower_than_with_an_unknown_angle() {
        Model model = Examples.read("ridgeline");
        Tail t = model.tail();
        Model unknown = model.with(t.rigged(0, 2 * DEGREE));
        Model told = read(model, gliding(model, SPEED), OptionalDouble.of(SPEED));
        assertThat(width(told)).isLessThan(0.95 * width(unknown));
        assertThat(width(told)).isGreaterThan(width(model.with(t.rigged(0, 0))));
    }

    private static double width(Model model) {
        Headline elevator = Examples.compare(model, new MeasuredSections())
                .packs()
                .get(0)
                .setUps()
                .get(0)
                .number(FlightQuantity.ELEVATOR);
        assertThat(elevator).isInstanceOf(Headline.Known.class);
        Headline.Known known = (Headline.Known) elevator;
        return known.high() - known.low();
    }

    @Test
    void what_is_not_flown_or_not_built_is_not_used() {
        Model model = Examples.read("ridgeline");
        Rigged slow = rigged(model, 0, OptionalDouble.of(3));
        Rigged far = rigged(model, 18 * DEGREE, OptionalDouble.of(SPEED));
        assertThat(far.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.code()).isEqualTo("note.cruise-trim.none"));
        assertThat(slow.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.code()).isEqualTo("note.cruise-trim.not-flown"));
        for (Rigged rigged : new Rigged[] {slow, far}) {
            assertThat(rigged.model().tail().incidence()).isZero();
            assertThat(rigged.model().tail().incidenceDoubt()).isEqualTo(2 * DEGREE);
        }
    }

    @Test
    void nothing_read_changes_nothing() {
        Model model = Examples.read("ridgeline");
        assertThat(STUDY.rigged(model, Examples.AIRFOILS)).isEqualTo(new Rigged(model, java.util.List.of()));
    }
}
