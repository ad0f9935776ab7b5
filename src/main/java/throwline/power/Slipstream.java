package throwline.power;

/**
 * The jet behind a propeller as an actuator disc makes it (momentum theory, textbook; methods manual 20.7).
 *
 * @param speed airspeed, m/s
 * @param radius of the disc, m
 * @param density kg/m^3
 * @param thrust N
 * @param torque N m
 */
public record Slipstream(double speed, double radius, double density, double thrust, double torque) {

    /** Radius of a jet at which its mean swirl is taken. */
    private static final double MEAN_RADIUS = 0.7;

    /** The jet of an operating point. */
    public static Slipstream of(OperatingPoint point, double radius, double density) {
        return new Slipstream(point.speed(), radius, density, point.thrust(), point.torque());
    }

    private double area() {
        return Math.PI * radius * radius;
    }

    /** Speed that the disc adds at its own place, m/s. A braking disc takes away at most half of the airspeed. */
    public double induced() {
        double root = speed * speed + 2 * thrust / (density * area());
        return (Math.sqrt(Math.max(0, root)) - speed) / 2;
    }

    /** Speed of the jet some way behind the disc, m/s. */
    public double speedAt(double behind) {
        return speed + induced() * (1 + behind / Math.hypot(behind, radius));
    }

    /** Radius of the jet there, m. */
    public double radiusAt(double behind) {
        double there = speedAt(behind);
        return there > 0 ? radius * Math.sqrt((speed + induced()) / there) : radius;
    }

    /** Thrust over dynamic pressure and disc area; infinite at rest. */
    public double loading() {
        return thrust / (density * speed * speed / 2 * area());
    }

    /** Mean angle by which the jet turns round its axis some way behind the disc, rad, in the sense of the propeller. */
    public double swirlAt(double behind) {
        double flow = density * area() * (speed + induced());
        double round = flow > 0 ? torque / (flow * MEAN_RADIUS * radiusAt(behind)) : 0;
        double there = speedAt(behind);
        return there > 0 ? Math.atan(round / there) : 0;
    }
}
