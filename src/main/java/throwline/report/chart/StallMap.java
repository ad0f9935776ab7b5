package throwline.report.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import throwline.study.WingSweep;
import throwline.words.Words;

/** Map of the span across and incidence up: dark where the section is past its stall, light where it is near. */
final class StallMap {

    /** Less angle than this left is near. */
    private static final double NEAR = Math.toRadians(2);

    /** Half the height of a row, degrees, where there is one incidence only. */
    private static final double LONE_ROW = 0.5;

    private final Words words;

    StallMap(Words words) {
        this.words = words;
    }

    /** How much a section has left. */
    private enum State {
        /** Enough. */
        FREE(ChartStyle.GROUND),
        /** Little. */
        NEAR_STALL(new Color(0xBBD7EA)),
        /** Nothing. */
        PAST(new Color(0x0072B2));

        private final Color color;

        State(Color color) {
            this.color = color;
        }

        static State of(double margin) {
            return margin <= 0 ? PAST : margin < NEAR ? NEAR_STALL : FREE;
        }
    }

    /** A panel of these incidences, in rising order. */
    Panel draw(List<WingSweep.Point> points) {
        double low = bound(points, 0, -1);
        double high = bound(points, points.size() - 1, 1);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            row(items, points.get(i), bound(points, i, -1), bound(points, i, 1));
        }
        if (items.isEmpty()) {
            Place middle = Place.of(0, (low + high) / 2);
            items.add(Item.Text.of(middle, words.say("chart.none"), Brush.Side.MIDDLE));
        }
        return Panel.drawing(1, Axis.of(words.say("chart.wing.stalled.axis"), low, high, 8), false, items);
    }

    /** Half way to the next incidence, degrees; as far outside at the ends. */
    private static double bound(List<WingSweep.Point> points, int i, int side) {
        double here = Math.toDegrees(points.get(i).incidence());
        int next = i + side;
        if (next >= 0 && next < points.size()) {
            return (here + Math.toDegrees(points.get(next).incidence())) / 2;
        }
        int other = i - side;
        return other >= 0 && other < points.size()
                ? here + (here - Math.toDegrees(points.get(other).incidence())) / 2
                : here + side * LONE_ROW;
    }

    /** Strips of the same state beside each other make one box. */
    private static void row(List<Item> items, WingSweep.Point point, double bottom, double top) {
        List<WingSweep.Strip> strips = point.strips();
        int from = 0;
        for (int i = 1; i <= strips.size(); i++) {
            State state = State.of(strips.get(from).margin());
            if (i < strips.size() && State.of(strips.get(i).margin()) == state) {
                continue;
            }
            if (state != State.FREE) {
                WingSweep.Strip left = strips.get(from);
                WingSweep.Strip right = strips.get(i - 1);
                items.add(Item.Area.box(
                        left.at() - left.width() / 2, right.at() + right.width() / 2, bottom, top, state.color));
            }
            from = i;
        }
    }
}
