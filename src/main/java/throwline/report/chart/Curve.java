package throwline.report.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import throwline.study.Headline;

/**
 * Curve with its name at its end and a mark with a whisker at the point of most interest.
 *
 * @param name its label; empty for none
 * @param look its colour, line and mark
 * @param points in order; the label stands at the last
 * @param spot the point of most interest
 */
record Curve(String name, ChartStyle.Look look, List<Place> points, Optional<Spot> spot) implements Item {

    private static final double WHISKER_END = 4;
    /** Room of a name, points. */
    private static final double ROOM = ChartStyle.ENDS.getRight() - 20;
    /** From this distance on a line leads from a curve's end to its label. */
    private static final double LEADER = 12;

    Curve {
        points = List.copyOf(points);
    }

    Curve(String name, ChartStyle.Look look, List<Place> points) {
        this(name, look, points, Optional.empty());
    }

    /**
     * Point with its band along y.
     *
     * @param x place
     * @param y place
     * @param low one end of the whisker
     * @param high other end
     */
    record Spot(double x, double y, double low, double high) {
        /** A number with its band over another, in the unit that is shown. */
        static Spot of(Headline.Known x, Headline.Known y, DoubleUnaryOperator shown) {
            return new Spot(
                    x.value(),
                    shown.applyAsDouble(y.value()),
                    shown.applyAsDouble(y.low()),
                    shown.applyAsDouble(y.high()));
        }
    }

    /** Curves, then their marks, then their names, which keep clear of both. */
    static List<Item> all(List<Curve> curves) {
        List<Item> items = new ArrayList<>(curves);
        curves.forEach(curve -> items.add(curve::spot));
        curves.forEach(curve -> items.add(curve::label));
        return items;
    }

    /** All places that curves reach, ends of whiskers among them. */
    static List<Place> reached(List<Curve> curves) {
        return curves.stream()
                .flatMap(curve -> Stream.concat(
                        curve.points.stream(),
                        curve.spot.stream().flatMap(s -> Stream.of(Place.of(s.x, s.low), Place.of(s.x, s.high)))))
                .toList();
    }

    /** Hollow marks of the same look, for what was measured. */
    List<Item> marks(List<Place> places) {
        return places.stream().<Item>map(place -> new Mark(place, look, false)).toList();
    }

    @Override
    public void draw(Brush brush) {
        if (points.size() > 1) {
            brush.lineInArea(brush.path(points), look.color(), look.line());
        }
        for (int i = 1; i < points.size(); i++) {
            Place from = points.get(i - 1);
            Place to = points.get(i);
            brush.placer().inked(brush.x(from), brush.y(from), brush.x(to), brush.y(to));
        }
    }

    private void spot(Brush brush) {
        if (spot.isEmpty()) {
            return;
        }
        double x = brush.x(Place.of(spot.get().x, 0));
        double y = brush.y(Place.of(0, spot.get().y));
        double low = brush.y(Place.of(0, spot.get().low));
        double high = brush.y(Place.of(0, spot.get().high));
        brush.line(x, low, x, high, look.color(), look.whisker());
        brush.line(x - WHISKER_END, low, x + WHISKER_END, low, look.color(), look.whisker());
        brush.line(x - WHISKER_END, high, x + WHISKER_END, high, look.color(), look.whisker());
        brush.mark(look, x, y, true);
        brush.placer()
                .taken(new Rectangle2D.Double(
                        x - 2 * WHISKER_END, Math.min(low, high), 4 * WHISKER_END, Math.abs(high - low)));
    }

    private void label(Brush brush) {
        if (points.isEmpty() || name.isEmpty()) {
            return;
        }
        double x = brush.x(points.get(points.size() - 1));
        double y = brush.y(points.get(points.size() - 1));
        List<String> lines = Brush.wrapped(name, ChartStyle.STRONG, ROOM, 2);
        double step = brush.height(ChartStyle.STRONG);
        double width = lines.stream()
                .mapToDouble(line -> Brush.width(line, ChartStyle.STRONG))
                .max()
                .orElse(0);
        Rectangle2D place = brush.placer().place(x, y, width, step * lines.size());
        Line2D way = LabelPlacer.leader(x, y, place);
        if (way.getP1().distance(way.getP2()) > LEADER) {
            brush.line(way, look.color(), ChartStyle.THIN);
        }
        for (int i = 0; i < lines.size(); i++) {
            double at = place.getY() + (i + 0.5) * step;
            brush.textOnGround(lines.get(i), ChartStyle.STRONG, ChartStyle.INK, place.getX(), at, Brush.Side.RIGHT);
        }
    }
}
