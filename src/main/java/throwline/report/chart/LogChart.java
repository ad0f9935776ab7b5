package throwline.report.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import throwline.logs.Piece;
import throwline.logs.Piece.Kind;
import throwline.logs.ReducedLog;
import throwline.study.LoggedDay;
import throwline.words.Words;

/** A log over time: height, speeds, and below them the pieces that were found, rejected ones hatched with the reason. */
final class LogChart {

    private static final int AROUND = 190;
    private static final int TRACE = 150;

    /** More points than these cannot be told apart. */
    private static final int POINTS = 1200;

    private static final double MARGIN = 0.08;
    private static final double BOX = 0.32;

    /** Room of a letter of small text, points. */
    private static final double LETTER = 6.2;

    private static final List<Kind> KINDS = List.of(Kind.values());

    private final Words words;
    private final Layout layout;
    private final ReducedLog log;
    private final double start;
    private final double length;

    LogChart(Words words, Layout layout, LoggedDay day) {
        this.words = words;
        this.layout = layout;
        log = day.log();
        double[] times = log.drawn().times();
        start = times[0];
        length = Math.max(1, times[times.length - 1] - start);
    }

    Picture draw() {
        double[] heights = log.drawn().heights();
        double[] ground = log.drawn().groundSpeeds();
        double[] air = log.drawn().airspeeds();
        int rows = AROUND + 2 * TRACE + Panel.ROW * KINDS.size();
        return Picture.ofRows(
                        "log-" + log.name().replaceAll("[^A-Za-z0-9-]", "-"),
                        new Caption(
                                words.say("chart.log.title"),
                                List.of(words.say("chart.log.for", log.name()), words.say("chart.log.legend")),
                                words.say("chart.log.proof")),
                        layout,
                        rows,
                        Axis.of(words.say("chart.log.time"), 0, length, layout == Layout.NARROW ? 5 : 10),
                        trace("chart.log.height", List.of(heights)),
                        trace("chart.log.speed", List.of(ground, air)),
                        Panel.drawing(
                                Panel.ROW * KINDS.size(),
                                Axis.hidden(0, KINDS.size()).turnedOver(),
                                false,
                                pieces()))
                .wide(layout);
    }

    private Panel trace(String label, List<double[]> curves) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double[] curve : curves) {
            least = Math.min(
                    least, Arrays.stream(curve).filter(Double::isFinite).min().orElse(0));
            most = Math.max(
                    most, Arrays.stream(curve).filter(Double::isFinite).max().orElse(1));
        }
        double margin = MARGIN * Math.max(1, most - least);
        List<Item> items = new ArrayList<>();
        for (Piece piece : log.pieces()) {
            if (piece.used()) {
                items.add(Item.Area.box(at(piece.from()), at(piece.to()), -Place.EDGE, Place.EDGE, band(piece)));
            }
        }
        for (int i = 0; i < curves.size(); i++) {
            boolean dark = i == curves.size() - 1;
            for (List<Place> part : parts(curves.get(i))) {
                items.add(new Item.Line(
                        part,
                        false,
                        dark ? ChartStyle.INK : ChartStyle.look(4).color(),
                        dark ? ChartStyle.stroke(1.4f) : ChartStyle.THIN));
            }
        }
        return Panel.graph(TRACE, Axis.of(words.say(label), least - margin, most + margin, 4), items);
    }

    /** Each kind has its colour, the first one that of the second set-up. */
    private static ChartStyle.Look look(Kind kind) {
        return ChartStyle.look(KINDS.indexOf(kind) + 1);
    }

    private double at(double time) {
        return time - start;
    }

    private static java.awt.Paint band(Piece piece) {
        return look(piece.kind()).band();
    }

    /** The curve between places where it is not known. */
    private List<List<Place>> parts(double[] values) {
        int step = Math.max(1, values.length / POINTS);
        List<List<Place>> parts = new ArrayList<>();
        List<Place> part = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        double usual = length / values.length * step;
        for (int i = 0; i < values.length; i += step) {
            double time = at(log.drawn().times()[i]);
            boolean joined = Double.isFinite(values[i]) && time - last < 5 * usual;
            if (!joined && part.size() > 1) {
                parts.add(part);
            }
            if (!joined) {
                part = new ArrayList<>();
            }
            if (Double.isFinite(values[i])) {
                part.add(Place.of(time, values[i]));
                last = time;
            }
        }
        if (part.size() > 1) {
            parts.add(part);
        }
        return parts;
    }

    private List<Item> pieces() {
        List<Item> items = new ArrayList<>();
        double metre = (layout.width() - layout.names() - layout.right()) / length;
        for (Kind kind : KINDS) {
            double middle = Row.middle(KINDS.indexOf(kind));
            items.add(new Item.Name(
                    Place.of(-Place.EDGE, middle).moved(-8, 0),
                    words.say("learn.piece." + kind.name().toLowerCase(Locale.ROOT)),
                    layout.names() - 16,
                    2,
                    Brush.Side.LEFT));
            List<Piece> same =
                    log.pieces().stream().filter(p -> p.kind() == kind).toList();
            for (int i = 0; i < same.size(); i++) {
                double room = i + 1 < same.size()
                        ? (same.get(i + 1).from() - same.get(i).from()) * metre
                        : 1e3;
                double end = (length - at(same.get(i).from())) * metre + layout.right();
                piece(items, same.get(i), middle, Math.min(room, end));
            }
        }
        return items;
    }

    private void piece(List<Item> items, Piece piece, double middle, double room) {
        double left = at(piece.from());
        double right = at(piece.to());
        List<Place> corners = List.of(
                Place.of(left, middle - BOX),
                Place.of(right, middle - BOX),
                Place.of(right, middle + 0.05),
                Place.of(left, middle + 0.05));
        ChartStyle.Look look = look(piece.kind());
        items.add(
                piece.used()
                        ? Item.Area.of(corners, look.color())
                        : new Item.Area(corners, ChartStyle.GROUND, Item.Hatch.SLANTED, ChartStyle.INK));
        items.add(new Item.Line(corners, true, piece.used() ? look.color() : ChartStyle.INK, ChartStyle.THIN));
        String number = String.valueOf(piece.number());
        String why =
                number + " " + words.say("learn.reason." + piece.reason().name().toLowerCase(Locale.ROOT));
        String shown = piece.used() || (why.length() + 1) * LETTER > room ? number : why;
        if ((shown.length() + 1) * LETTER < room) {
            items.add(Item.Text.quiet(Place.of(left, middle + 0.24), shown, Brush.Side.RIGHT));
        }
    }
}
