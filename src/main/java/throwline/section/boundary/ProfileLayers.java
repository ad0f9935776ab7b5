package throwline.section.boundary;

import java.util.List;
import throwline.section.contour.PanelFlow;
import throwline.section.contour.PanelNodes;

/**
 * Boundary layers of both surfaces of a section, and its profile drag.
 *
 * @param upper over the top
 * @param lower along the bottom
 * @param overTop kinds of layer over the top along the chord
 * @param alongBottom likewise along the bottom
 */
public record ProfileLayers(
        LayerPath upper, LayerPath lower, List<LayerStretch> overTop, List<LayerStretch> alongBottom) {

    public ProfileLayers {
        overTop = List.copyOf(overTop);
        alongBottom = List.copyOf(alongBottom);
    }

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
        SurfaceWay over = SurfaceWay.of(nodes, speed, first, 1, toUpper);
        SurfaceWay under = SurfaceWay.of(nodes, speed, first - 1, -1, nodes.length(first - 1) - toUpper);
        LayerPath upper = layer.march(over.speed(), reynolds);
        LayerPath lower = layer.march(under.speed(), reynolds);
        return new ProfileLayers(upper, lower, over.stretches(upper), under.stretches(lower));
    }

    /** Profile drag coefficient. */
    public double drag() {
        return 2 * (upper.wakeThickness() + lower.wakeThickness());
    }
}
