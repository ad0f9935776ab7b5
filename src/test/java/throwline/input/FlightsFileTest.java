package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.model.Model;
import throwline.notes.FlownDay;
import throwline.notes.FlownDay.WindTold;
import throwline.notes.Noticed;
import throwline.notes.Noticed.Going;
import throwline.notes.ToldBy;
import throwline.words.Words;

/** Reading of notes: what is written comes back in SI units, and what cannot be meant is refused with its place. */
class FlightsFileTest {

    private static final Model MODEL =
            ((ReadModel.Project) ModelFile.read(Path.of("examples/orchard.yaml"), new PackedAirfoils())).model();

    private static final String HEAD = "throwline flights: 1\nflights:\n  - date: 2026-10-04\n    pack: small\n";

    private static FlownDay day(String rest) {
        ReadFlights read = FlightsFile.read(HEAD + rest, "notes.yaml", MODEL);
        assertThat(read).isInstanceOf(ReadFlights.Notes.class);
        return ((ReadFlights.Notes) read).notes().days().get(0);
    }

    private static Noticed note(String note) {
        return day("    noticed:\n      - {" + note + "}\n").noticed().get(0);
    }

    @Test
    void reads_a_stall_over_the_ground() {
        Noticed.Stall stall = (Noticed.Stall)
                note("what: stall, set-up: landing flap, ground speed: 36 km/h, going: into the wind, times: 2");
        assertThat(stall.setUp()).isEqualTo("landing flap");
        assertThat(stall.speed().ground().orElseThrow()).isCloseTo(10, Offset.offset(1e-12));
        assertThat(stall.speed().going()).isEqualTo(Going.INTO_THE_WIND);
        assertThat(stall.told().toldBy()).isEqualTo(ToldBy.GPS);
        assertThat(stall.told().times()).isEqualTo(2);
        assertThat(stall.told().source()).isEqualTo("stall landing flap, 2026-10-04");
    }

    @Test
    void takes_the_mean_of_both_ways() {
        Noticed.Stall stall =
                (Noticed.Stall) note("what: stall, set-up: Clean, ground speed: [27 km/h, 45 km/h], going: both ways");
        assertThat(stall.speed().ground().orElseThrow()).isCloseTo(10, Offset.offset(1e-12));
        assertThat(stall.setUp()).isEqualTo("clean");
    }

    @Test
    void reads_trim_up_as_negative() {
        Noticed.Trim trim = (Noticed.Trim) note("what: trim, set-up: clean, trimmed by: 3 deg up");
        assertThat(trim.elevator()).isCloseTo(Math.toRadians(-3), Offset.offset(1e-12));
        assertThat(trim.fromSetUp()).isTrue();
    }

    @Test
    void reads_the_day() {
        FlownDay day = day("""
                    air: {temperature: 18 C, pressure: 1003 hPa}
                    wind: {speed: 7.2 km/h, told by: flag}
                    count: no
                    because: gusty
                """);
        assertThat(day.air().temperature()).isEqualTo(OptionalDouble.of(291.15));
        assertThat(day.air().pressure()).isEqualTo(OptionalDouble.of(100_300));
        assertThat(day.wind().orElseThrow().speed()).isCloseTo(2, Offset.offset(1e-12));
        assertThat(day.wind().orElseThrow().toldBy()).isEqualTo(WindTold.FLAG);
        assertThat(day.counts()).isFalse();
    }

    @Test
    void tells_two_notes_of_one_kind_apart() {
        List<Noticed> notes = day("""
                    noticed:
                      - {what: float, set-up: clean, distance: 20 m}
                      - {what: float, set-up: clean, distance: 22 m}
                """).noticed();
        assertThat(notes.get(0).told().source())
                .isNotEqualTo(notes.get(1).told().source());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "what: stall, set-up: lending flap, airspeed: 9 m/s | no set-up \"lending flap\"",
                "what: stall, set-up: clean, ground speed: 31 km/h | means nothing without its way",
                "what: stall, set-up: clean, ground speed: 31 km/h, airspeed: 9 m/s, going: across | one of",
                "what: stall, set-up: clean | one of",
                "what: stall, set-up: clean, ground speed: [9 m/s, 10 m/s], going: across | both ways",
                "what: stall, set-up: clean, airspeed: 9 | has no unit",
                "what: stall, set-up: clean, airspeed: 9 m/s, rolls: 2 | does not belong",
                "what: trim, set-up: clean, elevator: 1 mm up, trimmed by: 1 mm up | one of",
                "what: trim, set-up: clean, elevator: 3 mm | Say which way",
                "what: roll, set-up: airbrake, stick: with flaps, time: 3 s | works in airbrake",
                "what: roll, set-up: clean, time: 3 s | needs \"stick\"",
                "what: glide, set-up: clean, height: 30 m | needs \"time\"",
                "what: path, set-up: clean, height: 10 m, going: across | needs \"distance\"",
                "what: path, set-up: clean, height: 10 m, distance: 25 m | means nothing without its way",
                "what: weight | needs \"weight\"",
                "what: weight, weight: 3 kg, set-up: clean | does not belong",
                "what: spin, set-up: clean | spin",
                "what: float, set-up: clean, distance: 20 m, give or take: much | how far off",
                "what: glide, set-up: clean, height: 30 m, time: 20 s, speed: fast | speed to fly at",
                "what: stall, set-up: clean, airspeed: 9,5 m/s | 9.5"
            })
    void refuses_what_cannot_be_meant(String note, String said) {
        ReadFlights read = FlightsFile.read(HEAD + "    noticed:\n      - {" + note + "}\n", "notes.yaml", MODEL);
        assertThat(read).isInstanceOf(ReadFlights.Faulty.class);
        String first = ((ReadFlights.Faulty) read).problems().get(0).say(Words.load());
        assertThat(first).startsWith("notes.yaml:6:").contains(said.strip());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "date: yesterday | not a date",
                "pack: huge | no pack \"huge\"",
                "pack: small, set-ups: {clean: {flags: 3 deg down}} | no surface \"flags\"",
                "pack: small, log: {file: ../x.csv} | without folders",
                "pack: small, log: {file: x.csv, set-ups: [{from: 20 s, to: 10 s, set-up: clean}]} | not after",
                "pack: small, log: {file: x.csv, columns: {tide: {column: a}}} | cannot hold",
                "pack: small, log: {file: x.csv} | needs its time",
                "pack: small, log: {file: x.csv, columns: {time: {column: t, unit: m}}} | not a unit for time",
                "pack: small, log: {file: x.csv, columns: {time: {column: t}, ground speed: {column: v, unit: m/s}}} | way",
                "date: 2026-10-04 | Which pack"
            })
    void refuses_days_that_cannot_be(String day, String said) {
        ReadFlights read = FlightsFile.read("throwline flights: 1\nflights:\n  - {" + day + "}\n", "notes.yaml", MODEL);
        assertThat(read).isInstanceOf(ReadFlights.Faulty.class);
        assertThat(((ReadFlights.Faulty) read).problems().stream().map(p -> p.say(Words.load())))
                .anyMatch(sentence -> sentence.contains(said.strip()) && sentence.startsWith("notes.yaml:3:"));
    }
}
