package throwline.report.chart;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.Wing;
import throwline.model.WingSection;

/** The shapes of a model from above, nose up the page, one scale for both directions. */
final class PlanOutline {

    /** The tail end of a body over its width, as drawn. */
    private static final double TAIL_END = 0.3;

    private final Model model;
    private final Place place;

    PlanOutline(Model model, Place place) {
        this.model = model;
        this.place = place;
    }

    /** From metres to places on the page: x backwards from the leading edge at the middle, y to the right. */
    record Place(double middle, double leadingEdge, double scale) {
        double x(double y) {
            return middle + y * scale;
        }

        double y(double x) {
            return leadingEdge + x * scale;
        }
    }

    /** The wing from tip to tip, with its surfaces. */
    Shape wing() {
        List<Double> stations = stations(0, model.wing().semiSpan());
        return outline(model.wing()::leadingEdgeAt, this::trailingEdge, stations, true);
    }

    /** The tail with its elevator. */
    Shape tail() {
        Tail tail = model.tail();
        return rectangle(tail.span(), tail.arm(), tail.arm() + tail.chord());
    }

    /** The elevator alone. */
    Shape elevator() {
        Tail tail = model.tail();
        double hinge = tail.arm() + tail.chord() * (1 - tail.elevator().chordFraction());
        return rectangle(tail.span(), hinge, tail.arm() + tail.chord());
    }

    private double trailingEdge(double y) {
        return model.wing().leadingEdgeAt(y) + model.wing().chordAt(y);
    }

    /** A surface on one side: 1 right, -1 left. */
    Shape surface(Surface surface, int side) {
        Wing wing = model.wing();
        List<Double> stations = stations(surface.from(), surface.to()).stream()
                .map(y -> side * y)
                .toList();
        return outline(
                y -> trailingEdge(y) - surface.chordFraction() * wing.chordAt(y), this::trailingEdge, stations, false);
    }

    /** The body. */
    Shape body() {
        Body body = model.body();
        double half = body.width() / 2;
        double front = -body.nose();
        double end = body.length() - body.nose();
        double widest = Math.min(trailingEdge(0), end);
        double noseHalf = body.boxy() ? 0.7 * half : 0.35 * half;
        double shoulder = front + Math.min(0.6 * body.nose(), 2 * body.width());
        List<double[]> points = new ArrayList<>();
        double[][] right = {
            {noseHalf, front}, {half, shoulder}, {half, widest}, {TAIL_END * half, end},
        };
        for (double[] p : right) {
            points.add(new double[] {place.x(p[0]), place.y(p[1])});
        }
        for (int i = right.length - 1; i >= 0; i--) {
            points.add(new double[] {place.x(-right[i][0]), place.y(right[i][1])});
        }
        return polygon(points);
    }

    /** The stations of the wing between two distances from the middle, ends included. */
    private List<Double> stations(double from, double to) {
        TreeSet<Double> stations = new TreeSet<>(Set.of(from, to));
        for (WingSection section : model.wing().sections()) {
            if (section.at() > from && section.at() < to) {
                stations.add(section.at());
            }
        }
        return new ArrayList<>(stations);
    }

    private Shape outline(
            DoubleUnaryOperator front, DoubleUnaryOperator back, List<Double> stations, boolean bothSides) {
        List<double[]> points = new ArrayList<>();
        int last = stations.size() - 1;
        if (bothSides) {
            for (int i = last; i > 0; i--) {
                points.add(new double[] {place.x(-stations.get(i)), place.y(front.applyAsDouble(stations.get(i)))});
            }
        }
        for (double y : stations) {
            points.add(new double[] {place.x(y), place.y(front.applyAsDouble(Math.abs(y)))});
        }
        for (int i = last; i >= 0; i--) {
            double y = stations.get(i);
            points.add(new double[] {place.x(y), place.y(back.applyAsDouble(Math.abs(y)))});
        }
        if (bothSides) {
            for (int i = 1; i <= last; i++) {
                points.add(new double[] {place.x(-stations.get(i)), place.y(back.applyAsDouble(stations.get(i)))});
            }
        }
        return polygon(points);
    }

    private static Shape polygon(List<double[]> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        points.subList(1, points.size()).forEach(p -> path.lineTo(p[0], p[1]));
        path.closePath();
        return path;
    }

    private Shape rectangle(double width, double front, double back) {
        return new Rectangle2D.Double(
                place.x(-width / 2), place.y(front), width * place.scale(), (back - front) * place.scale());
    }
}
