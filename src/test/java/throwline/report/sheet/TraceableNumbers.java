package throwline.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.report.CompareAnswer;
import throwline.report.ElevatorMixes;
import throwline.report.Sentences;
import throwline.report.data.CompareJson;
import throwline.report.document.Table.Cells;
import throwline.study.EdgeThrow;
import throwline.units.Display;
import throwline.words.Words;

/** Numbers on sheets held against the JSON of the same answer. */
final class TraceableNumbers {

    private static final Words WORDS = Words.load();
    private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z\\d.])\\d+\\.\\d+");

    private TraceableNumbers() {}

    /** Each number with a point on a sheet is a number of compare --json, as it is or in mm. */
    static void check(CompareAnswer from, List<Sheet> documents) {
        String json = new CompareJson(new Sentences(WORDS, Display.metric())).write(List.of(from));
        Set<String> known = new HashSet<>();
        Matcher numbers = Pattern.compile("-?\\d+(\\.\\d+)?(E-?\\d+)?").matcher(json);
        while (numbers.find()) {
            double number = Math.abs(Double.parseDouble(numbers.group()));
            // A full roll takes 360 degrees over the rate.
            known.add(tenths(360 / number));
            for (double factor : new double[] {1, 1000}) {
                // Six figures of a number half way between two tenths may round either way.
                known.add(tenths(number * factor * (1 - 5e-6)));
                known.add(tenths(number * factor * (1 + 5e-6)));
            }
        }
        // Where the elevator may stand is in degrees there, and in mm at its trailing edge on the card.
        EdgeThrow edge = ElevatorMixes.edge(from.comparison().model());
        Matcher elevators = Pattern.compile("\"elevator\": \\{\"value\": (\\S+), \"low\": (\\S+), \"high\": (\\S+),")
                .matcher(json);
        while (elevators.find()) {
            for (int i = 1; i <= 3; i++) {
                double angle = Math.toRadians(Double.parseDouble(elevators.group(i)));
                known.add(tenths(1000 * Math.abs(edge.distance(angle))));
            }
        }
        for (Sheet document : documents) {
            List<String> texts = new ArrayList<>();
            SheetsTest.rows(document).forEach(row -> {
                if (row instanceof Cells cells) {
                    cells.cells().forEach(cell -> texts.add(SheetsTest.text(cell)));
                }
            });
            Matcher printed = NUMBER.matcher(String.join("\n", texts));
            int count = 0;
            while (printed.find()) {
                count++;
                assertThat(known).as(document.name() + ": " + printed.group()).contains(printed.group());
            }
            assertThat(count).as(document.name()).isGreaterThan(5);
        }
    }

    private static String tenths(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }
}
