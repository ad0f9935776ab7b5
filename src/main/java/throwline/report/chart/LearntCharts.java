package throwline.report.chart;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import throwline.report.ReportFile;
import throwline.report.data.DataUnit;
import throwline.report.document.PagePicture;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.Learnt;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Bands before and after flights: a row a set-up, the band before as a grey bar below the one after. */
public final class LearntCharts {

    private static final Map<FlightQuantity, String> NAMES = new EnumMap<>(Map.of(
            FlightQuantity.STALL_SPEED, "stall",
            FlightQuantity.DESCENT_ANGLE, "descent",
            FlightQuantity.ELEVATOR, "elevator",
            FlightQuantity.ROLL_RATE, "roll"));

    private static final int AROUND_ROWS = 170;

    /** Height of a row with marks below it, points. */
    private static final int TALL_ROW = 74;

    private static final double MARGIN = 0.06;

    /** Where the grey bar lies below the line of its row, in rows. */
    private static final double BAR_TOP = 0.16;

    private static final double BAR_BOTTOM = 0.28;

    private final Words words;

    /** Charts with these words. */
    public LearntCharts(Words words) {
        this.words = words;
    }

    /** All charts as files. */
    public List<ReportFile> draw(Learnt learnt, PictureFormats formats) {
        return PictureFiles.of(pictures(learnt, Layout.WIDE), formats);
    }

    /**
     * All charts for a page.
     *
     * @param learnt what flights told
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(Learnt learnt, String prefix) {
        return PagePictures.of(pictures(learnt, Layout.NARROW), prefix, words);
    }

    /** All charts for a window, in their order. */
    public List<ScreenPicture> onScreen(Learnt learnt) {
        return pictures(learnt, Layout.NARROW).stream()
                .map(picture -> ScreenPicture.of(picture.get(), words))
                .toList();
    }

    /** The charts, each drawn when it is asked for. */
    List<Supplier<Picture>> pictures(Learnt learnt, Layout layout) {
        PackResult pack = learnt.after().packs().get(0);
        List<Supplier<Picture>> pictures = new ArrayList<>();
        NAMES.forEach((quantity, name) -> {
            if (pack.setUps().stream().anyMatch(r -> learnt(r, quantity).isPresent())) {
                pictures.add(() -> picture(learnt, layout, name, quantity, pack));
            }
        });
        SinkChart sink = new SinkChart(words, learnt);
        if (sink.isThere()) {
            pictures.add(() -> sink.draw(layout));
        }
        learnt.logs().stream()
                .filter(day -> day.log().drawn().times().length > 1)
                .forEach(day -> pictures.add(() -> new LogChart(words, layout, day).draw()));
        return pictures;
    }

    private static Optional<Headline.Known> learnt(SetUpResult result, FlightQuantity quantity) {
        return result.headlines().of(quantity).stream()
                .findFirst()
                .flatMap(entry -> entry.number().known())
                .filter(known -> known.learnt().isPresent());
    }

    private Picture picture(Learnt learnt, Layout layout, String name, FlightQuantity quantity, PackResult pack) {
        double unit = DataUnit.of(quantity.dimension()).factor();
        List<Row> rows = new ArrayList<>();
        List<Item> bars = new ArrayList<>();
        List<MarkedRow> marked = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < pack.setUps().size(); i++) {
            SetUpResult result = pack.setUps().get(i);
            Optional<Headline.Known> after = learnt(result, quantity);
            List<Row.Value> values = new ArrayList<>();
            if (after.isPresent()) {
                Headline.Known known = after.get();
                Headline.FromFlights before = known.learnt().orElseThrow();
                boolean flown = before.flown();
                String label = words.say(
                        flown ? "chart.learnt.flown" : "chart.learnt.others",
                        String.format(Locale.ROOT, "%.1f", unit * known.value()));
                values.add(new Row.Value(unit * known.value(), unit * known.low(), unit * known.high(), flown, label));
                double middle = Row.middle(i);
                bars.add(Item.Area.box(
                        unit * before.low(),
                        unit * before.high(),
                        middle + BAR_TOP,
                        middle + BAR_BOTTOM,
                        ChartStyle.GRID));
                bars.add(Item.Line.of(
                        ChartStyle.INK,
                        ChartStyle.THICK,
                        Place.of(unit * before.value(), middle + BAR_TOP),
                        Place.of(unit * before.value(), middle + BAR_BOTTOM)));
                least = Math.min(least, unit * Math.min(known.low(), before.low()));
                most = Math.max(most, unit * Math.max(known.high(), before.high()));
            }
            for (MarkedRow one : MarkedRow.of(learnt, quantity, result.setUp().name(), i)) {
                marked.add(one);
                least = Math.min(least, one.least(unit));
                most = Math.max(most, one.most(unit));
            }
            rows.add(new Row(result.setUp().name(), ChartStyle.look(i), values, words.say("row.no-answer")));
        }
        double margin = MARGIN * (most - least);
        double left = least - margin;
        double right = most + margin;
        marked.forEach(one -> bars.addAll(one.items(unit, left, right)));
        double below = MarkedRow.below(marked, rows.size() - 1, TALL_ROW);
        return Picture.ofRows(
                "learnt-" + name,
                caption(learnt, name, pack),
                layout,
                AROUND_ROWS + (int) ((marked.isEmpty() ? Panel.ROW : TALL_ROW) * (rows.size() + below)),
                Axis.of(words.say("chart.learnt.axis." + name), left, right, 8),
                Panel.rows(layout, rows, "", bars, below));
    }

    private Caption caption(Learnt learnt, String name, PackResult pack) {
        return new Caption(
                words.say("chart.learnt." + name),
                List.of(
                        words.say(
                                "chart.learnt.for",
                                learnt.after().model().name(),
                                pack.pack().name()),
                        words.say("chart.learnt.legend")),
                words.say("chart.learnt.proof"));
    }
}
