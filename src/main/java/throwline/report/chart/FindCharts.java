package throwline.report.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import throwline.report.BenchThrow;
import throwline.report.Headlines;
import throwline.report.ReportFile;
import throwline.report.document.PagePicture;
import throwline.sizing.MixCurve;
import throwline.sizing.RollHelp;
import throwline.study.FindResult;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.TrimFound;
import throwline.study.Headline;
import throwline.words.Words;

/** Curves that a search found: elevator over the lever, roll rate over the flaps' throw. */
public final class FindCharts {

    private static final int HEIGHT = 520;
    private static final double MILLIMETRES = 1000;
    private static final double PERCENT = 100;
    private static final double ROOM = 0.12;
    /** Room between a point and its label over the height of the plot. */
    private static final double LABEL = 0.015;
    /** What an axis in per cent goes beyond its ends, so that marks there are whole. */
    private static final double BEYOND = 1.5;

    private final Words words;

    /** Charts with these words. */
    public FindCharts(Words words) {
        this.words = words;
    }

    /** All charts that there is something to draw for, each as SVG and as PNG. */
    public List<ReportFile> draw(FindResult result) {
        return PictureFiles.ofReady(pictures(result, true));
    }

    /**
     * All charts for a page.
     *
     * @param result what was found
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(FindResult result, String prefix) {
        return PagePictures.of(
                pictures(result, false).stream()
                        .<Supplier<Picture>>map(picture -> () -> picture)
                        .toList(),
                prefix,
                words);
    }

    /** On a page there is no room for the numbers beside the points; they stand in its table. */
    List<Picture> pictures(FindResult result, boolean numbers) {
        List<Picture> pictures = new ArrayList<>();
        result.levelTrim()
                .ifPresent(trim -> trim.curve().ifPresent(curve -> pictures.add(mix(result, trim, curve, numbers))));
        result.rollHelp().ifPresent(found -> found.help().ifPresent(help -> pictures.add(help(result, found, help))));
        return pictures;
    }

    private Picture mix(FindResult result, TrimFound trim, MixCurve curve, boolean numbers) {
        Optional<Headline.Known> whole = Headlines.known(trim.whole());
        boolean eitherWay = whole.map(Headlines::eitherWay).orElse(true);
        List<double[]> expected = new ArrayList<>();
        List<double[]> first = new ArrayList<>();
        for (MixCurve.Point point : curve.points()) {
            double lever = PERCENT * point.lever();
            expected.add(new double[] {lever, edge(result, point.elevator())});
            first.add(new double[] {lever, eitherWay ? 0 : edge(result, point.elevator() / 2)});
        }
        Optional<Curves.Spot> band = whole.map(known -> new Curves.Spot(
                PERCENT, edge(result, known.value()), edge(result, known.low()), edge(result, known.high())));
        MixCurve.Point end = curve.points().get(curve.points().size() - 1);
        List<Curves.Curve> curves = List.of(
                new Curves.Curve(
                        words.say("chart.mix.expected", inDegrees(result, end.elevator())),
                        HouseStyle.look(1),
                        expected,
                        band),
                new Curves.Curve(
                        words.say(eitherWay ? "chart.mix.first-none" : "chart.mix.first"),
                        HouseStyle.look(2),
                        first,
                        Optional.empty()));
        double low = Math.min(0, band.map(Curves.Spot::low).orElse(0.0));
        double high = Math.max(0, band.map(Curves.Spot::high).orElse(0.0));
        for (double[] point : expected) {
            low = Math.min(low, point[1]);
            high = Math.max(high, point[1]);
        }
        double room = ROOM * Math.max(1, high - low);
        double span = high - low + 2 * room;
        NumberAxis across = HouseStyle.axis(
                words.say("chart.mix.lever", trim.from().name(), trim.to().name()), -BEYOND, PERCENT + BEYOND, 10);
        DecimalFormat format = new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT));
        across.setTickUnit(new NumberTickUnit(PERCENT / (curve.points().size() - 1), format));
        XYPlot plot = Curves.plot(
                across, HouseStyle.axis(words.say("chart.mix.elevator"), low - room, high + room, 8), curves);
        Curves.measured(plot, curves, List.of(expected, first));
        if (numbers) {
            curve.points().forEach(p -> label(result, plot, p, LABEL * span));
        }
        String title = words.say("chart.mix.title", trim.to().name());
        return picture(result, "mix-curve", title, plot, words.say("chart.mix.for", speed(curve.speed())));
    }

    /** Degrees and share of the travel beside a point. */
    private void label(FindResult result, XYPlot plot, MixCurve.Point point, double above) {
        if (point.lever() == 0 || point.lever() == 1) {
            return;
        }
        String text = inDegrees(result, point.elevator());
        boolean down = point.elevator() >= 0;
        double place = edge(result, point.elevator()) + (down ? above : -above);
        XYTextAnnotation note = new XYTextAnnotation(text, PERCENT * point.lever(), place);
        note.setFont(HouseStyle.SMALL);
        note.setPaint(HouseStyle.QUIET_INK);
        note.setTextAnchor(down ? TextAnchor.BOTTOM_RIGHT : TextAnchor.TOP_RIGHT);
        plot.addAnnotation(note);
    }

    /** 4.2 deg, 21 % of the travel. */
    private String inDegrees(FindResult result, double elevator) {
        return words.say(
                "chart.mix.point",
                String.format(Locale.ROOT, "%.1f", Math.abs(Math.toDegrees(elevator))),
                String.format(
                        Locale.ROOT,
                        "%.0f",
                        PERCENT
                                * BenchThrow.ofElevator(result.model(), "", elevator)
                                        .share()));
    }

    private Picture help(FindResult result, HelpFound found, RollHelp help) {
        List<double[]> rates = new ArrayList<>();
        help.points().forEach(p -> rates.add(new double[] {Math.toDegrees(p.size()), Math.toDegrees(p.rate())}));
        Optional<Curves.Spot> band = Headlines.known(found.with())
                .map(known -> new Curves.Spot(
                        Math.toDegrees(help.best().size()),
                        Math.toDegrees(known.value()),
                        Math.toDegrees(known.low()),
                        Math.toDegrees(known.high())));
        double high = band.map(Curves.Spot::high).orElse(1.0);
        Curves.Curve curve = new Curves.Curve(found.helped().name(), HouseStyle.look(1), rates, band);
        XYPlot plot = Curves.plot(
                HouseStyle.axis(words.say("chart.help.flap"), 0, rates.get(rates.size() - 1)[0], 6),
                HouseStyle.axis(words.say("chart.help.rate"), 0, (1 + ROOM) * high, 8),
                List.of(curve));
        Curves.measured(plot, List.of(curve), List.of(rates));
        String title = words.say("chart.help.title");
        return picture(
                result,
                "roll-help",
                title,
                plot,
                words.say("chart.help.for", speed(help.speed()), found.in().name()));
    }

    private Picture picture(FindResult result, String name, String title, XYPlot plot, String holdsFor) {
        List<String> lines = List.of(
                holdsFor,
                words.say("chart.of", result.model().name(), result.pack().name()));
        return new Picture(
                name,
                title,
                HouseStyle.WIDTH,
                HEIGHT,
                HouseStyle.chart(plot, title, lines, words.say("chart.proof.assumed")));
    }

    private static double edge(FindResult result, double elevator) {
        return MILLIMETRES * BenchThrow.ofElevator(result.model(), "", elevator).distance();
    }

    private static String speed(double speed) {
        return String.format(Locale.ROOT, "%.1f m/s", speed);
    }
}
