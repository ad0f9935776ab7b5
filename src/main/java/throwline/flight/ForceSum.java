package throwline.flight;

/**
 * Forces over dynamic pressure in wind axes, m^2, and their moment about the balance point, m^3. Body axes: backwards
 * and up from the balance point.
 */
final class ForceSum {

    private final double cos;
    private final double sin;
    private double lift;
    private double drag;
    private double moment;

    /**
     * @param alpha angle of attack of the body's axis, rad
     */
    ForceSum(double alpha) {
        cos = Math.cos(alpha);
        sin = Math.sin(alpha);
    }

    /**
     * Adds a force.
     *
     * @param l lift across the undisturbed air, m^2
     * @param d drag along it, m^2
     * @param m moment of its own, m^3, nose up positive
     * @param back place behind the balance point, m
     * @param up place above it, m
     */
    void add(double l, double d, double m, double back, double up) {
        lift += l;
        drag += d;
        double rising = l * cos + d * sin;
        double aft = d * cos - l * sin;
        moment += m - back * rising + up * aft;
    }

    double lift() {
        return lift;
    }

    double drag() {
        return drag;
    }

    double moment() {
        return moment;
    }
}
