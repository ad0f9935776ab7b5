package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import throwline.study.Handling.End;
import throwline.study.Handling.Mix;
import throwline.study.Handling.Moment;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.words.Words;

/** Height, airspeed and load over time while surfaces move, one curve a mix; the time that they take is shaded. */
final class MoveChart {

    /** Room for the names of the curves, points. */
    private static final int RIGHT = 130;

    private static final int PANEL = 190;
    private static final int AROUND = 190;
    private static final double ROOM = 0.1;

    /** A panel shows at least so much: metres, metres a second, loads. */
    private static final double LEAST_HEIGHT = 2;

    private static final double LEAST_SPEED = 3;
    private static final double LEAST_LOAD = 0.4;

    /** A load above this is a balloon (PRACTICE, methods manual 17.4). */
    private static final double BALLOON = 1.3;

    private static final Color SHADE = new Color(0xF1F1F1);
    private static final Color NOTHING = new Color(0, 0, 0, 0);

    private final Moves moves;
    private final String setUp;
    private final String reference;
    private final String of;
    private final Words words;

    /**
     * @param moves what is shown
     * @param setUp name of the set-up
     * @param reference name of the one it is compared with
     * @param of the line that names model and pack
     * @param words the sentences
     */
    MoveChart(Moves moves, String setUp, String reference, String of, Words words) {
        this.moves = moves;
        this.setUp = setUp;
        this.reference = reference;
        this.of = of;
        this.words = words;
    }

    /** The surfaces go to the set-up; height is that above the path it was on. */
    Picture lowering() {
        XYPlot height = panel(
                moves.lowering(), new View("chart.move.off-path", Moment::offPath, LEAST_HEIGHT, 0, 0, List.of()));
        line(height, 0);
        List<EndLabels.End> level =
                List.of(EndLabels.End.ofLevel(words.say("chart.move.balloon"), end(moves.lowering()), BALLOON));
        XYPlot load = panel(moves.lowering(), new View("chart.move.load", Moment::load, LEAST_LOAD, 1, BALLOON, level));
        line(load, BALLOON);
        return picture("surfaces-down", moves.lowering(), moves.lowerSpeed(), height, load);
    }

    /** The surfaces go back; height is that over where it was. */
    Picture raising() {
        XYPlot height =
                panel(moves.raising(), new View("chart.move.height", Moment::height, LEAST_HEIGHT, 0, 0, List.of()));
        XYPlot load = panel(moves.raising(), new View("chart.move.load", Moment::load, LEAST_LOAD, 1, 1, List.of()));
        return picture("surfaces-up", moves.raising(), moves.raiseSpeed(), height, load);
    }

    private Picture picture(String name, List<Move> runs, double speed, XYPlot height, XYPlot load) {
        double time = runs.get(0).time();
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(
                HouseStyle.axis(words.say("chart.move.time"), 0, Math.max(end(runs), time), 8));
        plot.setGap(14);
        plot.setInsets(new RectangleInsets(4, 4, 4, RIGHT));
        XYPlot slow = speed(runs);
        plot.add(height);
        plot.add(slow);
        plot.add(load);
        shade(height, time, true);
        shade(slow, time, false);
        shade(load, time, false);
        HouseStyle.dress(plot);
        String title = words.say("chart.move." + name + ".title");
        String holdsFor = words.say(
                "chart.move." + name + ".for",
                setUp,
                reference,
                String.format(Locale.ROOT, "%.1f", speed),
                String.format(Locale.ROOT, "%.1f", time),
                String.format(Locale.ROOT, "%.1f", moves.terms().reaction()),
                String.format(Locale.ROOT, "%.1f", moves.terms().hand()));
        return new Picture(
                name,
                title,
                HouseStyle.WIDTH,
                AROUND + 3 * PANEL,
                HouseStyle.chart(plot, title, List.of(holdsFor, of), words.say("chart.move.proof")));
    }

    private XYPlot speed(List<Move> runs) {
        double slower = Math.min(moves.stall(), moves.referenceStall());
        double faster = Math.max(moves.stall(), moves.referenceStall());
        XYPlot plot =
                panel(runs, new View("chart.axis.airspeed", Moment::speed, LEAST_SPEED, slower, faster, List.of()));
        boolean own = moves.stall() < moves.referenceStall();
        // Both may lie close together: one name above its line, the other below.
        label(
                line(plot, faster),
                words.say("chart.move.stalls", own ? reference : setUp),
                RectangleAnchor.TOP_LEFT,
                TextAnchor.BOTTOM_LEFT);
        label(
                line(plot, slower),
                words.say("chart.move.stalls", own ? setUp : reference),
                RectangleAnchor.BOTTOM_LEFT,
                TextAnchor.TOP_LEFT);
        return plot;
    }

