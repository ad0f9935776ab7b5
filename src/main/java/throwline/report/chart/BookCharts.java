package throwline.report.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jfree.chart.plot.XYPlot;
import throwline.report.ReportFile;
import throwline.report.document.PagePicture;
import throwline.validation.Book;
import throwline.validation.CaseResult;
import throwline.validation.Check;
import throwline.validation.Pair;
import throwline.validation.Trace;
import throwline.words.Words;

/**
 * Measured against predicted, case by case: series of checks over their place, single checks between their limits, and the
 * pairs of the statistics against each other.
 */
public final class BookCharts {

    private static final int HEIGHT = 560;
    private static final int AROUND_ROWS = 150;

    /** Fewer values than this make no curve. */
    private static final int SERIES = 4;

    /** What does not fit stands at the edge. */
    private static final double EDGE = 2.5;

    private final Words words;

    /** Charts with these words. */
    public BookCharts(Words words) {
        this.words = words;
    }

    /** All charts, each as SVG and as PNG. */
    public List<ReportFile> draw(Book book) {
        return PictureFiles.of(pictures(book));
    }

    /**
     * All charts for a page.
     *
     * @param book the book
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(Book book, String prefix) {
        return PagePictures.of(pictures(book), prefix, words);
    }

    List<Supplier<Picture>> pictures(Book book) {
        List<Supplier<Picture>> pictures = new ArrayList<>();
        for (CaseResult result : book.cases()) {
            List<Check> single = new ArrayList<>();
            Map<String, List<Check>> series = new LinkedHashMap<>();
            for (Check check : result.checks()) {
                check.place()
                        .ifPresentOrElse(
                                place -> series.computeIfAbsent(place.series(), s -> new ArrayList<>())
                                        .add(check),
                                () -> single.add(check));
            }
            series.forEach((name, checks) -> {
                if (checks.size() >= SERIES) {
                    pictures.add(() -> series(result, name, checks));
                } else {
                    single.addAll(checks);
                }
            });
            if (!single.isEmpty()) {
                pictures.add(() -> rows(result, single));
            }
            result.traces().forEach(trace -> pictures.add(() -> trace(result, trace)));
            Map<String, List<Pair>> kinds = result.pairs().stream()
                    .collect(Collectors.groupingBy(
                            p -> p.figure().key() + " " + p.basis(), LinkedHashMap::new, Collectors.toList()));
            kinds.values().stream()
                    .filter(pairs -> pairs.size() > SERIES)
                    .forEach(pairs -> pictures.add(() -> pairs(book, result, pairs)));
        }
        return pictures;
    }

    private static String fileName(String... parts) {
        return String.join("-", parts).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** A series over its place: measured marks, the prediction as a line. */
    private Picture series(CaseResult result, String name, List<Check> checks) {
        List<double[]> measured = new ArrayList<>();
        List<double[]> predicted = new ArrayList<>();
        for (Check check : checks) {
            double at = check.place().orElseThrow().at();
            measured.add(new double[] {at, check.measured()});
            predicted.add(new double[] {at, check.predicted()});
        }
        predicted.sort((a, b) -> Double.compare(a[0], b[0]));
        Check.Place place = checks.get(0).place().orElseThrow();
        Trace.Line line = new Trace.Line(words.say("book.chart.ours"), measured, predicted);
        return trace(
                result,
                new Trace(
                        name,
                        words.say("book.chart.degrees", place.across()),
                        checks.get(0).quantity(),
                        List.of(line)));
    }

    /** Runs as measured marks and predicted lines. */
    private Picture trace(CaseResult result, Trace trace) {
        List<Curves.Curve> curves = new ArrayList<>();
        List<List<double[]>> measured = new ArrayList<>();
        List<double[]> all = new ArrayList<>();
        for (Trace.Line line : trace.lines()) {
            curves.add(
                    new Curves.Curve(line.name(), HouseStyle.look(curves.size()), line.predicted(), Optional.empty()));
            measured.add(line.measured());
            all.addAll(line.measured());
            all.addAll(line.predicted());
        }
        double[] across = range(all, all, 0);
        double[] up = range(all, all, 1);
        XYPlot plot = Curves.plot(
                HouseStyle.axis(trace.across(), across[0], across[1], 9),
                HouseStyle.axis(trace.up(), up[0], up[1], 8),
                curves);
        Curves.measured(plot, curves, measured);
        String what = words.say("book.chart.series", trace.name());
        return picture(fileName(result.name(), trace.name()), result, what, plot, HEIGHT);
    }

