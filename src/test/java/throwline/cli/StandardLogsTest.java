package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.Parsed;
import throwline.logs.StandardLogs;
import throwline.logs.SyntheticLog;
import throwline.logs.SyntheticLog.Setting;

/** Logs of open standards from the file through {@code learn --log} and its questions to a corrected row. */
class StandardLogsTest {

    private static final int PIECES = 7;

    /** Comes down some 40 % steeper than Orchard is predicted to, a polar of two terms. */
    private static final SyntheticLog.Aeroplane STEEPER = new SyntheticLog.Aeroplane() {
        @Override
        public double stallSpeed(String setUp) {
            return setUp.equals("clean") ? 9.2 : 8.6;
        }

        @Override
        public double descentAngle(String setUp, double speed) {
            double lift = 3.05 * 9.80665 / (1.22 * speed * speed * 0.49 / 2);
            return Math.atan(((setUp.equals("clean") ? 0.085 : 0.165) + 0.062 * lift * lift) / lift);
        }

        @Override
        public double elevator(String setUp, double speed) {
            return 0;
        }

        @Override
        public double rollRate(String setUp, double speed) {
            return 0.12 * speed;
        }
    };

    private static final List<String> FLOWN = List.of("clean", "landing flap");

    @TempDir
    private Path folder = Path.of("");

    /** Every stretch that is offered is told; what is learnt of the path lies nearer to the truth than before. */
    @ParameterizedTest
    @CsvSource({"nmea, 3", "gpx, 2", "igc, 2"})
    void flies_through_the_whole_chain(String kind, int glides) throws IOException {
        Path model = folder.resolve("orchard.yaml");
        Files.copy(Path.of("examples/season/orchard.yaml"), model);
        StandardLogs logs = new StandardLogs(new SyntheticLog(STEEPER, Setting.GPS_ONLY, 12).fly(FLOWN));
        String text =
                switch (kind) {
                    case "nmea" -> logs.nmea();
                    case "gpx" -> logs.gpx();
                    default -> logs.igc();
                };
        Path log = Files.writeString(folder.resolve("flight." + kind), text);
        ProgramRun run = ProgramRun.typed(
                answers(), Map.of("COLUMNS", "100"), "learn", model.toString(), "--log", log.toString(), "--json");
        assertThat(run.exitCode()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("piece " + 2 * PIECES + ":").doesNotContain("piece " + (2 * PIECES + 1) + ":");
        Parsed answer = Parsed.of(run.out().substring(run.out().indexOf("\n{\n")));
        for (String setUp : FLOWN) {
            Parsed row = row(answer, setUp);
            Parsed angle = row.at("descentAngle");
            double speed = row.at("approachSpeed").at("value").number();
            double truth = Math.toDegrees(STEEPER.descentAngle(setUp, speed));
            double before = angle.at("before").at("value").number();
            double now = angle.at("value").number();
            assertThat(angle.at("basis").text()).isEqualTo("flown");
            assertThat(Math.abs(now - truth))
                    .as("%s: %s, before %s, truth %s", setUp, now, before, truth)
                    .isLessThan(0.6 * Math.abs(before - truth));
            assertThat(glides(answer, setUp)).isGreaterThanOrEqualTo(glides);
        }
    }

    private static long glides(Parsed answer, String setUp) {
        Parsed pieces = answer.at("logs").at(0).at("pieces");
        return IntStream.range(0, pieces.size())
                .mapToObj(pieces::at)
                .filter(piece -> piece.at("kind").text().equals("glide")
                        && piece.at("setup").text().equals(setUp)
                        && piece.at("used").value().equals(true))
                .count();
    }

    private static Parsed row(Parsed answer, String setUp) {
        Parsed setUps = answer.at("packs").at(0).at("setups");
        return IntStream.range(0, setUps.size())
                .mapToObj(setUps::at)
                .filter(one -> one.at("name").text().equals(setUp))
                .findFirst()
                .orElseThrow();
    }

    private static String answers() {
        StringBuilder answers = new StringBuilder("2026-10-18\nsmall\n15 C\n");
        for (int piece = 1; piece <= 2 * PIECES; piece++) {
            String setUp = FLOWN.get((piece - 1) / PIECES);
            answers.append(setUp + "\npiece " + piece + "\npiece " + piece + "\n");
        }
        return answers.append("that was all\nyes\n").toString();
    }
}