    private static double end(List<Move> runs) {
        return runs.stream()
                .map(Move::history)
                .mapToDouble(history -> history.get(history.size() - 1).time())
                .max()
                .orElse(0);
    }

    /**
     * What a panel shows.
     *
     * @param axis key of its axis
     * @param value of a moment
     * @param least height of the panel in terms of the value
     * @param low in view at least
     * @param high in view at least
     * @param levels named beside the curves
     */
    private record View(
            String axis,
            ToDoubleFunction<Moment> value,
            double least,
            double low,
            double high,
            List<EndLabels.End> levels) {}

    private XYPlot panel(List<Move> runs, View view) {
        double bottom = view.low;
        double top = view.high;
        List<Curves.Curve> curves = new ArrayList<>();
        List<EndLabels.End> ends = new ArrayList<>(view.levels);
        for (int i = 0; i < runs.size(); i++) {
            List<double[]> points = new ArrayList<>();
            for (Moment moment : runs.get(i).history()) {
                double y = view.value.applyAsDouble(moment);
                points.add(new double[] {moment.time(), y});
                bottom = Math.min(bottom, y);
                top = Math.max(top, y);
            }
            boolean whole = runs.get(i).end() == End.FOLLOWED;
            double[] last = points.get(points.size() - 1);
            if (whole) {
                ends.add(EndLabels.End.of(name(runs.get(i)), HouseStyle.look(i), last[0], last[1]));
            }
            curves.add(new Curves.Curve(whole ? "" : name(runs.get(i)), HouseStyle.look(i), points, Optional.empty()));
        }
        double room = Math.max(ROOM * (top - bottom), (view.least - (top - bottom)) / 2);
        NumberAxis up = HouseStyle.axis(words.say(view.axis), bottom - 2 * room, top + 1.5 * room, 5);
        XYPlot plot = Curves.plot(HouseStyle.axis("", 0, 1, 1), up, curves);
        plot.addAnnotation(new EndLabels(ends), false);
        return plot;
    }

    private String name(Move run) {
        Mix mix = run.mix();
        String name = words.say(
                mix.own()
                        ? "chart.move.own"
                        : mix.share() == 0
                                ? "chart.move.none"
                                : mix.share() == 1 ? "chart.move.whole" : "chart.move.half");
        return run.end() == End.FOLLOWED
                ? name
                : words.say(run.end() == End.LOST_UP ? "chart.move.lost.up" : "chart.move.lost.down", name);
    }

    private static ValueMarker line(XYPlot plot, double value) {
        ValueMarker marker = new ValueMarker(
                value,
                HouseStyle.QUIET_INK,
                new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {2, 3}, 0));
        plot.addRangeMarker(marker, Layer.BACKGROUND);
        return marker;
    }

    private static void label(ValueMarker marker, String text, RectangleAnchor anchor, TextAnchor side) {
        marker.setLabel(text);
        marker.setLabelFont(HouseStyle.SMALL);
        marker.setLabelPaint(HouseStyle.QUIET_INK);
        marker.setLabelBackgroundColor(NOTHING);
        marker.setLabelAnchor(anchor);
        marker.setLabelTextAnchor(side);
        marker.setLabelOffset(new RectangleInsets(2, 6, 2, 6));
    }

    private void shade(XYPlot plot, double time, boolean named) {
        if (time <= 0) {
            return;
        }
        IntervalMarker marker = new IntervalMarker(0, time, SHADE);
        if (named) {
            marker.setLabel(words.say("chart.move.moving"));
            marker.setLabelFont(HouseStyle.SMALL);
            marker.setLabelPaint(HouseStyle.QUIET_INK);
            marker.setLabelBackgroundColor(NOTHING);
            marker.setLabelAnchor(RectangleAnchor.BOTTOM_LEFT);
            marker.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
            marker.setLabelOffset(new RectangleInsets(2, 4, 2, 4));
        }
        plot.addDomainMarker(marker, Layer.BACKGROUND);
    }
}
