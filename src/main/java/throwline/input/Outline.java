package throwline.input;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import throwline.section.AirfoilShape;
import throwline.section.AirfoilShape.Corner;
import throwline.words.Message;

/** Makes an airfoil's two surfaces of points in any usual order, direction and scale. */
final class Outline {

    /** The two surfaces may stand this far apart at the trailing edge, share of the chord. */
    private static final double WIDEST_EDGE = 0.05;

    /** A surface may turn back by this much, share of the chord. */
    private static final double SLACK = 0.005;

    /** Ends that differ by more than this along the chord lack the trailing edge on one side, share of the chord. */
    private static final double MISSING = 1e-4;

    /** Two points a tenth of the chord apart are the coarsest that old tables have. */
    private static final double MOST_MISSING = 0.12;

    /** Crossings so near the trailing edge are rounding, share of the chord. */
    private static final double EDGE = 0.005;

    private static final double THINNEST = 0.005;
    private static final double THICKEST = 0.40;
    private static final double MOST_CAMBER = 0.20;

    private final List<OutlinePoint> points;
    private final Problems problems;

    Outline(List<OutlinePoint> points, Problems problems) {
        this.points = points;
        this.problems = problems;
    }

    /** The shape; empty where there is a problem, which is then reported. */
    Optional<AirfoilShape> shape() {
        List<OutlinePoint> loop = loop();
        OutlinePoint first = loop.get(0);
        OutlinePoint last = loop.get(loop.size() - 1);
        OutlinePoint edge = new OutlinePoint(0.5 * (first.x() + last.x()), 0.5 * (first.y() + last.y()), 0);
        int at = farthest(loop, edge::distance);
        OutlinePoint nose = loop.get(at);
        double chord = edge.distance(nose);
        if (!(chord > 0)) {
            return refuse(first, "input.outline.chord");
        }
        if (first.distance(last) > WIDEST_EDGE * chord) {
            return refuse(last, "input.outline.open");
        }
        Optional<OutlinePoint> crossing = crossing(loop).filter(point -> point.distance(edge) > EDGE * chord);
        if (crossing.isPresent()) {
            return refuse(crossing.get(), "input.outline.crosses");
        }
        List<OutlinePoint> one = new ArrayList<>(loop.subList(0, at + 1));
        Collections.reverse(one);
        List<OutlinePoint> other = loop.subList(at, loop.size());
        Optional<List<Corner>> a = surface(one, nose, edge);
        Optional<List<Corner>> b = surface(other, nose, edge);
        return a.isEmpty() || b.isEmpty() ? Optional.empty() : checked(a.get(), b.get(), nose);
    }

