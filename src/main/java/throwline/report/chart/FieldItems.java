package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.model.Field;
import throwline.words.Words;

/** Ground, obstacle and end of a field in a view from the side; places in metres from the obstacle, heights in metres. */
final class FieldItems {

    /** How high a label stands above its line, points. */
    private static final double ABOVE = 12;

    private static final double OBSTACLE_WIDTH = 10;

    private final Words words;
    private final double farthest;

    /**
     * @param words the sentences
     * @param farthest where the view ends, m
     */
    FieldItems(Words words, double farthest) {
        this.words = words;
        this.farthest = farthest;
    }

    List<Item> all(Field field) {
        List<Item> items = new ArrayList<>();
        items.add(Item.Line.level(0, ChartStyle.QUIET_INK, ChartStyle.THICK));
        if (field.obstacle() > 0) {
            Place top = Place.of(0, field.obstacle());
            Place foot = Place.of(0, 0);
            items.add(Item.Area.of(
                    List.of(foot, top, top.moved(-OBSTACLE_WIDTH, 0), foot.moved(-OBSTACLE_WIDTH, 0)),
                    ChartStyle.QUIET_INK));
            items.add(Item.Text.of(
                    top.moved(-OBSTACLE_WIDTH, -ABOVE),
                    words.say("chart.descent.obstacle", metres(field.obstacle())),
                    Brush.Side.RIGHT));
        }
        field.length().stream().filter(length -> length <= farthest).forEach(length -> {
            Place top = Place.of(length, Place.EDGE);
            items.add(Item.Line.of(
                    ChartStyle.QUIET_INK,
                    ChartStyle.THICK,
                    top.moved(0, 2 * ABOVE),
                    Place.of(length, 0).moved(0, 6)));
            boolean late = length > farthest / 2;
            items.add(Item.Text.of(
                    top.moved(late ? 4 : -4, ABOVE),
                    words.say("chart.descent.field", metres(length)),
                    late ? Brush.Side.LEFT : Brush.Side.RIGHT));
        });
        return items;
    }

    /** 6 m or 7.5 m. */
    static String metres(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f m" : "%.1f m", value);
    }
}