    /** Every check as a mark between its limits. */
    private Picture rows(CaseResult result, List<Check> checks) {
        List<Rows.Row> rows = new ArrayList<>();
        Set<String> shared = shared(checks);
        for (Check check : checks) {
            double place = Math.max(-EDGE, Math.min(EDGE, place(check)));
            String label = words.say("book.chart.row", number(check.predicted()), number(check.measured()));
            Rows.Mark mark = new Rows.Mark(place, -1, 1, check.passed(), label);
            rows.add(new Rows.Row(name(check, shared), HouseStyle.look(check.passed() ? 1 : 2), List.of(mark), ""));
        }
        XYPlot plot = Rows.plot(
                Layout.BOOK, HouseStyle.axis(words.say("book.chart.limits"), -EDGE - 0.5, EDGE + 0.5, 6), rows);
        plot.setInsets(Rows.room(Layout.BOOK));
        int height = AROUND_ROWS + Rows.HEIGHT * rows.size();
        return picture(fileName(result.name(), "checks"), result, words.say("book.chart.rows"), plot, height);
    }

    /** Parts of the condition that all checks have in common. */
    private static Set<String> shared(List<Check> checks) {
        Set<String> shared = new HashSet<>(parts(checks.get(0)));
        checks.forEach(check -> shared.retainAll(parts(check)));
        return shared;
    }

    private static List<String> parts(Check check) {
        return List.of(check.condition().split(", "));
    }

    private static String name(Check check, Set<String> shared) {
        return Stream.concat(Stream.of(check.quantity()), parts(check).stream().filter(part -> !shared.contains(part)))
                .collect(Collectors.joining(", "));
    }

    /** Where an answer lies: -1 at its lower limit, 1 at its upper one. */
    private static double place(Check check) {
        if (Double.isNaN(check.predicted())) {
            return EDGE;
        }
        if (Double.isInfinite(check.high())) {
            return 1 - 2 * check.low() / check.predicted();
        }
        double low = Double.isInfinite(check.low()) ? 0 : check.low();
        return 2 * (check.predicted() - low) / (check.high() - low) - 1;
    }

    /** Predicted over measured, with the band that the product states. */
    private Picture pairs(Book book, CaseResult result, List<Pair> pairs) {
        Pair first = pairs.get(0);
        String figure = words.say("book.figure." + first.figure().key().replace(' ', '.'));
        List<double[]> points = pairs.stream()
                .map(p -> new double[] {p.measured(), p.predicted()})
                .toList();
        double[] across = range(points, points, 0);
        double[] up = range(points, points, 1);
        double low = Math.min(across[0], up[0]);
        double high = Math.max(across[1], up[1]);
        List<Curves.Curve> curves = new ArrayList<>();
        curves.add(line(words.say("book.chart.same"), 0, low, high, 0, 0));
        book.statistics().stream()
                .filter(s -> s.figure() == first.figure() && s.basis().equals(first.basis()))
                .flatMap(s -> s.stated().stream())
                .findFirst()
                .ifPresent(band -> {
                    boolean share = first.figure().isShare();
                    for (int side : new int[] {-1, 1}) {
                        String said = words.say(side < 0 ? "book.chart.low" : "book.chart.high");
                        curves.add(line(said, 1, low, high, share ? side * band : 0, share ? 0 : side * band));
                    }
                });
        XYPlot plot = Curves.plot(
                HouseStyle.axis(words.say("book.chart.measured", figure), low, high, 8),
                HouseStyle.axis(words.say("book.chart.predicted", figure), low, high, 8),
                curves);
        List<List<double[]>> marks = new ArrayList<>(List.of(points));
        curves.subList(1, curves.size()).forEach(c -> marks.add(List.of()));
        Curves.measured(plot, curves, marks);
        String basis = words.say("book.basis." + first.basis().toLowerCase(Locale.ROOT));
        return picture(
                fileName(result.name(), first.figure().key(), first.basis()),
                result,
                words.say("book.chart.pairs", figure, basis, String.valueOf(pairs.size())),
                plot,
                HEIGHT);
    }

    private static Curves.Curve line(String name, int look, double low, double high, double share, double shift) {
        double from = low * (1 + share) + shift;
        double to = high * (1 + share) + shift;
        double end = to > high ? low + (high - low) * (high - from) / (to - from) : high;
        return new Curves.Curve(
                name,
                HouseStyle.look(look),
                List.of(new double[] {low, from}, new double[] {end, Math.min(to, high)}),
                Optional.empty());
    }

    private static double[] range(List<double[]> a, List<double[]> b, int axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (List<double[]> points : List.of(a, b)) {
            for (double[] point : points) {
                low = Math.min(low, point[axis]);
                high = Math.max(high, point[axis]);
            }
        }
        double margin = 0.05 * (high - low);
        return new double[] {low - margin, high + margin};
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) >= 1 ? "%.2f" : "%.4f", value);
    }

    private Picture picture(String name, CaseResult result, String what, XYPlot plot, int height) {
        return new Picture(
                name,
                result.title(),
                HouseStyle.WIDTH,
                height,
                HouseStyle.chart(plot, result.title(), List.of(what), words.say("chart.section.proof")));
    }
}
