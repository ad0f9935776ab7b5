package throwline.section.boundary;

import java.util.ArrayList;
import java.util.List;
import throwline.numerics.Interpolation;
import throwline.section.boundary.LayerStretch.Kind;
import throwline.section.contour.PanelNodes;

/** Way along one surface from the stagnation point to the trailing edge: speed and place by distance. Immutable. */
final class SurfaceWay {

    private static final double LEAST = 1e-5;

    private final double[] distance;
    private final double[] speed;
    private final double[] chordwise;

    private SurfaceWay(double[] distance, double[] speed, double[] chordwise) {
        this.distance = distance;
        this.speed = speed;
        this.chordwise = chordwise;
    }

    /**
     * The way over the nodes of one side.
     *
     * @param nodes of the panels
     * @param speeds at the nodes
     * @param first node after the stagnation point
     * @param way 1 towards the upper trailing edge, -1 towards the lower
     * @param toFirst distance from the stagnation point to that node
     */
    static SurfaceWay of(PanelNodes nodes, double[] speeds, int first, int way, double toFirst) {
        List<Double> s = new ArrayList<>(List.of(0.0));
        List<Double> u = new ArrayList<>(List.of(0.0));
        List<Double> x = new ArrayList<>(List.of(0.0));
        int nose = nodes.panels() / 2;
        double at = toFirst;
        for (int i = first; i >= 0 && i < speeds.length; i += way) {
            if (at > LEAST) {
                s.add(at);
                u.add(Math.abs(speeds[i]));
                // A way that begins on the other side counts from the nose on.
                x.add(way * (i - nose) > 0 ? nodes.x(i) : 0);
            }
            if (i + way >= 0 && i + way < speeds.length) {
                at += nodes.length(way > 0 ? i : i - 1);
            }
        }
        return new SurfaceWay(array(s), array(u), array(x));
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    SurfaceSpeed speed() {
        return new SurfaceSpeed(distance, speed);
    }

    /** Kinds of layer along the chord, from the nose to the trailing edge. */
    List<LayerStretch> stretches(LayerPath path) {
        List<LayerStretch> stretches = new ArrayList<>();
        boolean open = path.separation() <= path.laminarSeparation();
        double turbulent = open ? path.separation() : path.reattachment();
        add(stretches, Kind.LAMINAR, 0, path.laminarSeparation());
        add(stretches, Kind.BUBBLE, path.laminarSeparation(), turbulent);
        add(stretches, Kind.TURBULENT, turbulent, path.separation());
        add(stretches, Kind.SEPARATED, path.separation(), distance[distance.length - 1]);
        return List.copyOf(stretches);
    }

    private void add(List<LayerStretch> stretches, Kind kind, double from, double to) {
        double front = place(from);
        double back = place(to);
        if (back > front) {
            stretches.add(new LayerStretch(kind, front, back));
        }
    }

    /** Share of the chord; what reaches the end of the march reaches the trailing edge. */
    private double place(double at) {
        double length = distance[distance.length - 1];
        double reached = at >= SurfaceLayer.marched(length) - LEAST ? length : Math.max(0, at);
        return Interpolation.clamp(Interpolation.at(distance, chordwise, reached), 0, 1);
    }
}
