package throwline.correction;

/** A number that follows from the state, such as the ground speed that a stall would show. Smooth. */
@FunctionalInterface
public interface Expectation {

    /** Step of the differences that make slopes, in standard deviations. */
    double STEP = 1e-3;

    /** Its value where the factors have these values, in their order. */
    double at(double[] state);

    /** Slopes over all factors at a state: central differences of a thousandth of a standard deviation. */
    default double[] slopes(double[] state, double[] sds) {
        double[] slopes = new double[sds.length];
        double[] moved = state.clone();
        for (int j = 0; j < sds.length; j++) {
            double step = STEP * sds[j];
            moved[j] = state[j] + step;
            double above = at(moved);
            moved[j] = state[j] - step;
            slopes[j] = (above - at(moved)) / (2 * step);
            moved[j] = state[j];
        }
        return slopes;
    }
}
