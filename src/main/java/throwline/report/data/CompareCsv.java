package throwline.report.data;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.report.CompareAnswer;
import throwline.report.Sentences;
import throwline.study.Comparison.PackResult;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Comparisons as a table for a spreadsheet, one number a line (RFC 4180): SI units, angles in degrees. */
public final class CompareCsv {

    private static final String HEADER = "model,pack,setup,quantity,stick,unit,value,low,high,basis,why";

    private final Sentences sentences;

    /** A writer with these words. */
    public CompareCsv(Sentences sentences) {
        this.sentences = sentences;
    }

    /** All answers below one heading. */
    public String write(List<CompareAnswer> answers) {
        StringBuilder text = new StringBuilder(HEADER).append("\r\n");
        for (CompareAnswer answer : answers) {
            String model = answer.comparison().model().name();
            for (PackResult pack : answer.comparison().packs()) {
                for (SetUpResult setUp : pack.setUps()) {
                    List<String> place =
                            List.of(model, pack.pack().name(), setUp.setUp().name());
                    rows(setUp).forEach(row -> text.append(line(place, row)).append("\r\n"));
                }
            }
        }
        return text.toString();
    }

    private static Stream<Row> rows(SetUpResult result) {
        Stream<Row> numbers = Stream.of(
                new Row("stallSpeed", "", "m/s", 1, result.stallSpeed()),
                new Row("approachSpeed", "", "m/s", 1, result.approachSpeed()),
                new Row("descentAngle", "", "deg", Math.toDegrees(1), result.descentAngle()),
                new Row("sinkRate", "", "m/s", 1, result.sinkRate()),
                new Row("bestGlideRatio", "", "", 1, result.bestGlideRatio()),
                new Row("noseDownSpeed", "", "m/s", 1, result.noseDownSpeed()),
                new Row("elevator", "", "deg", Math.toDegrees(1), result.elevator()),
                new Row("elevatorChange", "", "deg", Math.toDegrees(1), result.elevatorChange()),
                new Row("flapSpeedLimit", "", "m/s", 1, result.servos().flapSpeedLimit()),
                new Row("flareHeight", "", "m", 1, result.field().flareHeight()),
                new Row("float", "", "m", 1, result.field().floatDistance()),
                new Row("gustLimit", "", "m/s", 1, result.field().gustLimit()),
                new Row("landingDistance", "", "m", 1, result.field().landing()),
                new Row("landingDistanceInWind", "", "m", 1, result.field().landingInWind()));
        Stream<Row> rolls = result.rollRates().stream()
                .map(roll -> new Row("rollRate", roll.stick(), "deg/s", Math.toDegrees(1), roll.rate()));
        return Stream.concat(numbers, rolls);
    }

    private String line(List<String> place, Row row) {
        Stream<String> answer;
        if (row.headline instanceof Headline.Known known) {
            answer = Stream.of(
                    JsonWriter.number(known.value() * row.factor),
                    JsonWriter.number(known.low() * row.factor),
                    JsonWriter.number(known.high() * row.factor),
                    Codes.of(known.basis()),
                    "");
        } else {
            answer = Stream.of("", "", "", "", sentences.why((Headline.Unknown) row.headline));
        }
        return Stream.of(place.stream(), Stream.of(row.quantity, row.stick, row.unit), answer)
                .flatMap(cells -> cells)
                .map(CompareCsv::quoted)
                .collect(Collectors.joining(","));
    }

    private static String quoted(String cell) {
        return cell.matches("[^,\"\r\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private record Row(String quantity, String stick, String unit, double factor, Headline headline) {}
}
