package throwline.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.study.EdgeThrow;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** The elevator mix to start with, and below it where the elevator sits when coming in, in millimetres. */
final class ElevatorChart {

    private static final double MILLIMETRES = 1000;
    private static final double MARGIN = 0.12;

    private final ChartSource source;
    private final EdgeThrow edge;

    ElevatorChart(ChartSource source) {
        this.source = source;
        this.edge = new EdgeThrow(source.model().tail().throwChord());
    }

    Picture draw() {
        Words words = source.words();
        List<Row> mixes = new ArrayList<>();
        List<Row> places = new ArrayList<>();
        for (int i = 0; i < source.setUps().size(); i++) {
            SetUpResult setUp = source.setUps().get(i);
            mixes.add(mix(i, setUp));
            List<Row.Value> numbers = new ArrayList<>();
            setUp.known(FlightQuantity.ELEVATOR).ifPresent(v -> numbers.add(hollow(v, direction(v.value()))));
            places.add(source.row(i, numbers));
        }
        double end = (1 + MARGIN)
                * Stream.concat(mixes.stream(), places.stream())
                        .flatMap(row -> row.numbers().stream())
                        .mapToDouble(number -> Math.max(Math.abs(number.low()), Math.abs(number.high())))
                        .reduce(1, Math::max);
        Axis across = Axis.of(words.say("chart.axis.elevator"), -end, end, 10);
        return Picture.ofRows(
                "elevator",
                source.caption("chart.elevator.title", "chart.elevator.for"),
                source.layout(),
                196 + Panel.ROW * (mixes.size() + places.size() + 1),
                across.worded(across.step(), Axis.UNSIGNED),
                Panel.rows(source.layout(), mixes, words.say("chart.elevator.mix"), List.of()),
                Panel.rows(source.layout(), places, words.say("chart.elevator.sits"), List.of()));
    }

    private Row mix(int index, SetUpResult setUp) {
        Words words = source.words();
        if (source.model().isReference(setUp.setUp())) {
            return new Row(
                    source.name(index), ChartStyle.look(index), List.of(), words.say("chart.elevator.reference"));
        }
        List<Row.Value> numbers = new ArrayList<>();
        setUp.known(FlightQuantity.ELEVATOR_CHANGE).ifPresent(known -> {
            double start = known.startingMix().orElse(0.0);
            String label = known.mayGoEitherWay()
                    ? words.say("chart.elevator.none")
                    : words.say("chart.elevator.start", direction(start));
            double place = millimetres(start);
            numbers.add(new Row.Value(place, place, place, true, label));
            numbers.add(hollow(known, words.say("chart.elevator.expected", direction(known.value()))));
            numbers.sort(Comparator.comparing(Row.Value::value));
        });
        return source.row(index, numbers);
    }

    private Row.Value hollow(Headline.Known known, String label) {
        return new Row.Value(
                millimetres(known.value()), millimetres(known.low()), millimetres(known.high()), false, label);
    }

    private double millimetres(double angle) {
        return MILLIMETRES * edge.distance(angle);
    }

    private String direction(double angle) {
        String size = String.format(Locale.ROOT, "%.1f", Math.abs(millimetres(angle)));
        if (size.equals("0.0")) {
            return source.words().say("chart.elevator.neutral");
        }
        return source.words().say(angle > 0 ? "chart.elevator.down" : "chart.elevator.up", size);
    }
}
