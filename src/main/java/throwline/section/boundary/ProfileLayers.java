package throwline.section.boundary;

import java.util.ArrayList;
import java.util.List;
import throwline.section.contour.PanelFlow;
import throwline.section.contour.PanelNodes;

/**
 * Boundary layers of both surfaces of a section, and its profile drag.
 *
 * @param upper over the top
 * @param lower along the bottom
 */
public record ProfileLayers(LayerPath upper, LayerPath lower) {

    /** Maker of layers; keeps its tables. Immutable. */
    public static final class Method {

        private final SurfaceLayer layer = new SurfaceLayer(SurfaceLayer.USUAL_GROWTH);

        /**
         * Layers of a section.
         *
         * @param flow round it without friction
         * @param alpha angle of attack, rad
         * @param reynolds on the chord
         */
        public ProfileLayers of(PanelFlow flow, double alpha, double reynolds) {
            return ProfileLayers.of(flow, alpha, reynolds, layer);
        }
    }

    private static ProfileLayers of(PanelFlow flow, double alpha, double reynolds, SurfaceLayer layer) {
        double[] speed = flow.speeds(alpha);
        PanelNodes nodes = flow.nodes();
        int first = 1;
        while (first < speed.length - 2 && speed[first] < 0) {
            first++;
        }
        double share = -speed[first - 1] / (speed[first] - speed[first - 1]);
        double toUpper = (1 - share) * nodes.length(first - 1);
        return new ProfileLayers(
                layer.march(speeds(nodes, speed, first, 1, toUpper), reynolds),
                layer.march(speeds(nodes, speed, first - 1, -1, nodes.length(first - 1) - toUpper), reynolds));
    }

    private static SurfaceSpeed speeds(PanelNodes nodes, double[] speed, int first, int way, double distance) {
        List<Double> s = new ArrayList<>(List.of(0.0));
        List<Double> u = new ArrayList<>(List.of(0.0));
        double at = distance;
        for (int i = first; i >= 0 && i < speed.length; i += way) {
            if (at > 1e-5) {
                s.add(at);
                u.add(Math.abs(speed[i]));
            }
            if (i + way >= 0 && i + way < speed.length) {
                at += nodes.length(way > 0 ? i : i - 1);
            }
        }
        return new SurfaceSpeed(
                s.stream().mapToDouble(Double::doubleValue).toArray(),
                u.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Profile drag coefficient. */
    public double drag() {
        return 2 * (upper.wakeThickness() + lower.wakeThickness());
    }
}
