package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import throwline.study.Handling.Loop;
import throwline.words.Words;

/** The tightest loops seen from the side, to scale: one curve a stick and entry speed. */
final class LoopChart {

    private static final int RIGHT = 130;

    /** Points that axis, margins, title and foot take besides the plot. */
    private static final int SIDES = 80;

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

    /**
     * Draws it.
     *
     * @param holdsFor the lines below the title
     * @param proof the line at the foot
     */
    Picture draw(List<String> holdsFor, String proof) {
        double left = 0;
        double right = 0;
        double top = 0;
        double bottom = 0;
        List<Curves.Curve> curves = new ArrayList<>();
        for (int i = 0; i < loops.size(); i++) {
            Loop loop = loops.get(i);
            List<double[]> points = new ArrayList<>();
            for (var spot : loop.way()) {
                points.add(new double[] {spot.along(), spot.height()});
                left = Math.min(left, spot.along());
                right = Math.max(right, spot.along());
                top = Math.max(top, spot.height());
                bottom = Math.min(bottom, spot.height());
            }
            int highest = highest(points);
            curves.add(new Curves.Curve(
                    label(loop), HouseStyle.look(i), points.subList(0, highest + 1), Optional.empty()));
            // A curve has its label at its end: the way down from the top goes on without one.
            curves.add(
                    new Curves.Curve("", HouseStyle.look(i), points.subList(highest, points.size()), Optional.empty()));
        }
        double room = ROOM * Math.max(right - left, top - bottom);
        double wide = right - left + 2 * room;
        double tall = top - bottom + 2 * room;
        double points = Math.min((HouseStyle.WIDTH - SIDES - RIGHT) / wide, (TALLEST - HEADS) / tall);
        double spare = ((HouseStyle.WIDTH - SIDES - RIGHT) / points - wide) / 2;
        NumberAxis along =
                HouseStyle.axis(words.say("chart.loop.along"), left - room - spare, right + room + spare, 10);
        NumberAxis up = HouseStyle.axis(words.say("chart.loop.height"), bottom - room, top + room, 8);
        XYPlot plot = Curves.plot(along, up, curves);
        String title = words.say("chart.loop.title");
        return new Picture(
                "loop",
                title,
                HouseStyle.WIDTH,
                (int) (HEADS + tall * points),
                HouseStyle.chart(plot, title, holdsFor, proof));
    }

    private static int highest(List<double[]> points) {
        int highest = 0;
        for (int i = 1; i < points.size(); i++) {
            highest = points.get(i)[1] > points.get(highest)[1] ? i : highest;
        }
        return highest;
    }

    private String label(Loop loop) {
        String stick = loop.stick().isEmpty()
                ? words.say("fly.loop.travel")
                : loop.withoutFlaps() ? words.say("fly.loop.without", loop.stick()) : loop.stick();
        // Number and unit stay on one line.
        return words.say("chart.loop.label", stick, String.format(Locale.ROOT, "%.0f\u00a0m/s", loop.speed()));
    }
}
