package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.notes.FlownDay;
import throwline.notes.Noticed;

/** Questions after a flight: only what was flown, "not measured" always allowed, the notes before untouched. */
class FlightInterviewTest {

    private static final Model MODEL =
            ((ReadModel.Project) ModelFile.read(Path.of("examples/orchard.yaml"), new PackedAirfoils())).model();

    private static final String BEFORE =
            "# my notes\nthrowline flights: 1\nflights:\n  - {date: 2026-09-01, pack: large}   # windy\n";

    private static FlightInterview told(String... answers) {
        FlightInterview interview = new FlightInterview(MODEL, "2026-10-04");
        for (String answer : answers) {
            assertThat(interview.answer(answer)).as(answer).isEmpty();
        }
        return interview;
    }

    /** Day, pack, no weight, air, wind, how; landing flap with a stall, glide and trim; clean with nothing. */
    private static FlightInterview flown() {
        FlightInterview interview = told(
                "",
                "small",
                "",
                "18 C",
                "2 m/s",
                "flag",
                "landing",
                "31 km/h",
                "into the wind",
                "12 s",
                "30 m",
                "barometer",
                "3 mm up",
                "4.5 s",
                "not measured",
                "",
                "that was all");
        assertThat(interview.next()).isEmpty();
        return interview;
    }

    @Test
    void writes_what_was_told_behind_the_others() {
        String after = new FlightEntry(flown()).appended(BEFORE, "orchard.yaml").orElseThrow();
        assertThat(after).startsWith(BEFORE);
        ReadFlights.Notes notes = (ReadFlights.Notes) FlightsFile.read(after, "notes.yaml", MODEL);
        FlownDay day = notes.notes().days().get(1);
        assertThat(day.date()).isEqualTo("2026-10-04");
        assertThat(day.noticed()).hasSize(4);
        assertThat(day.noticed().get(0)).isInstanceOf(Noticed.Stall.class);
        assertThat(day.asFlown().get(0).deflection("flaps")).isEqualTo(Math.toRadians(35));
    }

    @Test
    void begins_a_file() {
        String text = new FlightEntry(flown()).appended("", "orchard.yaml").orElseThrow();
        assertThat(FlightsFile.read(text, "notes.yaml", MODEL)).isInstanceOf(ReadFlights.Notes.class);
    }

    @Test
    void leaves_a_file_alone_that_has_other_keys_behind_the_flights() {
        String odd = "throwline flights: 1\nflights:\n  - {date: 2026-09-01, pack: large}\nmodel: orchard.yaml\n";
        assertThat(new FlightEntry(flown()).appended(odd, "orchard.yaml")).isEmpty();
    }

    @Test
    void asks_nothing_of_set_ups_that_were_not_flown() {
        assertThat(flown().flown()).isEqualTo(List.of("landing flap"));
    }

    @Test
    void goes_back_and_refuses_what_is_no_answer() {
        FlightInterview interview = told("", "small");
        assertThat(interview.answer("heavy")).isPresent();
        assertThat(interview.answer("3.1 kg")).isEmpty();
        assertThat(interview.answer("back")).isEmpty();
        assertThat(interview.next().map(FlightInterview.Asked::sentence))
                .isEqualTo(Optional.of("input.learn.q.weight"));
    }

    @Test
    void notices_that_nothing_was_measured() {
        assertThat(told("", "small", "", "", "", "that was all").isEmpty()).isTrue();
        assertThat(flown().isEmpty()).isFalse();
    }
}
