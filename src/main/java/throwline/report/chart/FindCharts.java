package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import throwline.report.BenchThrow;
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
    /** Between a point and the middle of its label, points. */
    private static final double LABEL = 13;
    /** What an axis in per cent goes beyond its ends, so that marks there are whole. */
    private static final double BEYOND = 1.5;

    private final Words words;

    /** Charts with these words. */
    public FindCharts(Words words) {
        this.words = words;
    }

    /** All charts that there is something to draw for, as files. */
    public List<ReportFile> draw(FindResult result, PictureFormats formats) {
        return PictureFiles.ofReady(pictures(result, true), formats);
    }

    /**
     * All charts for a page.
     *
     * @param result what was found
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     */
    public List<PagePicture> onPage(FindResult result, String prefix) {
        return PagePictures.ofReady(pictures(result, false), prefix, words);
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
        Optional<Headline.Known> whole = trim.whole().known();
        boolean eitherWay = whole.map(Headline.Known::mayGoEitherWay).orElse(true);
        List<Place> expected = new ArrayList<>();
        List<Place> first = new ArrayList<>();
        for (MixCurve.Point point : curve.points()) {
            double lever = PERCENT * point.lever();
            expected.add(Place.of(lever, edge(result, point.elevator())));
            first.add(Place.of(lever, edge(result, trim.start(point))));
        }
        Optional<Curve.Spot> band = whole.map(known -> new Curve.Spot(
                PERCENT, edge(result, known.value()), edge(result, known.low()), edge(result, known.high())));
        MixCurve.Point end = curve.points().get(curve.points().size() - 1);
        String name = words.say("chart.mix.expected", inDegrees(result, end.elevator()));
        Curve all = new Curve(name, ChartStyle.look(1), expected, band);
        Curve half =
                new Curve(words.say(eitherWay ? "chart.mix.first-none" : "chart.mix.first"), ChartStyle.look(2), first);
        List<Item> items = new ArrayList<>();
        items.addAll(all.marks(expected));
        items.addAll(half.marks(first));
        if (numbers) {
            curve.points().stream()
                    .filter(point -> point.lever() > 0 && point.lever() < 1)
                    .forEach(point -> items.add(label(result, point)));
        }
        items.addAll(Curve.all(List.of(all, half)));
        List<Place> reached = Curve.reached(List.of(all));
        double low = Picture.least(reached, Place::y, 0);
        double high = Picture.most(reached, Place::y, 0);
        double room = ROOM * Math.max(1, high - low);
        Axis up = Axis.of(words.say("chart.mix.elevator"), low - room, high + room, 8);
        Axis across = Axis.of(
                        words.say(
                                "chart.mix.lever", trim.from().name(), trim.to().name()),
                        -BEYOND,
                        PERCENT + BEYOND,
                        10)
                .worded(PERCENT / (curve.points().size() - 1), (value, size) -> size.replaceFirst("\\.0$", ""));
        return picture(
                result,
                "mix-curve",
                words.say("chart.mix.title", trim.to().name()),
                words.say("chart.mix.for", speed(curve.speed())),
                across,
                Panel.graph(1, up.worded(up.step(), Axis.upAndDown(words)), items));
    }

    /** Degrees and share of the travel beside a point. */
    private Item label(FindResult result, MixCurve.Point point) {
        boolean down = point.elevator() >= 0;
        Place place = Place.of(PERCENT * point.lever(), edge(result, point.elevator()));
        return Item.Text.quiet(
                place.moved(0, down ? -LABEL : LABEL), inDegrees(result, point.elevator()), Brush.Side.LEFT);
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
        List<Place> rates = help.points().stream()
                .map(p -> Place.of(Math.toDegrees(p.size()), Math.toDegrees(p.rate())))
                .toList();
        Optional<Curve.Spot> band = found.with()
                .known()
                .map(known -> new Curve.Spot(
                        Math.toDegrees(help.best().size()),
                        Math.toDegrees(known.value()),
                        Math.toDegrees(known.low()),
                        Math.toDegrees(known.high())));
        double high = band.map(Curve.Spot::high).orElse(1.0);
        Curve curve = new Curve(found.helped().name(), ChartStyle.look(1), rates, band);
        List<Item> items = new ArrayList<>(curve.marks(rates));
        items.addAll(Curve.all(List.of(curve)));
        return picture(
                result,
                "roll-help",
                words.say("chart.help.title"),
                words.say("chart.help.for", speed(help.speed()), found.in().name()),
                Axis.of(
                        words.say("chart.help.flap"),
                        0,
                        rates.get(rates.size() - 1).x(),
                        6),
                Panel.graph(1, Axis.of(words.say("chart.help.rate"), 0, (1 + ROOM) * high, 8), items));
    }

    private Picture picture(FindResult result, String name, String title, String holdsFor, Axis across, Panel panel) {
        String of = words.say("chart.of", result.model().name(), result.pack().name());
        Caption caption = new Caption(title, List.of(holdsFor, of), words.say("chart.proof.assumed"));
        return Picture.ofCurves(name, caption, HEIGHT, across, panel);
    }

    private static double edge(FindResult result, double elevator) {
        return MILLIMETRES * BenchThrow.ofElevator(result.model(), "", elevator).distance();
    }

    private static String speed(double speed) {
        return String.format(Locale.ROOT, "%.1f m/s", speed);
    }
}
