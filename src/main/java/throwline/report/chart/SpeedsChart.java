package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Speeds as one ruler: where each set-up stalls and how fast to come in. */
final class SpeedsChart {

    private static final double MARGIN = 0.06;

    private final ChartSource source;

    SpeedsChart(ChartSource source) {
        this.source = source;
    }

    Picture draw() {
        List<Row> rows = IntStream.range(0, source.setUps().size())
                .mapToObj(i -> source.row(i, numbers(source.setUps().get(i))))
                .toList();
        List<Row.Value> all =
                rows.stream().flatMap(row -> row.numbers().stream()).toList();
        double slowest = all.stream().mapToDouble(Row.Value::low).min().orElse(0);
        double fastest = all.stream().mapToDouble(Row.Value::high).max().orElse(0);
        double low = slowest * (1 - MARGIN);
        double high = fastest > 0 ? fastest * (1 + MARGIN) : 1;
        return Picture.ofRows(
                        "speeds",
                        source.caption("chart.speeds.title", "chart.speeds.for"),
                        source.layout(),
                        236 + Panel.ROW * rows.size(),
                        source.speeds(low, high),
                        Panel.rows(source.layout(), rows, "", List.of()))
                .beside(source.besideSpeeds(low, high));
    }

    private List<Row.Value> numbers(SetUpResult setUp) {
        List<Row.Value> numbers = new ArrayList<>();
        setUp.stallSpeed().known().ifPresent(v -> numbers.add(number(v, false, "chart.speeds.stalls")));
        setUp.approachSpeed().known().ifPresent(v -> numbers.add(number(v, true, "chart.speeds.comein")));
        return numbers;
    }

    private Row.Value number(Headline.Known speed, boolean filled, String key) {
        String label = source.words().say(key, String.format(Locale.ROOT, "%.1f", speed.value()));
        return new Row.Value(speed.value(), speed.low(), speed.high(), filled, label);
    }
}
