package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
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
     * All charts, each as SVG and as PNG; incidences that were not solved are left out.
     *
     * @param model name of the model
     * @param sweep at least one incidence solved
     */
    public List<ReportFile> draw(String model, WingSweep sweep) {
        return PictureFiles.ofReady(pictures(model, sweep));
    }

    List<Picture> pictures(String model, WingSweep sweep) {
        List<WingSweep.Point> solved =
                sweep.points().stream().filter(WingSweep.Point::converged).toList();
        if (solved.isEmpty()) {
            return List.of();
        }
        List<String> holdsFor = List.of(words.say(
                "chart.wing.for", model, sweep.setUp(), String.format(Locale.ROOT, "%.1f m/s", sweep.speed())));
        List<WingSweep.Point> some = some(solved);
        return List.of(
                curves("load", "chart.wing.load.axis", sweep, holdsFor, load(some, sweep.meanChord())),
                curves("limit", "chart.axis.sectionlift", sweep, holdsFor, limits(some)),
                stalled(sweep, solved, holdsFor));
    }

    /** A few incidences, spread evenly. */
    private static List<WingSweep.Point> some(List<WingSweep.Point> solved) {
        int count = Math.min(MOST_CURVES, solved.size());
        List<WingSweep.Point> some = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            some.add(solved.get(count == 1 ? 0 : Math.round(i * (solved.size() - 1f) / (count - 1))));
        }
        return some;
    }

    private List<Curves.Curve> load(List<WingSweep.Point> some, double meanChord) {
        List<Curves.Curve> curves = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            curves.add(curve(name(some.get(i)), i, some.get(i), strip -> strip.lift() * strip.chord() / meanChord));
        }
        return curves;
    }

    private List<Curves.Curve> limits(List<WingSweep.Point> some) {
        List<Curves.Curve> curves = new ArrayList<>();
        curves.add(curve(words.say("chart.load.limit"), 0, some.get(some.size() - 1), WingSweep.Strip::limit));
        for (int i = 0; i < some.size(); i++) {
            curves.add(curve(name(some.get(i)), i + 1, some.get(i), WingSweep.Strip::lift));
        }
        return curves;
    }

    private String name(WingSweep.Point point) {
        return words.say("chart.wing.incidence", degrees(point.incidence()));
    }

    private static String degrees(double angle) {
        String text = String.format(Locale.ROOT, "%.1f", Math.toDegrees(angle));
        return text.endsWith(".0") ? text.substring(0, text.length() - 2).replaceFirst("^-0$", "0") : text;
    }

    private static Curves.Curve curve(
            String name, int look, WingSweep.Point point, ToDoubleFunction<WingSweep.Strip> value) {
        List<double[]> points = point.strips().stream()
                .map(strip -> new double[] {strip.at(), value.applyAsDouble(strip)})
                .toList();
        return new Curves.Curve(name, HouseStyle.look(look), points, Optional.empty());
    }

    private Picture curves(
            String name, String axis, WingSweep sweep, List<String> holdsFor, List<Curves.Curve> curves) {
        double most = 0;
        double least = 0;
        for (Curves.Curve curve : curves) {
            for (double[] point : curve.points()) {
                most = Math.max(most, point[1]);
                least = Math.min(least, point[1]);
            }
        }
        NumberAxis up = HouseStyle.axis(words.say(axis), HEADROOM * least, Math.max(0.1, HEADROOM * most), 8);
        return picture(name, holdsFor, Curves.plot(across(sweep), up, curves));
    }

    private Picture stalled(WingSweep sweep, List<WingSweep.Point> solved, List<String> holdsFor) {
        List<String> lines = new ArrayList<>(holdsFor);
        lines.add(words.say("chart.wing.stalled.meaning"));
        return picture("stalled", lines, new StallMap(words).plot(across(sweep), solved));
    }

    private Picture picture(String name, List<String> holdsFor, XYPlot plot) {
        String title = words.say("chart.wing." + name + ".title");
        return new Picture(
                "wing-" + name,
                title,
                HouseStyle.WIDTH,
                HEIGHT,
                HouseStyle.chart(plot, title, holdsFor, words.say("chart.section.proof")));
    }

    private NumberAxis across(WingSweep sweep) {
        return HouseStyle.axis(words.say("chart.axis.span"), -sweep.span() / 2, sweep.span() / 2, 10);
    }
}
