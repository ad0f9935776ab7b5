package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.Parsed;

/** What is found after flights meets the want in the numbers after the flights, as a comparison has them. */
class FindAfterFlightsTest {

    private static final String NOTES = """
            throwline flights: 1
            flights:
              - date: 2026-10-04
                pack: small
                noticed:
                  - {what: stall, set-up: clean, airspeed: 9.6 m/s, give or take: 0.2 m/s, times: 4}
                  - {what: stall, set-up: airbrake, airspeed: 9.4 m/s, give or take: 0.2 m/s, times: 4}
            """;

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        Files.copy(Path.of("examples/season/orchard.yaml"), folder.resolve("orchard.yaml"));
    }

    private String find(String... more) {
        return ProgramRun.of(Stream.concat(
                                Stream.of(
                                        "find",
                                        folder.resolve("orchard.yaml").toString(),
                                        "--stall-at",
                                        "8.8m/s",
                                        "--json"),
                                Stream.of(more))
                        .toArray(String[]::new))
                .out();
    }

    @Test
    void meets_the_want_after_the_flights() throws IOException {
        String before = find();
        Files.writeString(folder.resolve("orchard-flights.yaml"), NOTES);
        Parsed after = Parsed.of(find());
        assertThat(after.at("flights").at("count").number()).isEqualTo(1);
        Parsed flown = after.at("flown").at(1);
        assertThat(flown.at("stallSpeed").at("value").number()).isCloseTo(8.8, Offset.offset(0.05));
        assertThat(flown.at("stallSpeed").at("before").at("value").number()).isLessThan(8.7);
        assertThat(find("--without-flights")).isEqualTo(before);
    }

    private Parsed wanted(String... wants) {
        return Parsed.of(ProgramRun.of(Stream.concat(
                                Stream.of("find", folder.resolve("orchard.yaml").toString(), "--json"),
                                Stream.of(wants))
                        .toArray(String[]::new))
                .out());
    }

    /** Trim flown in the set-up moves its mix by what the comparison's elevator change moved, less at part of the lever. */
    @Test
    void moves_a_mix_by_what_the_elevator_was_flown_with() throws IOException {
        Files.writeString(folder.resolve("orchard-flights.yaml"), """
                throwline flights: 1
                flights:
                  - date: 2026-10-04
                    pack: small
                    noticed:
                      - {what: trim, set-up: landing flap, elevator: 2 mm up, told by: bench, times: 4}
                      - {what: trim, set-up: clean, elevator: 3.5 mm up, told by: bench, times: 4}
                """);
        String[] want = {"--no-trim-change", "landing flap", "--points", "5"};
        Parsed after = wanted(want).at("levelTrim");
        Parsed change = Parsed.of(
                        ProgramRun.of("compare", folder.resolve("orchard.yaml").toString(), "--pack", "small", "--json")
                                .out())
                .at("packs")
                .at(0)
                .at("setups")
                .at(2)
                .at("elevatorChange");
        double moved =
                change.at("value").number() - change.at("before").at("value").number();
        Parsed before = wanted(
                        "--no-trim-change",
                        "landing flap",
                        "--points",
                        "5",
                        "--without-flights",
                        "--at",
                        after.at("speed").number() + "m/s")
                .at("levelTrim");
        assertThat(Math.abs(moved)).isGreaterThan(0.5);
        for (int i = 0; i < 5; i++) {
            double by = after.at("points").at(i).at("elevator").number()
                    - before.at("points").at(i).at("elevator").number();
            assertThat(by).as("point " + i).isCloseTo(i / 4.0 * moved, Offset.offset(0.06));
        }
        double band = after.at("whole").at("high").number()
                - after.at("whole").at("low").number();
        assertThat(band)
                .isLessThan(before.at("whole").at("high").number()
                        - before.at("whole").at("low").number());
    }

    /** A wing that lifts less than predicted: less throw, so that full stick leaves its margin; none more where it lifts more. */
    @Test
    void loops_with_the_lift_that_was_flown() throws IOException {
        String stall = """
                throwline flights: 1
                flights:
                  - date: 2026-10-04
                    pack: small
                    noticed:
                      - {what: stall, set-up: clean, airspeed: SPEED, give or take: 0.2 m/s, times: 4}
                """;
        String[] want = {"--tightest-loop", "--at", "15m/s"};
        Parsed before = wanted(want).at("tightestLoop");
        Files.writeString(folder.resolve("orchard-flights.yaml"), stall.replace("SPEED", "9.7 m/s"));
        Parsed less = wanted(want).at("tightestLoop");
        Files.writeString(folder.resolve("orchard-flights.yaml"), stall.replace("SPEED", "8.6 m/s"));
        Parsed more = wanted(want).at("tightestLoop");
        assertThat(less.at("best").at("elevatorUp").number())
                .isLessThan(before.at("best").at("elevatorUp").number() - 1);
        assertThat(less.at("radius").at("value").number())
                .isGreaterThan(before.at("radius").at("value").number());
        assertThat(more.at("radius").at("value").number())
                .isEqualTo(before.at("radius").at("value").number());
    }
}
