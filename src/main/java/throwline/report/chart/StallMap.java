package throwline.report.chart;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import throwline.study.WingSweep;
import throwline.words.Words;

/** Span across, incidence up: dark where the section is past its stall, light where it is near. */
final class StallMap {

    /** Less angle than this left is near. */
    private static final double NEAR = Math.toRadians(2);

    /** Half the height of a row, degrees, where there is one incidence only. */
    private static final double LONE_ROW = 0.5;

    private static final int RIGHT = 130;

    private final Words words;

    StallMap(Words words) {
        this.words = words;
    }

    /** How much a section has left. */
    private enum State {
        /** Enough. */
        FREE(new Color(255, 255, 255, 0)),
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

    /** A plot of these incidences, in rising order. */
    XYPlot plot(NumberAxis across, List<WingSweep.Point> points) {
        double low = bound(points, 0, -1);
        double high = bound(points, points.size() - 1, 1);
        XYPlot plot = new XYPlot();
        HouseStyle.dress(plot);
        plot.setDomainAxis(across);
        plot.setRangeAxis(HouseStyle.axis(words.say("chart.wing.stalled.axis"), low, high, 8));
        plot.setInsets(new RectangleInsets(4, 4, 4, RIGHT));
        for (int i = 0; i < points.size(); i++) {
            row(plot, points.get(i), bound(points, i, -1), bound(points, i, 1));
        }
        if (points.stream().flatMap(p -> p.strips().stream()).allMatch(s -> State.of(s.margin()) == State.FREE)) {
            XYTextAnnotation none = new XYTextAnnotation(words.say("chart.none"), 0, (low + high) / 2);
            none.setFont(HouseStyle.TEXT);
            none.setTextAnchor(TextAnchor.CENTER);
            plot.addAnnotation(none);
        }
        return plot;
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
    private static void row(XYPlot plot, WingSweep.Point point, double bottom, double top) {
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
                plot.addAnnotation(new XYBoxAnnotation(
                        left.at() - left.width() / 2,
                        bottom,
                        right.at() + right.width() / 2,
                        top,
                        null,
                        null,
                        state.color));
            }
            from = i;
        }
    }
}
