package throwline.report.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import throwline.model.Field;
import throwline.study.FieldAnswer.Legs;
import throwline.study.Headline;
import throwline.words.Words;

/** Landings seen from the side, heights enlarged, with the field; below it how far each leg takes and where it stops. */
final class LandingChart {

    private static final int VIEW = 210;

    /** The axis ends beyond the farthest end of a band by this factor. */
    private static final double BEYOND = 1.06;

    /** Room above the highest path, as a factor. */
    private static final double ABOVE = 1.25;

    /** Rows that the key takes, and points between a row's line and its bar. */
    private static final double KEY = 0.5;

    private static final double BELOW = 9;
    private static final double THICK = 8;
    private static final double SAMPLE = 26;
    private static final double GAP = 18;

    private final Layout layout;
    private final Field field;
    private final Words words;
    private final List<Entry> entries;

    /**
     * @param layout for which place
     * @param field where it lands
     * @param entries one a row
     * @param words the sentences
     */
    LandingChart(Layout layout, Field field, List<Entry> entries, Words words) {
        this.layout = layout;
        this.field = field;
        this.entries = List.copyOf(entries);
        this.words = words;
    }

    /**
     * Landing of one row.
     *
     * @param name what stands on the left
     * @param legs leg by leg; empty where there is none
     * @param total from the obstacle to the stop
     */
    record Entry(String name, Optional<Legs> legs, Headline total) {}

    /** Leg of a landing, as a part of a bar. */
    private enum Leg {
        APPROACH("chart.landing.approach", Item.Hatch.NONE, false),
        ROUND_OUT("chart.landing.round", Item.Hatch.NONE, true),
        FLOAT("chart.landing.float", Item.Hatch.UPRIGHT, false),
        ROLL("chart.landing.roll", Item.Hatch.LEVEL, false);

        private final String key;
        private final Item.Hatch hatch;
        private final boolean filled;

        Leg(String key, Item.Hatch hatch, boolean filled) {
            this.key = key;
            this.hatch = hatch;
            this.filled = filled;
        }
    }

    Picture draw(Caption caption) {
        double farthest = BEYOND
                * Math.max(
                        field.length().orElse(1),
                        entries.stream()
                                .flatMap(entry -> entry.total().known().stream())
                                .mapToDouble(Headline.Known::high)
                                .max()
                                .orElse(0));
        Axis across = Axis.of(
                words.say(field.obstacle() > 0 ? "chart.axis.behind.obstacle" : "chart.axis.behind.start"),
                -0.04 * farthest,
                farthest,
                layout == Layout.NARROW ? 5 : 10);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            List<Row.Value> numbers = entries.get(i).total().known().stream()
                    .map(total -> number(total, farthest))
                    .toList();
            rows.add(new Row(entries.get(i).name(), ChartStyle.look(i), numbers, words.say("chart.none")));
        }
        Panel legs = Panel.rows(layout, rows, " ", bars());
        return Picture.ofRows(
                "landing",
                caption,
                layout,
                210 + VIEW + (int) (Panel.ROW * (entries.size() + KEY)),
                across,
                ways(farthest),
                legs);
    }

    private Panel ways(double farthest) {
        double highest = field.obstacle();
        List<Item> items = new ArrayList<>(new FieldItems(words, farthest).all(field));
        List<Item> marks = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            ChartStyle.Look look = ChartStyle.look(i);
            for (Legs legs : entries.get(i).legs().stream().toList()) {
                List<Place> way = legs.way().stream()
                        .map(spot -> Place.of(spot.along(), spot.height()))
                        .toList();
                highest = Math.max(highest, way.get(0).y());
                items.add(new Item.Line(way, false, look.color(), look.line()));
                double begins = Math.max(0, legs.approach());
                marks.add(new Item.Mark(Place.of(begins, heightAt(way, begins)), look, false));
                marks.add(new Item.Mark(Place.of(legs.touchdown(), 0), look, true));
            }
        }
        items.addAll(marks);
        Axis up = Axis.of(words.say("chart.axis.wheels"), 0, Math.max(1, ABOVE * highest), 5);
        return Panel.drawing(VIEW, up, false, items);
    }

    private static double heightAt(List<Place> way, double along) {
        for (int i = 1; i < way.size(); i++) {
            Place a = way.get(i - 1);
            Place b = way.get(i);
            if (a.x() <= along && along <= b.x() && b.x() > a.x()) {
                return a.y() + (along - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
            }
        }
        return way.get(0).y();
    }

    /** A bar below each row, with a key above all of them. */
    private List<Item> bars() {
        List<Item> items = new ArrayList<>();
        items.add(this::key);
        for (int i = 0; i < entries.size(); i++) {
            Color color = ChartStyle.look(i).color();
            double row = Row.middle(i);
            entries.get(i).legs().ifPresent(legs -> {
                double begins = Math.max(0, legs.approach());
                double level = legs.approach() + legs.roundOut();
                double[] ends = {0, begins, level, legs.touchdown(), legs.touchdown() + legs.roll()};
                Leg[] parts = Leg.values();
                for (int k = 0; k < parts.length; k++) {
                    if (ends[k + 1] > ends[k]) {
                        Place left = Place.of(ends[k], row).moved(0, BELOW);
                        items.addAll(part(
                                parts[k],
                                color,
                                left,
                                Place.of(ends[k + 1], row).moved(0, BELOW)));
                    }
                }
            });
        }
        return items;
    }

    /** Part of a bar between two upper corners. */
    private static List<Item> part(Leg leg, Color color, Place left, Place right) {
        List<Place> corners = List.of(left, right, right.moved(0, THICK), left.moved(0, THICK));
        return List.of(
                new Item.Area(corners, leg.filled ? color : ChartStyle.GROUND, leg.hatch, color),
                new Item.Line(corners, true, color, ChartStyle.THIN));
    }

    private void key(Brush brush) {
        double width = 0;
        for (Leg leg : Leg.values()) {
            width += SAMPLE + 6 + Brush.width(words.say(leg.key), ChartStyle.SMALL) + GAP;
        }
        // On a narrow chart the key begins below the names.
        double x = Math.min(0, brush.area().getWidth() - width + GAP);
        for (Leg leg : Leg.values()) {
            Place left = new Place(-Place.EDGE, Place.EDGE, x, THICK);
            part(leg, ChartStyle.look(0).color(), left, left.moved(SAMPLE, 0)).forEach(item -> item.draw(brush));
            String text = words.say(leg.key);
            Item.Text.quiet(left.moved(SAMPLE + 6, THICK / 2), text, Brush.Side.RIGHT)
                    .draw(brush);
            x += SAMPLE + 6 + Brush.width(text, ChartStyle.SMALL) + GAP;
        }
    }

    private Row.Value number(Headline.Known total, double farthest) {
        String label = words.say("chart.landing.mark", whole(total.value()), whole(total.low()), whole(total.high()));
        return new Row.Value(total.value(), total.low(), Math.min(farthest, total.high()), true, label);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