    /** From the trailing edge over one surface to the nose and back along the other. */
    private List<OutlinePoint> loop() {
        List<OutlinePoint> loop = new ArrayList<>();
        double left = points.stream().mapToDouble(OutlinePoint::x).min().orElse(0);
        double right = points.stream().mapToDouble(OutlinePoint::x).max().orElse(0);
        int second = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i - 1).x() - points.get(i).x() > 0.5 * (right - left)) {
                second = i;
            }
        }
        if (second > 0) {
            loop.addAll(points.subList(0, second));
            Collections.reverse(loop);
            loop.addAll(points.subList(second, points.size()));
        } else {
            loop.addAll(points);
            int end = farthest(loop, OutlinePoint::x);
            if (right - Math.max(loop.get(0).x(), loop.get(loop.size() - 1).x()) > SLACK * (right - left)) {
                Collections.rotate(loop, -end);
                loop.add(loop.get(0));
            }
        }
        return closed(withoutRepeats(loop), right - left);
    }

    /** The first of the points that lie farthest. */
    private static int farthest(List<OutlinePoint> points, ToDoubleFunction<OutlinePoint> distance) {
        return IntStream.range(0, points.size())
                .reduce((first, next) ->
                        distance.applyAsDouble(points.get(next)) > distance.applyAsDouble(points.get(first))
                                ? next
                                : first)
                .orElseThrow();
    }

    /** With its trailing edge at both ends where a file names it only once. */
    private static List<OutlinePoint> closed(List<OutlinePoint> loop, double length) {
        OutlinePoint first = loop.get(0);
        OutlinePoint last = loop.get(loop.size() - 1);
        double missing = first.x() - last.x();
        boolean onceOnly = Math.abs(missing) > Math.max(MISSING * length, 0.5 * Math.abs(first.y() - last.y()));
        if (onceOnly && Math.abs(missing) < MOST_MISSING * length) {
            if (missing > 0) {
                loop.add(first);
            } else {
                loop.add(0, last);
            }
        }
        return loop;
    }

    private static List<OutlinePoint> withoutRepeats(List<OutlinePoint> loop) {
        List<OutlinePoint> apart = new ArrayList<>();
        for (OutlinePoint point : loop) {
            if (apart.isEmpty() || point.distance(apart.get(apart.size() - 1)) > 0) {
                apart.add(point);
            }
        }
        return apart;
    }

    /** The first point whose way to the next crosses an earlier stretch. */
    private static Optional<OutlinePoint> crossing(List<OutlinePoint> loop) {
        for (int i = 2; i < loop.size() - 1; i++) {
            for (int k = 0; k < i - 1; k++) {
                if (cross(loop.get(k), loop.get(k + 1), loop.get(i), loop.get(i + 1))) {
                    return Optional.of(loop.get(i));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean cross(OutlinePoint a, OutlinePoint b, OutlinePoint c, OutlinePoint d) {
        return OutlinePoint.turn(a, b, c) * OutlinePoint.turn(a, b, d) < 0
                && OutlinePoint.turn(c, d, a) * OutlinePoint.turn(c, d, b) < 0;
    }

    /** A surface from the nose on a chord of 1 along x. */
    private Optional<List<Corner>> surface(List<OutlinePoint> way, OutlinePoint nose, OutlinePoint edge) {
        double chord = edge.distance(nose);
        double cos = (edge.x() - nose.x()) / chord;
        double sin = (edge.y() - nose.y()) / chord;
        List<OutlinePoint> surface = new ArrayList<>();
        double reached = -1;
        for (OutlinePoint point : way) {
            double dx = (point.x() - nose.x()) / chord;
            double dy = (point.y() - nose.y()) / chord;
            OutlinePoint corner = new OutlinePoint(dx * cos + dy * sin, dy * cos - dx * sin, point.line());
            if (corner.x() < reached - SLACK) {
                problems.add(new FilePlace(point.line(), 1), "", Message.of("input.outline.back"));
                return Optional.empty();
            }
            if (corner.x() > reached) {
                surface.add(corner);
                reached = corner.x();
            }
        }
        Optional<OutlinePoint> odd = new OddPoint(surface).find();
        if (odd.isPresent()) {
            problems.add(new FilePlace(odd.get().line(), 1), "", Message.of("input.outline.odd"));
            return Optional.empty();
        }
        return Optional.of(surface.stream().map(p -> new Corner(p.x(), p.y())).toList());
    }

    private Optional<AirfoilShape> checked(List<Corner> a, List<Corner> b, OutlinePoint nose) {
        boolean topFirst = meanHeight(a) >= meanHeight(b);
        if (a.size() < 3 || b.size() < 3) {
            return refuse(nose, "input.outline.onesided");
        }
        AirfoilShape shape = new AirfoilShape(topFirst ? a : b, topFirst ? b : a);
        boolean usual = shape.thickness() >= THINNEST
                && shape.thickness() <= THICKEST
                && Math.abs(shape.camber()) <= MOST_CAMBER;
        return usual ? Optional.of(shape) : refuse(nose, "input.outline.unusual");
    }

    private static double meanHeight(List<Corner> surface) {
        return surface.stream().mapToDouble(Corner::y).average().orElse(0);
    }

    private Optional<AirfoilShape> refuse(OutlinePoint where, String code) {
        problems.add(new FilePlace(where.line(), 1), "", Message.of(code));
        return Optional.empty();
    }
}
