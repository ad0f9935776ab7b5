package throwline.section.boundary;

import throwline.numerics.Interpolation;

/**
 * Turbulent boundary layer: momentum and entrainment (M. R. Head, ARC R&amp;M 3152, 1958) with the friction of Ludwieg and
 * Tillmann and the shape relations of T. Cebeci and P. Bradshaw (textbook forms, from memory; accepted by the flat plate).
 */
final class TurbulentLayer {

    /** The layer is taken as separated at this shape, and kept there. */
    static final double SEPARATED = 2.4;

    private static final double JOIN = 1.6;
    private static final double LEAST_ENTRAINED = 3.32;

    /**
     * State of a layer.
     *
     * @param thickness momentum thickness
     * @param shape displacement over momentum thickness
     */
    record State(double thickness, double shape) {}

    /** Thickness that entrains, over momentum thickness. */
    static double entrained(double shape) {
        return shape <= JOIN
                ? 0.8234 * Math.pow(shape - 1.1, -1.287) + 3.3
                : 1.5501 * Math.pow(shape - 0.6778, -3.064) + 3.3;
    }

    private static double shape(double entrained) {
        double above = Math.max(LEAST_ENTRAINED, entrained) - 3.3;
        double below = Math.pow(above / 0.8234, -1 / 1.287) + 1.1;
        return below <= JOIN ? below : Math.pow(above / 1.5501, -1 / 3.064) + 0.6778;
    }

    static double friction(double shape, double number) {
        return 0.246 * Math.pow(10, -0.678 * shape) * Math.pow(number, -0.268);
    }

    /** One step of the second order along a surface. */
    State step(State state, double from, double step, SurfaceSpeed speed, double reynolds) {
        double[] first = rate(state, from, speed, reynolds);
        State half = moved(state, 0.5 * step, first);
        double[] second = rate(half, from + 0.5 * step, speed, reynolds);
        return moved(state, step, second);
    }

    /** Rates of ln momentum thickness and of the entrained thickness' ratio. */
    private static double[] rate(State state, double at, SurfaceSpeed speed, double reynolds) {
        double u = speed.at(at);
        double gradient = speed.slope(at) / u;
        boolean separated = state.shape() >= SEPARATED;
        double friction = separated ? 0 : 0.5 * friction(state.shape(), Math.max(20, reynolds * u * state.thickness()));
        double growth = friction / state.thickness() - (state.shape() + 2) * gradient;
        double ratio = entrained(state.shape());
        double entrainment = 0.0306 * Math.pow(Math.max(0.02, ratio - 3), -0.6169);
        return new double[] {growth, entrainment / state.thickness() - ratio * (growth + gradient)};
    }

    private static State moved(State state, double step, double[] rate) {
        double ratio = entrained(state.shape()) + step * rate[1];
        return new State(
                state.thickness() * Math.exp(Interpolation.clamp(step * rate[0], -1, 1)),
                Interpolation.clamp(shape(ratio), 1.15, SEPARATED));
    }
}
