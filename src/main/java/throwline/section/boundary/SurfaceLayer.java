package throwline.section.boundary;

import throwline.numerics.Interpolation;
import throwline.section.boundary.LaminarLayer.State;

/**
 * March of a boundary layer along one surface (methods manual 3.13): laminar until waves have grown by e^N or the layer leaves the wall; a
 * bubble of constant speed until the waves in it have grown, closed by mixing (H. P. Horton, 1968); turbulent to the
 * trailing edge, nearly.
 */
final class SurfaceLayer {

    /** Growth at which the flow turns turbulent in the tunnels that the library was measured in (fitted; flat from 7 to 10). */
    static final double USUAL_GROWTH = 8.5;

    /** Growth of waves over momentum thickness in a separated layer, shapes 5 to 15 (own solutions). */
    private static final double SEPARATED_GROWTH = 0.030;

    /** Mixing closes a bubble at this fall of speed over momentum thickness (Horton, from memory). */
    private static final double MIXING = 0.0082;

    private static final double BUBBLE_SHAPE = 3.5;
    private static final double AFTER_BUBBLE = 2.2;
    private static final double AFTER_TRANSITION = 1.5;
    private static final double LONGEST_STEP = 0.004;
    private static final double SHORTEST_STEP = 2e-4;
    private static final double LEAST_THICKNESS = 1e-6;
    private static final double FIRST = 1e-4;
    private static final double RELATIVE_STEP = 0.05;

    private final LaminarLayer laminar = new LaminarLayer();
    private final TurbulentLayer turbulent = new TurbulentLayer();
    private final double growth;

    /**
     * The layer fills the corner at the trailing edge: the air behind it does not come to rest there as it would without
     * friction. Drag is read ahead of it, where three times the panels change it by 4 % instead of 27.
     */
    private static final double MARCHED = 0.97;

    /** Length of a surface along which the layer is followed, of its whole length. */
    static double marched(double length) {
        return MARCHED * length;
    }

    SurfaceLayer(double growth) {
        this.growth = growth;
    }

    /** Layer along a surface at a Reynolds number on the chord. */
    LayerPath march(SurfaceSpeed speed, double reynolds) {
        double end = marched(speed.end());
        State state = laminar.stagnation(Math.max(1e-3, speed.at(FIRST) / FIRST), reynolds);
        double s = FIRST;
        while (s < end) {
            if (laminar.separated(state)) {
                return bubble(speed, reynolds, s, state);
            }
            if (state.amplitude() >= growth) {
                TurbulentLayer.State start = new TurbulentLayer.State(state.thickness(), AFTER_TRANSITION);
                return turbulent(speed, reynolds, s, start, LayerPath.attached(s));
            }
            double step = Math.min(LONGEST_STEP, RELATIVE_STEP * s);
            state = laminar.step(state, s, step, speed, reynolds);
            s += step;
        }
        return LayerPath.attached(end).ending(state.thickness(), laminar.shape(state), speed.at(end), end);
    }

    private LayerPath bubble(SurfaceSpeed speed, double reynolds, double from, State state) {
        double end = marched(speed.end());
        double length = Math.max(0, growth - state.amplitude())
                * Math.max(LEAST_THICKNESS, state.thickness())
                / SEPARATED_GROWTH;
        double transition = from + length;
        double thickness = Math.max(LEAST_THICKNESS, state.thickness());
        double u = speed.at(from);
        double s = transition;
        while (s < end && u > speed.at(s)) {
            double step = Interpolation.clamp(5 * thickness, SHORTEST_STEP, LONGEST_STEP);
            u *= Math.exp(-MIXING / thickness * step);
            thickness *= Math.exp((BUBBLE_SHAPE + 2) * MIXING / thickness * step);
            s += step;
        }
        LayerPath path = LayerPath.bubble(from, Math.min(transition, end), Math.min(s, end));
        if (s >= end) {
            double left = Math.max(0, Math.log(u / speed.at(end)));
            return path.ending(
                    thickness * Math.exp((BUBBLE_SHAPE + 2) * left), TurbulentLayer.SEPARATED, speed.at(end), from);
        }
        return turbulent(speed, reynolds, s, new TurbulentLayer.State(thickness, AFTER_BUBBLE), path);
    }

    private LayerPath turbulent(
            SurfaceSpeed speed, double reynolds, double from, TurbulentLayer.State start, LayerPath path) {
        double end = marched(speed.end());
        TurbulentLayer.State state = start;
        double s = from;
        double separation = end;
        while (s < end) {
            double step = Interpolation.clamp(20 * state.thickness(), SHORTEST_STEP, LONGEST_STEP);
            state = turbulent.step(state, s, step, speed, reynolds);
            s += step;
            separation = state.shape() < TurbulentLayer.SEPARATED ? end : Math.min(separation, s);
        }
        return path.ending(state.thickness(), state.shape(), speed.at(end), separation);
    }
}
