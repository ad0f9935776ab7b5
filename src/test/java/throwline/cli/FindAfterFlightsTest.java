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
}
