package throwline.report.data;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.report.CompareAnswer;
import throwline.report.Sentences;
import throwline.study.Comparison.PackResult;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers;
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
                    setUp.headlines()
                            .all()
                            .forEach(entry -> text.append(line(place, entry)).append("\r\n"));
                }
            }
        }
        return text.toString();
    }

    private String line(List<String> place, HeadlineNumbers.Entry entry) {
        DataUnit unit = DataUnit.of(entry.quantity().dimension());
        Stream<String> answer = entry.number() instanceof Headline.Known known
                ? Stream.of(
                        JsonWriter.number(known.value() * unit.factor()),
                        JsonWriter.number(known.low() * unit.factor()),
                        JsonWriter.number(known.high() * unit.factor()),
                        Codes.of(known.basis()),
                        "")
                : Stream.of("", "", "", "", sentences.why((Headline.Unknown) entry.number()));
        Stream<String> names = place.stream().map(CsvCell::text);
        Stream<String> what = Stream.of(entry.quantity().key(), CsvCell.text(entry.stick()), unit.symbol());
        return Stream.of(names, what, answer.map(CsvCell::quoted))
                .flatMap(cells -> cells)
                .collect(Collectors.joining(","));
    }
}
