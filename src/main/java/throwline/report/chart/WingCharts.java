package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import throwline.report.ReportFile;
import throwline.study.WingSweep;
import throwline.words.Words;

/** The bare wing over incidence: load along the span, what its parts carry and could carry, which part lets go. */
public final class WingCharts {

    private static final int MOST_CURVES = 6;
    private static final int HEIGHT = 560;
    private static final double HEADROOM = 1.1;

    private final Words words;

    /** Charts with these words. */
    public WingCharts(Words words) {
        this.words = words;
    }

    /**
     * All charts as files; incidences that were not solved are left out.
     *
     * @param model name of the model
     * @param sweep at least one incidence solved
     * @param formats of the files
     */
    public List<ReportFile> draw(String model, WingSweep sweep, PictureFormats formats) {
        return PictureFiles.ofReady(pictures(model, sweep), formats);
    }

    List<Picture> pictures(String model, WingSweep sweep) {
        List<WingSweep.Point> solved =
                sweep.points().stream().filter(WingSweep.Point::converged).toList();
        if (solved.isEmpty()) {
            return List.of();
        }
        String holdsFor = words.say(
                "chart.wing.for", model, sweep.setUp(), String.format(Locale.ROOT, "%.1f m/s", sweep.speed()));
        List<WingSweep.Point> some = some(solved);
        ToDoubleFunction<WingSweep.Strip> load = strip -> strip.lift() * strip.chord() / sweep.meanChord();
        List<Curve> limits = new ArrayList<>();
        limits.add(curve(words.say("chart.load.limit"), 0, some.get(some.size() - 1), WingSweep.Strip::limit));
        limits.addAll(curves(some, 1, WingSweep.Strip::lift));
        return List.of(
                picture("load", List.of(holdsFor), sweep, graph("chart.wing.load.axis", curves(some, 0, load))),
                picture("limit", List.of(holdsFor), sweep, graph("chart.axis.sectionlift", limits)),
                picture(
                        "stalled",
                        List.of(holdsFor, words.say("chart.wing.stalled.meaning")),
                        sweep,
                        new StallMap(words).draw(solved)));
    }

    /** A few incidences, spread evenly. */
    private static List<WingSweep.Point> some(List<WingSweep.Point> solved) {
        int count = Math.min(MOST_CURVES, solved.size());
        return IntStream.range(0, count)
                .mapToObj(i -> solved.get(count == 1 ? 0 : Math.round(i * (solved.size() - 1f) / (count - 1))))
                .toList();
    }

    private List<Curve> curves(List<WingSweep.Point> some, int firstLook, ToDoubleFunction<WingSweep.Strip> value) {
        List<Curve> curves = new ArrayList<>();
        for (WingSweep.Point point : some) {
            String degrees = String.format(Locale.ROOT, "%.1f", Math.toDegrees(point.incidence()))
                    .replaceFirst("\\.0$", "")
                    .replaceFirst("^-0$", "0");
            curves.add(curve(words.say("chart.wing.incidence", degrees), firstLook + curves.size(), point, value));
        }
        return curves;
    }

    private static Curve curve(String name, int look, WingSweep.Point point, ToDoubleFunction<WingSweep.Strip> value) {
        List<Place> points = point.strips().stream()
                .map(strip -> Place.of(strip.at(), value.applyAsDouble(strip)))
                .toList();
        return new Curve(name, ChartStyle.look(look), points);
    }

    private Panel graph(String axis, List<Curve> curves) {
        List<Place> reached = Curve.reached(curves);
        double low = HEADROOM * Picture.least(reached, Place::y, 0);
        double high = Math.max(0.1, HEADROOM * Picture.most(reached, Place::y, 0));
        return Panel.graph(1, Axis.of(words.say(axis), low, high, 8), Curve.all(curves));
    }

    private Picture picture(String name, List<String> holdsFor, WingSweep sweep, Panel panel) {
        return Picture.ofCurves(
                "wing-" + name,
                new Caption(words.say("chart.wing." + name + ".title"), holdsFor, words.say("chart.section.proof")),
                HEIGHT,
                Axis.of(words.say("chart.axis.span"), -sweep.span() / 2, sweep.span() / 2, 10),
                panel);
    }
}
