package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.flight.PathPoint;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Take-offs seen from the side, heights enlarged, with the obstacle; below them how far each takes, with its band. */
final class TakeOffChart {

    private static final int VIEW = 210;
    private static final double BEYOND = 1.06;
    private static final double ABOVE = 1.25;

    private final ChartSource source;
    private final Words words;
    private final double obstacle;

    TakeOffChart(ChartSource source) {
        this.source = source;
        words = source.words();
        obstacle = source.model().field().obstacle();
    }

    /** True where any set-up takes off. */
    static boolean isDrawn(ChartSource source) {
        return source.setUps().stream().anyMatch(each -> !each.power().takeOff().isEmpty());
    }

    private Headline number(SetUpResult result) {
        return result.number(obstacle > 0 ? FlightQuantity.TAKE_OFF_DISTANCE : FlightQuantity.TAKE_OFF_RUN);
    }

    Picture draw() {
        double farthest = 0;
        for (SetUpResult each : source.setUps()) {
            List<PathPoint> way = each.power().takeOff();
            farthest = Math.max(
                    farthest, way.isEmpty() ? 0 : way.get(way.size() - 1).along());
            farthest = Math.max(
                    farthest, number(each).known().map(Headline.Known::high).orElse(0.0));
        }
        double end = BEYOND * farthest;
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < source.setUps().size(); i++) {
            rows.add(source.row(
                    i,
                    number(source.setUps().get(i)).known().stream()
                            .map(this::value)
                            .toList()));
        }
        Axis across =
                Axis.of(words.say("chart.axis.standing"), -0.04 * end, end, source.layout() == Layout.NARROW ? 5 : 10);
        return Picture.ofRows(
                "take-off",
                obstacle > 0
                        ? source.caption("chart.takeoff.title", "chart.takeoff.for", FieldItems.metres(obstacle))
                        : source.caption("chart.takeoff.title", "chart.takeoff.for.run"),
                source.layout(),
                210 + VIEW + Panel.ROW * rows.size(),
                across,
                ways(),
                Panel.rows(source.layout(), rows, " ", List.of()));
    }

    private Row.Value value(Headline.Known known) {
        return new Row.Value(
                known.value(),
                known.low(),
                known.high(),
                true,
                words.say(
                        obstacle > 0 ? "chart.takeoff.mark" : "chart.takeoff.mark.run",
                        whole(known.value()),
                        whole(known.low()),
                        whole(known.high())));
    }

    private Panel ways() {
        List<Item> items = new ArrayList<>();
        items.add(Item.Line.level(0, ChartStyle.QUIET_INK, ChartStyle.THICK));
        if (obstacle > 0) {
            items.add(Item.Line.level(obstacle, ChartStyle.QUIET_INK, ChartStyle.THIN));
            items.add(Item.Text.quiet(
                    Place.of(-Place.EDGE, obstacle).moved(4, -9),
                    words.say("chart.descent.obstacle", FieldItems.metres(obstacle)),
                    Brush.Side.RIGHT));
        }
        double highest = obstacle;
        List<Item> marks = new ArrayList<>();
        for (int i = 0; i < source.setUps().size(); i++) {
            SetUpResult each = source.setUps().get(i);
            List<Place> way = each.power().takeOff().stream()
                    .map(spot -> Place.of(spot.along(), spot.height()))
                    .toList();
            if (way.isEmpty()) {
                continue;
            }
            ChartStyle.Look look = ChartStyle.look(i);
            highest = Math.max(highest, way.get(way.size() - 1).y());
            items.add(new Item.Line(way, false, look.color(), look.line()));
            marks.add(new Item.Mark(way.get(1), look, false));
            if (obstacle > 0) {
                number(each)
                        .known()
                        .ifPresent(known -> marks.add(new Item.Mark(Place.of(known.value(), obstacle), look, true)));
            }
        }
        items.addAll(marks);
        return Panel.drawing(VIEW, Axis.of(words.say("chart.axis.wheels"), 0, ABOVE * highest, 5), false, items);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
