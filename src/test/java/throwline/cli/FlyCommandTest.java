package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.Golden;
import throwline.Parsed;

/** Speeds, times and mixes that a person names on the command line. */
class FlyCommandTest {

    private static final String MODEL = "examples/orchard.yaml";

    private static final List<List<String>> CALLS = List.of(
            List.of("--loop-at", "15"),
            List.of("--loop-at", "15,20 m/s"),
            List.of("--loop-at", "17,5 m/s"),
            List.of("--loop-at", "15 m/s,"),
            List.of("--loop-at", "15 m/s, 400 m/s"),
            List.of("--loop-at", "15 m/s,fast"),
            List.of("--loop-at", "9m/s,10m/s,11m/s,12m/s,13m/s,14m/s,15m/s,16m/s,17m/s"),
            List.of("--lower-at", "0.2 m/s"),
            List.of("--lower-at", "12 deg"),
            List.of("--flap-time", "1.5"),
            List.of("--flap-time", "1,5 s"),
            List.of("--flap-time", "2 min"),
            List.of("--flap-time", "-1 s"),
            List.of("--flap-time", "60 s"),
            List.of("--elevator-mix", "half"),
            List.of("--elevator-mix", "3"),
            List.of("--elevator-mix", "3 kg down"),
            List.of("--elevator-mix", "2,5 deg down"),
            List.of("--elevator-mix", "-3 mm down"),
            List.of("--elevator-mix", "250%"),
            List.of("--elevator-mix", "40 deg down"),
            List.of("--elevator-mix", "900 mm down"));

    @Test
    void one_sentence_each() {
        StringBuilder said = new StringBuilder();
        for (List<String> asked : CALLS) {
            List<String> call = new ArrayList<>(List.of("fly", MODEL, "--setup", "airbrake"));
            call.addAll(asked);
            ProgramRun run = ProgramRun.of(call.toArray(String[]::new));
            assertThat(run.exitCode()).as(call.toString()).isEqualTo(2);
            assertThat(run.out()).as(call.toString()).isEmpty();
            assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
            said.append("$ throwline fly ... ")
                    .append(String.join(" ", asked))
                    .append('\n')
                    .append(run.err())
                    .append('\n');
        }
        Golden.check("wrong-input-fly.txt", said.toString());
    }

    /** What was asked is what is answered, whatever the units; a speed that is not flown is told. */
    @Test
    void what_was_asked_is_answered() {
        ProgramRun run = ProgramRun.of(
                "fly",
                MODEL,
                "--setup",
                "airbrake",
                "--loop-at",
                "54 km/h,20m/s,7m/s",
                "--lower-at",
                "14 m/s",
                "--flap-time",
                "1.2s",
                "--elevator-mix",
                "3 mm down",
                "--json");
        assertThat(run.err()).isEmpty();
        Parsed json = Parsed.of(run.out());
        assertThat(json.at("pulls").size()).isEqualTo(2);
        assertThat(json.at("pulls").at(0).at("speed").number()).isEqualTo(15);
        assertThat(json.at("pulls").at(1).at("speed").number()).isEqualTo(20);
        assertThat(json.at("noPulls").at(0).at("code").text()).isEqualTo("note.loop.too-slow");
        Parsed moves = json.at("moves");
        assertThat(moves.at("lowerSpeed").number()).isEqualTo(14);
        Parsed own = moves.at("lowering").at(3);
        assertThat(own.at("asked").value()).isEqualTo(true);
        assertThat(own.at("time").number()).isEqualTo(1.2);
        // 3 mm at the edge of an elevator of 40 % of 165 mm: 2 asin(3 / (2 * 66)).
        assertThat(own.at("elevator").number()).isCloseTo(Math.toDegrees(2 * Math.asin(3 / 132.0)), within(1e-4));
        assertThat(moves.at("lowering").at(0).at("asked").value()).isEqualTo(false);
    }

    /** A tail that moves as a whole turns about its pivot: 5 mm at the edge of three quarters of 165 mm. */
    @Test
    void a_mix_in_millimetres_counts_from_the_pivot(@TempDir Path folder) throws IOException {
        String text =
                Files.readString(Path.of(MODEL)).replaceFirst("elevator: \\{chord: \\d+ %", "elevator: {chord: 100 %");
        assertThat(text).contains("chord: 100 %");
        Path model = folder.resolve("all-moving.yaml");
        Files.writeString(model, text);
        ProgramRun run = ProgramRun.of(
                "fly", model.toString(), "--setup", "landing flap", "--elevator-mix", "5 mm down", "--json");
        Parsed own = Parsed.of(run.out()).at("moves").at("lowering").at(3);
        assertThat(own.at("elevator").number())
                .isCloseTo(Math.toDegrees(2 * Math.asin(5 / (2 * 0.75 * 165))), within(1e-4));
    }
}
