package throwline.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import throwline.study.Handling.Loop;
import throwline.words.Words;

/** The tightest loops seen from the side, to scale: one curve a stick and entry speed. */
final class LoopChart {

    /** Points that axis, margins, title and foot take besides the panel. */
    private static final double SIDES = 80 + ChartStyle.ENDS.getRight();

    private static final int HEADS = 177;
    private static final double ROOM = 0.06;

    /** Longest side of the picture, points. */
    private static final int TALLEST = 760;

    private final List<Loop> loops;
    private final Words words;

    LoopChart(List<Loop> loops, Words words) {
        this.loops = List.copyOf(loops);
        this.words = words;
    }

    Picture draw(Caption caption) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < loops.size(); i++) {
            List<Place> way = loops.get(i).way().stream()
                    .map(spot -> Place.of(spot.along(), spot.height()))
                    .toList();
            int top = way.indexOf(Collections.max(way, Comparator.comparingDouble(Place::y)));
            curves.add(new Curve(label(loops.get(i)), ChartStyle.look(i), way.subList(0, top + 1)));
            // A curve has its label at its end: the way down from the top goes on without one.
            curves.add(new Curve("", ChartStyle.look(i), way.subList(top, way.size())));
        }
        List<Place> reached = Curve.reached(curves);
        double left = Picture.least(reached, Place::x, 0);
        double right = Picture.most(reached, Place::x, 0);
        double bottom = Picture.least(reached, Place::y, 0);
        double top = Picture.most(reached, Place::y, 0);
        double room = ROOM * Math.max(right - left, top - bottom);
        double wide = right - left + 2 * room;
        double tall = top - bottom + 2 * room;
        double points = Math.min((Layout.WIDE.width() - SIDES) / wide, (TALLEST - HEADS) / tall);
        double spare = ((Layout.WIDE.width() - SIDES) / points - wide) / 2;
        return Picture.ofCurves(
                "loop",
                caption,
                (int) (HEADS + tall * points),
                Axis.of(words.say("chart.loop.along"), left - room - spare, right + room + spare, 10),
                Panel.graph(
                        1, Axis.of(words.say("chart.loop.height"), bottom - room, top + room, 8), Curve.all(curves)));
    }

    private String label(Loop loop) {
        String stick = loop.stick().isEmpty()
                ? words.say("fly.loop.travel")
                : loop.withoutFlaps() ? words.say("fly.loop.without", loop.stick()) : loop.stick();
        // Number and unit stay on one line.
        return words.say("chart.loop.label", stick, String.format(Locale.ROOT, "%.0f\u00a0m/s", loop.speed()));
    }
}
