package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.Parsed;

/** Throws that are tried after flights: one estimate for the file's and for those. */
class TryAfterFlightsTest {

    private static final String NOTES = """
            throwline flights: 1
            flights:
              - date: 2026-10-04
                pack: small
                AS-FLOWN
                noticed:
                  - {what: stall, set-up: landing flap, airspeed: 9.2 m/s, give or take: 0.2 m/s, times: 4}
                  - {what: glide, set-up: landing flap, height: 30 m, time: 11 s, told by: barometer}
                  - {what: trim, set-up: clean, elevator: 1 mm down}
            """;

    private static final String TRY = "landing flap: flaps 44 deg down";

    @TempDir
    private Path folder = Path.of("");

    private String model = "";

    @BeforeEach
    void copy() throws IOException {
        model = Files.copy(Path.of("examples/orchard.yaml"), folder.resolve("orchard.yaml"))
                .toString();
        Files.writeString(folder.resolve("orchard-flights.yaml"), NOTES.replace("    AS-FLOWN\n", ""));
    }

    /** As if the file had the throws that are tried and the notes said with which others they were flown. */
    @Test
    void answers_as_a_changed_file_would_whose_notes_keep_the_throws_flown() throws IOException {
        String text = Files.readString(Path.of(model));
        Path other = Files.writeString(
                Files.createDirectory(folder.resolve("other")).resolve("orchard.yaml"),
                text.replace("flaps: 35 deg down", "flaps: 44 deg down"));
        Files.writeString(
                other.resolveSibling("orchard-flights.yaml"),
                NOTES.replace("AS-FLOWN", "set-ups: {landing flap: {flaps: 35 deg down}}"));
        Parsed tried = Parsed.of(
                ProgramRun.of("compare", model, "--try", TRY, "--json").out());
        Parsed changed =
                Parsed.of(ProgramRun.of("compare", other.toString(), "--json").out());
        for (int i = 0; i < 4; i++) {
            Parsed one = setUp(tried, i);
            Parsed twin = setUp(changed, i);
            for (String number : new String[] {"stallSpeed", "descentAngle", "elevator"}) {
                for (String end : new String[] {"value", "low", "high"}) {
                    assertThat(one.at(number).at(end).number())
                            .as(number + " " + i)
                            .isCloseTo(twin.at(number).at(end).number(), Percentage.withPercentage(0.05));
                }
            }
        }
        assertThat(ProgramRun.of("compare", model, "--try", TRY, "--json", "--without-flights")
                        .out())
                .isNotEqualTo(
                        ProgramRun.of("compare", model, "--try", TRY, "--json").out());
    }

    private static Parsed setUp(Parsed answer, int place) {
        return answer.at("packs").at(0).at("setups").at(place);
    }

    @Test
    void says_on_top_what_was_used_and_that_these_throws_were_not_flown() {
        for (String[] command : new String[][] {
            {"compare", model, "--try", TRY}, {"fly", model, "--setup", "landing flap", "--try", TRY}
        }) {
            String out = ProgramRun.of(command).out().replaceAll("\\s+", " ");
            assertThat(out)
                    .contains("With 1 flight (3 measurements, the last on 2026-10-04)")
                    .contains("What changes against the file")
                    .contains("The throws tried in landing flap are not those flown");
            assertThat(out.indexOf("With 1 flight")).isLessThan(out.indexOf("What changes"));
        }
        assertThat(ProgramRun.of("compare", model, "--try", "landing flap: flaps 36 deg down")
                        .out())
                .contains("File and trial both use what the flights told.")
                .doesNotContain("not those flown");
    }

    /** The trial's side of the in-depth answer is that of the comparison. */
    @Test
    void flies_the_same_numbers_in_depth() {
        Parsed compared = setUp(
                Parsed.of(
                        ProgramRun.of("compare", model, "--try", TRY, "--json").out()),
                2);
        Parsed flown = Parsed.of(
                ProgramRun.of("fly", model, "--setup", "landing flap", "--pack", "small", "--try", TRY, "--json")
                        .out());
        assertThat(compared.at("name").text()).isEqualTo("landing flap");
        assertThat(flown.at("setup").at("stallSpeed").at("value").number())
                .isCloseTo(compared.at("stallSpeed").at("value").number(), Percentage.withPercentage(0.01));
    }
}
