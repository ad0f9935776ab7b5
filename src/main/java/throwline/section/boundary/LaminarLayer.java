package throwline.section.boundary;

import throwline.numerics.Interpolation;

/**
 * Laminar boundary layer: integral equations of momentum and energy (K. Wieghardt; A. Walz) closed by similar layers.
 * Lengths are in chords, speeds over that of the air. Immutable.
 */
final class LaminarLayer {

    /** Shape of a stagnation point, and the square of its momentum thickness times the speed's gradient over viscosity. */
    static final double STAGNATION_SHAPE = 2.21623;

    private static final double STAGNATION_THICKNESS = 0.0855;
    private static final double RAMP = 0.25;

    private static final int ENERGY = 1;
    private static final int FRICTION = 2;
    private static final int DISSIPATION = 3;
    private static final int GROWTH = 1;
    private static final int BEGIN = 2;

    private final LayerTable similar;
    private final LayerTable waves;

    LaminarLayer() {
        similar = LayerTable.load("laminar.csv");
        waves = LayerTable.load("growth.csv");
    }

    /**
     * State of a layer.
     *
     * @param thickness momentum thickness
     * @param energy energy thickness over momentum thickness
     * @param amplitude natural logarithm of how much the fastest waves have grown
     */
    record State(double thickness, double energy, double amplitude) {

        State plus(double step, State rate) {
            return new State(
                    thickness + step * rate.thickness, energy + step * rate.energy, amplitude + step * rate.amplitude);
        }
    }

    /** The layer at a stagnation point of this gradient of speed. */
    State stagnation(double gradient, double reynolds) {
        return new State(
                Math.sqrt(STAGNATION_THICKNESS / (gradient * reynolds)), similar.at(ENERGY, STAGNATION_SHAPE), 0);
    }

    /** Shape: displacement over momentum thickness. */
    double shape(State state) {
        return similar.firstAt(ENERGY, state.energy());
    }

    /** True where the layer leaves the wall. */
    boolean separated(State state) {
        return state.energy() <= similar.last(ENERGY) + 1e-5;
    }

    /** One Runge-Kutta step along a surface. */
    State step(State state, double from, double step, SurfaceSpeed speed, double reynolds) {
        State a = rate(state, from, speed, reynolds);
        State b = rate(state.plus(0.5 * step, a), from + 0.5 * step, speed, reynolds);
        State c = rate(state.plus(0.5 * step, b), from + 0.5 * step, speed, reynolds);
        State d = rate(state.plus(step, c), from + step, speed, reynolds);
        return state.plus(step / 6, a).plus(step / 3, b).plus(step / 3, c).plus(step / 6, d);
    }

    private State rate(State state, double at, SurfaceSpeed speed, double reynolds) {
        double u = speed.at(at);
        double gradient = speed.slope(at) / u;
        double thickness = Math.max(1e-9, state.thickness());
        double number = Math.max(1e-9, reynolds * u * thickness);
        double shape = shape(state);
        double friction = similar.at(FRICTION, shape) / number;
        double dissipation = similar.at(DISSIPATION, shape) / number;
        return new State(
                friction - (shape + 2) * thickness * gradient,
                (2 * dissipation - state.energy() * friction) / thickness + (shape - 1) * state.energy() * gradient,
                growth(shape, number) / thickness);
    }

    /** Growth of waves over momentum thickness, in a layer of this shape. */
    double growth(double shape, double number) {
        double begun = Math.log(number / waves.at(BEGIN, shape)) / RAMP + 0.5;
        return waves.at(GROWTH, shape) * Interpolation.clamp(begun, 0, 1);
    }
}
