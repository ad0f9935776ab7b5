package throwline.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.WingSection;

/**
 * Shapes of a model from above, nose up the page: metres to the right of the middle and behind the leading edge there.
 *
 * @param model the aeroplane
 */
record PlanOutline(Model model) {

    /** The tail end of a body over its width, as drawn. */
    private static final double TAIL_END = 0.3;

    /** From the front of the model to its end, m. */
    double length() {
        Tail tail = model.tail();
        return nose() + Math.max(model.body().length() - model.body().nose(), tail.arm() + tail.chord());
    }

    /** From the front of the model to the leading edge at the middle, m. */
    double nose() {
        return Math.max(model.body().nose(), 0);
    }

    double widest() {
        return Math.max(model.wing().span(), model.tail().span());
    }

    /** Place of the trailing edge at a distance from the middle, m. */
    double trailingEdge(double y) {
        return model.wing().leadingEdgeAt(y) + model.wing().chordAt(y);
    }

    /** The rearmost trailing edge of all surfaces, m. */
    double lowestEdge() {
        return model.wing().surfaces().stream()
                .mapToDouble(surface -> Math.max(trailingEdge(surface.from()), trailingEdge(surface.to())))
                .reduce(0, Math::max);
    }

    /** The wing from tip to tip, with its surfaces. */
    List<Place> wing() {
        List<Double> right = stations(0, model.wing().semiSpan());
        List<Double> both = new ArrayList<>(right.stream().map(y -> -y).toList());
        Collections.reverse(both);
        both.addAll(right.subList(1, right.size()));
        return outline(model.wing()::leadingEdgeAt, both);
    }

    /** A surface on one side: 1 right, -1 left. */
    List<Place> surface(Surface surface, int side) {
        List<Double> stations = stations(surface.from(), surface.to()).stream()
                .map(y -> side * y)
                .toList();
        return outline(
                y -> trailingEdge(y) - surface.chordFraction() * model.wing().chordAt(y), stations);
    }

    /** The tail with its elevator. */
    List<Place> tail() {
        return behind(model.tail().arm());
    }

    /** The elevator alone. */
    List<Place> elevator() {
        Tail tail = model.tail();
        return behind(tail.arm() + tail.chord() * (1 - tail.elevator().chordFraction()));
    }

    private List<Place> behind(double front) {
        double half = model.tail().span() / 2;
        double back = model.tail().arm() + model.tail().chord();
        return List.of(Place.of(-half, front), Place.of(half, front), Place.of(half, back), Place.of(-half, back));
    }

    /** The body. */
    List<Place> body() {
        Body body = model.body();
        double half = body.width() / 2;
        double front = -body.nose();
        double end = body.length() - body.nose();
        List<Place> right = List.of(
                Place.of(body.boxy() ? 0.7 * half : 0.35 * half, front),
                Place.of(half, front + Math.min(0.6 * body.nose(), 2 * body.width())),
                Place.of(half, Math.min(trailingEdge(0), end)),
                Place.of(TAIL_END * half, end));
        List<Place> both = new ArrayList<>(right);
        for (int i = right.size() - 1; i >= 0; i--) {
            both.add(Place.of(-right.get(i).x(), right.get(i).y()));
        }
        return both;
    }

    /** The stations of the wing between two distances from the middle, ends included. */
    private List<Double> stations(double from, double to) {
        TreeSet<Double> stations = new TreeSet<>(Set.of(from, to));
        model.wing().sections().stream()
                .map(WingSection::at)
                .filter(at -> at > from && at < to)
                .forEach(stations::add);
        return List.copyOf(stations);
    }

    /** Between a front and the trailing edge. */
    private List<Place> outline(DoubleUnaryOperator front, List<Double> stations) {
        List<Place> places = new ArrayList<>();
        stations.forEach(y -> places.add(Place.of(y, front.applyAsDouble(Math.abs(y)))));
        for (int i = stations.size() - 1; i >= 0; i--) {
            places.add(Place.of(stations.get(i), trailingEdge(Math.abs(stations.get(i)))));
        }
        return places;
    }
}
