package throwline.report.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.numerics.Interpolation;
import throwline.report.ReportFile;
import throwline.report.document.PagePicture;
import throwline.validation.Book;
import throwline.validation.CaseResult;
import throwline.validation.CaseTrace;
import throwline.validation.Check;
import throwline.validation.Pair;
import throwline.words.Words;

/**
 * Charts of measured against predicted, case by case: series of checks over their place, single checks between their limits, and the
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

    /** All charts, as files. */
    public List<ReportFile> draw(Book book, PictureFormats formats) {
        return PictureFiles.of(pictures(book), formats);
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
        CaseTrace.Line line = new CaseTrace.Line(words.say("book.chart.ours"), measured, predicted);
        return trace(
                result,
                new CaseTrace(
                        name,
                        words.say("book.chart.degrees", place.across()),
                        checks.get(0).quantity(),
                        List.of(line)));
    }

    /** Runs as measured marks and predicted lines. */
    private Picture trace(CaseResult result, CaseTrace trace) {
        List<Curve> curves = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        List<Place> all = new ArrayList<>();
        for (CaseTrace.Line line : trace.lines()) {
            Curve curve = new Curve(line.name(), ChartStyle.look(curves.size()), places(line.predicted()));
            List<Place> measured = places(line.measured());
            curves.add(curve);
            items.addAll(curve.marks(measured));
            all.addAll(measured);
            all.addAll(curve.points());
        }
        items.addAll(Curve.all(curves));
        return Picture.ofCurves(
                fileName(result.name(), trace.name()),
                caption(result, words.say("book.chart.series", trace.name())),
                HEIGHT,
                around(trace.across(), all, Place::x, 9),
                Panel.graph(1, around(trace.up(), all, Place::y, 8), items));
    }

    private static List<Place> places(List<double[]> points) {
        return points.stream().map(Place::of).toList();
    }

    private static Axis around(String label, List<Place> places, ToDoubleFunction<Place> value, int steps) {
        double low = Picture.least(places, value, Double.POSITIVE_INFINITY);
        double high = Picture.most(places, value, Double.NEGATIVE_INFINITY);
        double margin = 0.05 * (high - low);
        return Axis.of(label, low - margin, high + margin, steps);
    }

    /** Every check as a mark between its limits. */
    private Picture rows(CaseResult result, List<Check> checks) {
        Set<String> shared = shared(checks);
        List<Row> rows = new ArrayList<>();
        for (Check check : checks) {
            double place = Interpolation.clamp(place(check), -EDGE, EDGE);
            String label = words.say("book.chart.row", number(check.predicted()), number(check.measured()));
            Row.Value number = new Row.Value(place, -1, 1, check.passed(), label);
            rows.add(new Row(name(check, shared), ChartStyle.look(check.passed() ? 1 : 2), List.of(number), ""));
        }
        return Picture.ofRows(
                fileName(result.name(), "checks"),
                caption(result, words.say("book.chart.rows")),
                Layout.BOOK,
                AROUND_ROWS + Panel.ROW * rows.size(),
                Axis.of(words.say("book.chart.limits"), -EDGE - 0.5, EDGE + 0.5, 6),
                Panel.rows(Layout.BOOK, rows, "", List.of()));
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
        List<Place> points =
                pairs.stream().map(p -> Place.of(p.measured(), p.predicted())).toList();
        Axis across = around(words.say("book.chart.measured", figure), points, Place::x, 8);
        Axis up = around(words.say("book.chart.predicted", figure), points, Place::y, 8);
        double low = Math.min(across.low(), up.low());
        double high = Math.max(across.high(), up.high());
        List<Curve> curves = new ArrayList<>();
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
        List<Item> items = new ArrayList<>(curves.get(0).marks(points));
        items.addAll(Curve.all(curves));
        String basis = words.say("book.basis." + first.basis().toLowerCase(Locale.ROOT));
        return Picture.ofCurves(
                fileName(result.name(), first.figure().key(), first.basis()),
                caption(result, words.say("book.chart.pairs", figure, basis, String.valueOf(pairs.size()))),
                HEIGHT,
                Axis.of(across.label(), low, high, 8),
                Panel.graph(1, Axis.of(up.label(), low, high, 8), items));
    }

    private static Curve line(String name, int look, double low, double high, double share, double shift) {
        double from = low * (1 + share) + shift;
        double to = high * (1 + share) + shift;
        double end = to > high ? low + (high - low) * (high - from) / (to - from) : high;
        return new Curve(name, ChartStyle.look(look), List.of(Place.of(low, from), Place.of(end, Math.min(to, high))));
    }

    private Caption caption(CaseResult result, String what) {
        return new Caption(result.title(), List.of(what), words.say("chart.section.proof"));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) >= 1 ? "%.2f" : "%.4f", value);
    }
}
