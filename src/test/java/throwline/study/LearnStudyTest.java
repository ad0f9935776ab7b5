package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;
import throwline.section.MeasuredSections;

/** What flights do to the answers of the real solver. */
class LearnStudyTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();
    private static final Model MODEL =
            ((ReadModel.Project) ModelFile.read(Path.of("examples/orchard.yaml"), AIRFOILS)).model();
    private static final Comparison PLAIN =
            new ComparisonStudy(new MeasuredSections(), Bands.load()).compare(MODEL, AIRFOILS, MODEL.packs());
    private static final LearnStudy STUDY = new LearnStudy(new MeasuredSections(), Bands.load());

    private static FlightNotes notes(String... days) {
        String text = "throwline flights: 1\nflights:\n" + String.join("", days);
        ReadFlights read = FlightsFile.read(text, "notes.yaml", MODEL);
        assertThat(read).isInstanceOf(ReadFlights.Notes.class);
        return ((ReadFlights.Notes) read).notes();
    }

    private static String day(String date, String more, String... notes) {
        StringBuilder text = new StringBuilder("  - date: " + date + "\n    pack: small\n" + more);
        text.append("    noticed:\n");
        List.of(notes).forEach(note -> text.append("      - {").append(note).append("}\n"));
        return text.toString();
    }

    private static Learnt learn(FlightNotes notes) {
        return STUDY.learn(PLAIN, AIRFOILS, notes).orElseThrow().learnt();
    }

    private static Headline.Known known(Learnt learnt, String setUp, FlightQuantity quantity) {
        return (Headline.Known) learnt.after("small", setUp).orElseThrow().number(quantity);
    }

    private static Headline.Known before(String setUp, FlightQuantity quantity) {
        return (Headline.Known) PLAIN.packs().get(0).setUps().stream()
                .filter(r -> r.setUp().name().equals(setUp))
                .findFirst()
                .orElseThrow()
                .number(quantity);
    }

    private static final String STALLS =
            "what: stall, set-up: landing flap, airspeed: %s, told by: airspeed, give or take: 0.3 m/s, times: 4";

    @Test
    void changes_nothing_without_flights() {
        assertThat(STUDY.learn(PLAIN, AIRFOILS, FlightNotes.none())).isEmpty();
        assertThat(STUDY.learn(PLAIN, AIRFOILS, notes("  - {date: 2026-10-04, pack: small}\n")))
                .isEmpty();
    }

    /** An elevator is that of the reference and a change: the band of one is never narrower than that of the other. */
    @Test
    void states_bands_of_elevator_and_change_that_agree() {
        for (SetUpResult result : PLAIN.packs().get(0).setUps()) {
            if (result.number(FlightQuantity.ELEVATOR) instanceof Headline.Known place
                    && result.number(FlightQuantity.ELEVATOR_CHANGE) instanceof Headline.Known change) {
                assertThat(place.high() - place.low()).isGreaterThanOrEqualTo(change.high() - change.low() - 1e-12);
            }
        }
        Learnt learnt = learn(notes(day("2026-10-04", "", "what: trim, set-up: airbrake, elevator: 2 deg down")));
        Headline.Known change = known(learnt, "airbrake", FlightQuantity.ELEVATOR_CHANGE);
        Headline.Known place = known(learnt, "airbrake", FlightQuantity.ELEVATOR);
        Headline.Known was = before("airbrake", FlightQuantity.ELEVATOR);
        assertThat(place.value()).isLessThan(was.value());
        assertThat(change.value())
                .isLessThan(before("airbrake", FlightQuantity.ELEVATOR_CHANGE).value());
        double moved = place.value() - was.value();
        double reference = known(learnt, "clean", FlightQuantity.ELEVATOR).value()
                - before("clean", FlightQuantity.ELEVATOR).value();
        assertThat(change.value()
                        - before("airbrake", FlightQuantity.ELEVATOR_CHANGE).value())
                .isCloseTo(moved - reference, Offset.offset(Math.toRadians(0.1)));
    }

    @Test
    void moves_all_rows_by_a_faster_stall() {
        Learnt learnt = learn(notes(day("2026-10-04", "", STALLS.formatted("9.1 m/s"))));
        double moved = known(learnt, "landing flap", FlightQuantity.STALL_SPEED).value()
                / before("landing flap", FlightQuantity.STALL_SPEED).value();
        assertThat(moved).isBetween(1.01, 1.06);
        assertThat(known(learnt, "clean", FlightQuantity.STALL_SPEED).value())
                .isGreaterThan(before("clean", FlightQuantity.STALL_SPEED).value());
        assertThat(known(learnt, "landing flap", FlightQuantity.STALL_SPEED)
                        .learnt()
                        .orElseThrow()
                        .flown())
                .isTrue();
        assertThat(known(learnt, "clean", FlightQuantity.STALL_SPEED)
                        .learnt()
                        .orElseThrow()
                        .flown())
                .isFalse();
        Headline.Known other =
                (Headline.Known) learnt.after("large", "clean").orElseThrow().stallSpeed();
        assertThat(other.value()).isGreaterThan(other.learnt().orElseThrow().value());
    }

    /** A narrower band is no reserve: the approach speed stays at 1.3 times the upper end of the stall band, or as it was. */
    @Test
    void never_lowers_the_approach_by_a_narrower_band() {
        for (String speed : List.of("8.3 m/s", "8.0 m/s", "7.8 m/s")) {
            Learnt learnt = learn(notes(day("2026-10-04", "", STALLS.formatted(speed))));
            Headline.Known stall = known(learnt, "landing flap", FlightQuantity.STALL_SPEED);
            Headline.Known approach = known(learnt, "landing flap", FlightQuantity.APPROACH_SPEED);
            double least = Math.min(
                    before("landing flap", FlightQuantity.APPROACH_SPEED).value(), 1.3 * stall.high());
            assertThat(approach.value()).as(speed).isGreaterThanOrEqualTo(least - 1e-9);
        }
    }

    @Test
    void names_what_contradicts_the_rest_and_why() {
        Learnt learnt = learn(notes(day(
                "2026-10-04",
                "    wind: {speed: 1 m/s}\n",
                "what: stall, set-up: clean, ground speed: 30 m/s, going: into the wind",
                "what: glide, set-up: clean, height: 30 m, time: 20 s, told by: barometer")));
        assertThat(learnt.doubts().get(0).source()).isEqualTo("stall clean, 2026-10-04");
        assertThat(learnt.doubts().get(0).contradicts()).isTrue();
        assertThat(learnt.doubts().get(0).causes()).contains(throwline.correction.Doubt.Cause.KILOMETRES_AN_HOUR);
        assertThat(known(learnt, "clean", FlightQuantity.STALL_SPEED).value())
                .isCloseTo(before("clean", FlightQuantity.STALL_SPEED).value(), withPercentage(1));
    }

    @Test
    void does_not_care_for_the_order_of_flights() {
        List<String> days = new ArrayList<>(List.of(
                day(
                        "2026-10-04",
                        "",
                        STALLS.formatted("9.0 m/s"),
                        "what: roll, set-up: clean, stick: low rates, time: 4 s"),
                day("2026-10-11", "", "what: glide, set-up: airbrake, height: 30 m, time: 9 s, told by: barometer")));
        Learnt one = learn(notes(days.toArray(String[]::new)));
        Collections.reverse(days);
        Learnt other = learn(notes(days.toArray(String[]::new)));
        for (SetUpResult result : one.after().packs().get(1).setUps()) {
            SetUpResult twin = other.after("large", result.setUp().name()).orElseThrow();
            for (FlightQuantity quantity : FlightQuantity.values()) {
                if (quantity != FlightQuantity.ROLL_RATE && result.number(quantity) instanceof Headline.Known known) {
                    assertThat(((Headline.Known) twin.number(quantity)).value())
                            .isCloseTo(known.value(), withPercentage(1e-7));
                }
            }
        }
    }

    /** Flaps ten degrees further down since: half of the own part is left of what was noticed then. */
    @Test
    void counts_less_where_throws_have_changed() {
        String same = "    set-ups: {landing flap: {flaps: 34 deg down}}\n";
        String changed = "    set-ups: {landing flap: {flaps: 20 deg down}}\n";
        Learnt close = learn(notes(day("2026-10-04", same, STALLS.formatted("9.1 m/s"))));
        Learnt apart = learn(notes(day("2026-10-04", changed, STALLS.formatted("9.1 m/s"))));
        assertThat(close.changed()).isEmpty();
        assertThat(apart.changed()).containsExactly("landing flap");
        Headline.Known now = known(apart, "landing flap", FlightQuantity.STALL_SPEED);
        assertThat(now.learnt().orElseThrow().flown()).isFalse();
        assertThat(now.high() / now.low())
                .isGreaterThan(
                        known(close, "landing flap", FlightQuantity.STALL_SPEED).high()
                                / known(close, "landing flap", FlightQuantity.STALL_SPEED)
                                        .low());
    }

    /** File and trial come out of one estimate: the file's numbers stay, those tried within three degrees are flown too. */
    @Test
    void learns_of_throws_that_are_tried_as_well() {
        FlightNotes notes = notes(day("2026-10-04", "", STALLS.formatted("9.1 m/s")));
        Learnt alone = learn(notes);
        for (double degrees : new double[] {37, 45}) {
            Model tried = MODEL.withSetUps(MODEL.setUps().stream()
                    .map(s -> s.name().equals("landing flap") ? flaps(s, Math.toRadians(degrees)) : s)
                    .toList());
            Comparison other = new ComparisonStudy(new MeasuredSections(), Bands.load())
                    .compare(tried, AIRFOILS, MODEL.packs().subList(0, 1));
            TriedLessons both =
                    STUDY.learn(PLAIN, other, AIRFOILS, notes, Map.of()).orElseThrow();
            Headline.Known file = known(both.file().learnt(), "landing flap", FlightQuantity.STALL_SPEED);
            Headline.Known was = known(alone, "landing flap", FlightQuantity.STALL_SPEED);
            assertThat(file.value()).isCloseTo(was.value(), withPercentage(1e-7));
            assertThat(file.high()).isCloseTo(was.high(), withPercentage(1e-7));
            Learnt there = both.tried().learnt();
            Headline.Known now = known(there, "landing flap", FlightQuantity.STALL_SPEED);
            boolean same = degrees < 40;
            assertThat(now.learnt().orElseThrow().flown()).isEqualTo(same);
            assertThat(there.changed()).isEqualTo(same ? List.of() : List.of("landing flap"));
            assertThat(both.file().learnt().changed()).isEmpty();
            double moved = now.value() / now.learnt().orElseThrow().value();
            double fileMoved = file.value() / file.learnt().orElseThrow().value();
            if (same) {
                assertThat(moved).isCloseTo(fileMoved, withPercentage(1e-6));
            } else {
                assertThat(moved).isBetween(1.0, fileMoved);
            }
            assertThat(known(there, "airbrake", FlightQuantity.STALL_SPEED).value())
                    .isCloseTo(
                            known(alone, "airbrake", FlightQuantity.STALL_SPEED).value(), withPercentage(1e-7));
        }
    }

    private static SetUp flaps(SetUp setUp, double angle) {
        Map<String, Double> deflections = new java.util.LinkedHashMap<>(setUp.deflections());
        deflections.put("flaps", angle);
        return new SetUp(setUp.name(), deflections, setUp.elevator(), setUp.switchPosition());
    }

    /** A float tells next to nothing, but it is used: half as far as predicted is a little steeper. */
    @Test
    void uses_floats() {
        String calm = "    wind: {speed: 0 m/s, told by: feel}\n";
        Learnt learnt = learn(
                notes(day("2026-10-04", calm, "what: float, set-up: clean, distance: 8 m, told by: paces, times: 4")));
        assertThat(learnt.unused()).isEmpty();
        Headline.Known angle = known(learnt, "clean", FlightQuantity.DESCENT_ANGLE);
        assertThat(angle.value() / angle.learnt().orElseThrow().value()).isBetween(1.005, 1.15);
    }

    @Test
    void keeps_what_does_not_count() {
        FlightNotes notes = notes(day("2026-10-04", "    count: no\n", STALLS.formatted("12 m/s")));
        assertThat(STUDY.learn(PLAIN, AIRFOILS, notes)).isEmpty();
    }
}
