package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.study.Headline;
import throwline.words.Words;

/** The way down seen from the side, to scale, with the obstacle; below it where each set-up meets the ground. */
final class DescentChart {

    /** Without an obstacle the way starts here, m. */
    private static final double FROM = 10;
    /** The axis ends beyond the farthest point by this factor, and beyond its band by no more than this one. */
    private static final double BEYOND = 1.08;

    private static final double FARTHEST_BAND = 1.5;

    /** Points above the start of the ways, below the ground and between two heights on the scale. */
    private static final double ABOVE = 38;

    private static final double BELOW = 14;
    private static final double APART = 18;

    private final ChartSource source;
    private final double height;

    DescentChart(ChartSource source) {
        this.source = source;
        double obstacle = source.model().field().obstacle();
        this.height = obstacle > 0 ? obstacle : FROM;
    }

    Picture draw() {
        Words words = source.words();
        boolean obstacle = source.model().field().obstacle() > 0;
        double farthest = farthest();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < source.setUps().size(); i++) {
            List<Row.Value> numbers = new ArrayList<>();
            source.setUps()
                    .get(i)
                    .descentAngle()
                    .known()
                    .filter(angle -> angle.value() > 0)
                    .ifPresent(angle -> numbers.add(number(angle, farthest)));
            rows.add(source.row(i, numbers));
        }
        double behind = -0.04 * farthest;
        Layout layout = source.layout();
        double metre = (layout.width() - 36 - layout.names() - layout.right()) / (farthest - behind);
        int view = (int) (ABOVE + BELOW + height * metre);
        String start = FieldItems.metres(height).replace(" m", "");
        return Picture.ofRows(
                "descent",
                source.caption(
                        "chart.descent.title",
                        obstacle ? "chart.descent.for.obstacle" : "chart.descent.for.height",
                        start),
                layout,
                206 + view + Panel.ROW * rows.size(),
                Axis.of(words.say(obstacle ? "chart.axis.behind" : "chart.axis.ahead", start), behind, farthest, 10),
                Panel.drawing(view, Axis.hidden(-BELOW / metre, height), true, ways(rows, metre, farthest)),
                Panel.rows(layout, rows, "", List.of()));
    }

    private List<Item> ways(List<Row> rows, double metre, double farthest) {
        Place start = Place.of(0, height);
        List<Item> items = new ArrayList<>();
        List<Item> marks = new ArrayList<>();
        List<Item> lines = new ArrayList<>();
        for (Row row : rows) {
            for (Row.Value end : row.numbers()) {
                List<Place> wedge = List.of(start, Place.of(end.low(), 0), Place.of(end.high(), 0));
                items.add(Item.Area.of(wedge, row.look().band()));
                Place ground = Place.of(end.value(), 0);
                lines.add(Item.Line.of(row.look().color(), row.look().line(), start, ground));
                marks.add(new Item.Mark(ground, row.look(), true));
            }
        }
        double step = Stream.of(0.5, 1.0, 2.0, 5.0, 10.0)
                .filter(metres -> metres * metre >= APART)
                .findFirst()
                .orElse(20.0);
        for (int i = 0; i * step <= height; i++) {
            items.add(Item.Line.level(i * step, ChartStyle.GRID, ChartStyle.THIN));
            Place left = Place.of(-Place.EDGE, i * step).moved(-8, 0);
            items.add(Item.Text.of(left, FieldItems.metres(i * step), Brush.Side.LEFT));
        }
        items.addAll(new FieldItems(source.words(), farthest).all(source.model().field()));
        items.addAll(lines);
        items.addAll(marks);
        return items;
    }

    private Row.Value number(Headline.Known angle, double farthest) {
        double near = distance(angle.high());
        double far = distance(angle.low());
        double degrees = Math.toDegrees(angle.value());
        String label = source.words()
                .say(
                        "chart.descent.mark",
                        String.format(Locale.ROOT, degrees < 10 ? "%.1f" : "%.0f", degrees),
                        whole(distance(angle.value())),
                        whole(near),
                        Double.isFinite(far) ? whole(far) : "?");
        return new Row.Value(distance(angle.value()), near, Math.min(farthest, far), true, label);
    }

    private double farthest() {
        double farthest = source.setUps().stream()
                .flatMap(setUp -> setUp.descentAngle().known().stream())
                .filter(angle -> angle.value() > 0)
                .mapToDouble(angle -> Math.min(FARTHEST_BAND * distance(angle.value()), distance(angle.low())))
                .reduce(1, Math::max);
        return BEYOND * farthest;
    }

    private double distance(double angle) {
        return angle > 0 ? height / Math.tan(angle) : Double.POSITIVE_INFINITY;
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
