package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.logs.FlightLog;
import throwline.notes.LogSource;
import throwline.notes.LogSource.Column;
import throwline.words.Words;

/** Reading of logs: what the standards' sentences mean, and one sentence with its line for what cannot be read. */
class LogFileTest {

    private static final Words WORDS = Words.load();

    private static LogSource source(String file, boolean decimalComma) {
        OptionalDouble none = OptionalDouble.empty();
        return new LogSource(
                file,
                Map.of(
                        "time", new Column("t", "s", List.of(), Map.of(), none, none, ""),
                        "height", new Column("alt, baro", "m", List.of(), Map.of(), none, none, "")),
                Map.of(),
                decimalComma,
                false,
                List.of(),
                List.of());
    }

    private static FlightLog log(String file, String text) {
        ReadLog read = LogFile.read(text, file, source(file, false), 0);
        assertThat(read).isInstanceOf(ReadLog.Log.class);
        return ((ReadLog.Log) read).log();
    }

    private static String fault(ReadLog read) {
        assertThat(read).isInstanceOf(ReadLog.Faulty.class);
        return ((ReadLog.Faulty) read).problems().get(0).say(WORDS);
    }

    private static String fault(String file, String text) {
        return fault(LogFile.read(text, file, source(file, false), 0));
    }

    /** Quoted cells with separators in them, comments, any separator that the header has; RFC 4180, section 2. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "t,\"alt, baro\";1,50;2,51",
                "#said,so;\"t\",\"alt, baro\",more;1,50,a;2,51,\"x\"\"y,z\"",
            })
    void reads_cells(String text) {
        FlightLog log = log("a.csv", text.replace(';', '\n'));
        assertThat(log.rows()).isEqualTo(2);
    }

    @Test
    void reads_decimal_commas_where_they_are_told() {
        String text = "t;alt, baro\n1,5;50,25\n2,5;51\n";
        assertThat(fault("a.csv", text)).contains("a.csv:2:1").contains("decimal comma: yes");
        assertThat(LogFile.read(text, "a.csv", source("a.csv", true), 0)).isInstanceOf(ReadLog.Log.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "t,height;1,2 | a.csv:1:1 | no column \"alt, baro\" for height",
                "t,\"alt, baro\";1,2;1,5,3 | a.csv:3:1 | decimal comma",
                "t,\"alt, baro\";1,2;2 | a.csv:3:1 | 1 cells, the header 2",
                "t,\"alt, baro\";1,high | a.csv:2:3 | \"high\" is not a number for height",
                "t,\"alt, baro\";2,2;1,2 | a.csv:3:1 | runs backwards",
                "t,\"alt, baro\" | a.csv | not one row",
            })
    void refuses_cells(String text, String place, String said) {
        assertThat(fault("a.csv", text.replace(';', '\n'))).contains(place).contains(said);
    }

    /**
     * Recommended minimum sentence; the value of the checksum and 32.53 kn = 16.7349 m/s by hand (COMPUTED). The second,
     * and the height sentence below, are the samples that public descriptions of NMEA 0183 print (MEMORY).
     */
    @Test
    void reads_sentences() {
        String rmc = "$GPRMC,120000.20,A,4800.0001,N,00900.0026,E,32.53,91.4,041026,,,A*65";
        assertThat(NmeaSentences.isWhole(rmc)).isTrue();
        assertThat(NmeaSentences.isWhole("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A"))
                .isTrue();
        assertThat(NmeaSentences.isWhole(rmc.replace("*65", "*66"))).isFalse();
        FlightLog log = log(
                "a.nmea",
                rmc + "\n$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\n"
                        + "$GPRMC,123520,V,,,,,,,230394,,*39\n");
        assertThat(log.rows()).isEqualTo(2);
        assertThat(log.dropped()).isEqualTo(1);
        assertThat(log.start()).isCloseTo(43_200.2, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void counts_wrong_checksums_and_refuses_a_damaged_log() {
        String good = "$GPRMC,120000.20,A,4800.0001,N,00900.0026,E,32.53,91.4,041026,,,A*65\n";
        FlightLog log = log("a.nmea", good + good.replace("*65", "*00"));
        assertThat(log.dropped()).isEqualTo(1);
        String bad = good.replace("*65", "*00");
        assertThat(fault("a.nmea", good + bad + bad)).contains("a.nmea:2:1").contains("2 of 3 sentences");
    }

    /** 48 degrees 00.123 minutes north, 9 degrees 00.456 east; heights 512 and 560 m (by hand). */
    @Test
    void reads_fixes_of_flight_recorders() {
        FlightLog log = log(
                "a.igc",
                "AXXXABC\nHFDTE041026\nB1200004800123N00900456EA0051200560\nB1200014800123N00900456EA0051200560\n");
        assertThat(log.rows()).isEqualTo(2);
        assertThat(log.start()).isEqualTo(43_200);
        assertThat(fault("a.igc", "B1200014800123N00900456EA0051200560\nB1200004800123N00900456EA0051200560\n"))
                .contains("a.igc:2:1")
                .contains("runs backwards");
    }

    @Test
    void reads_track_points() {
        String point = "<trkpt lat=\"48.0\" lon=\"9.0\"><ele>512.5</ele><time>2026-10-04T12:00:0%d.5Z</time></trkpt>";
        String text = "<?xml version=\"1.0\"?><gpx version=\"1.1\"><trk><trkseg>" + point.formatted(1)
                + point.formatted(2) + "</trkseg></trk></gpx>";
        FlightLog log = log("a.gpx", text);
        assertThat(log.rows()).isEqualTo(2);
        assertThat(log.start()).isEqualTo(43_201.5);
    }

    /** Entities that blow up, or that read other files, are refused before they do. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<!DOCTYPE a [<!ENTITY a \"x\"><!ENTITY b \"&a;&a;\">]><gpx>&b;</gpx>",
                "<!DOCTYPE a [<!ENTITY a SYSTEM \"file:/etc/hostname\">]><gpx><ele>&a;</ele></gpx>",
                "<gpx><trk>"
            })
    void refuses_bombs(String text) {
        assertThat(fault("a.gpx", text)).contains("a.gpx:1:").contains("GPX 1.1");
    }

    @Test
    void refuses_files_that_are_no_logs(@TempDir Path folder) throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.csv"));
        assertThat(fault(LogFile.read(empty, source("empty.csv", false)))).contains("empty.csv");
        Path binary = Files.write(folder.resolve("binary.csv"), new byte[] {1, 0, 3, 0, 5, 0, 7});
        assertThat(fault(LogFile.read(binary, source("binary.csv", false)))).contains("binary.csv");
        assertThat(fault(LogFile.read(folder.resolve("none.csv"), source("none.csv", false))))
                .contains("none.csv");
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(500L * 1024 * 1024);
        }
        assertThat(fault(LogFile.read(large, source("large.csv", false)))).contains("larger than 16 MB");
    }

    @Test
    void refuses_the_same_log_twice(@TempDir Path folder) throws IOException {
        Path notes = folder.resolve("orchard-flights.yaml");
        String day =
                "  - date: 2026-10-0%d\n    pack: small\n    log: {file: %s, columns: {time: {column: t, unit: s}}}\n";
        Files.writeString(folder.resolve("a.csv"), "t\n1\n2\n", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("b.csv"), "t\n1\n2\n", StandardCharsets.UTF_8);
        throwline.model.Model model =
                ((ReadModel.Project) ModelFile.read(Path.of("examples/orchard.yaml"), new PackedAirfoils())).model();
        for (String second : List.of("a.csv", "b.csv")) {
            Files.writeString(
                    notes,
                    "throwline flights: 1\nflights:\n" + day.formatted(1, "a.csv") + day.formatted(2, second),
                    StandardCharsets.UTF_8);
            ReadFlights read = FlightsFile.read(notes, model);
            assertThat(read).isInstanceOf(ReadFlights.Faulty.class);
            assertThat(((ReadFlights.Faulty) read).problems().get(0).say(WORDS)).contains("count twice");
        }
    }
}
