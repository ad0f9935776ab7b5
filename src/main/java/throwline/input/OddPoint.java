package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Search for a point that stands off the line of its neighbours, as a slip of the keyboard leaves it: without it the rest is
 * smooth. Corners and steps are not: without one of their points they stay.
 */
final class OddPoint {

    /** Off by this much, share of the chord: library outlines stay below 0.0011 behind the nose. */
    private static final double OFF = 0.003;

    /** The same on the nose, where tables are coarse: up to 0.015. */
    private static final double OFF_ON_NOSE = 0.025;

    private static final double NOSE = 0.03;

    /** Its neighbours are off by less than this share of it without it. */
    private static final double SMOOTH = 0.25;

    private static final int REACH = 2;
    private static final double APART = 1e-6;

    private final List<OutlinePoint> surface = new ArrayList<>();

    /**
     * @param way a surface from the nose on a chord of 1 along x
     */
    OddPoint(List<OutlinePoint> way) {
        for (OutlinePoint point : way) {
            if (surface.isEmpty() || along(point) > along(surface.get(surface.size() - 1)) + APART) {
                surface.add(point);
            }
        }
    }

    /** Straightens the nose. */
    private static double along(OutlinePoint point) {
        return Math.sqrt(Math.max(0, point.x()));
    }

    /** The point furthest off; empty where none is. */
    Optional<OutlinePoint> find() {
        OutlinePoint odd = null;
        double most = 0;
        for (int i = REACH; i < surface.size() - REACH; i++) {
            double off = off(surface, i);
            OutlinePoint point = surface.get(i);
            if (off > most && off > (point.x() < NOSE ? OFF_ON_NOSE : OFF) && smoothWithout(i, SMOOTH * off)) {
                most = off;
                odd = point;
            }
        }
        return Optional.ofNullable(odd);
    }

    private boolean smoothWithout(int i, double limit) {
        List<OutlinePoint> rest = new ArrayList<>(surface);
        rest.remove(i);
        for (int k = Math.max(1, i - REACH); k < Math.min(rest.size() - 1, i + REACH); k++) {
            if (off(rest, k) > limit) {
                return false;
            }
        }
        return true;
    }

    /** Distance up or down from the cubic through the four nearest others. */
    private static double off(List<OutlinePoint> points, int i) {
        int first = Math.max(0, Math.min(points.size() - 2 * REACH - 1, i - REACH));
        int last = Math.min(points.size() - 1, first + 2 * REACH);
        double t = along(points.get(i));
        double height = 0;
        for (int k = first; k <= last; k++) {
            double weight = k == i ? 0 : points.get(k).y();
            for (int m = first; m <= last && k != i; m++) {
                if (m != k && m != i) {
                    weight *= (t - along(points.get(m))) / (along(points.get(k)) - along(points.get(m)));
                }
            }
            height += weight;
        }
        return Math.abs(points.get(i).y() - height);
    }
}
