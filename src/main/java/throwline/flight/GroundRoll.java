package throwline.flight;

import throwline.model.Field;
import throwline.model.Model;

/**
 * The roll to a stop: {@code m dV/dt = -mu (W - L) - D}, integrated over ground speed because of the wind
 * (mechanics, methods manual 10.4; without wind it has a closed form).
 *
 * @param friction of wheels or belly on the ground
 * @param lift lift coefficient while it rolls
 * @param drag drag coefficient while it rolls
 */
record GroundRoll(double friction, double lift, double drag) {

    private static final int STEPS = 64;

    /**
     * Friction on a kind of ground, middle of the usual ranges (MEMORY and PRACTICE, methods manual 10.4: hard 0.02 to 0.04,
     * short dry grass 0.06 to 0.10, long or wet grass 0.10 to 0.20, belly on grass 0.3 to 0.5).
     */
    static double friction(Model model) {
        if (model.wheels().isEmpty()) {
            return 0.4;
        }
        return friction(model.field().ground());
    }

    private static double friction(Field.Ground ground) {
        return switch (ground) {
            case HARD -> 0.03;
            case SHORT_GRASS -> 0.08;
            case LONG_GRASS -> 0.15;
        };
    }

    /**
     * Distance to a stop.
     *
     * @param flight the model; its wind is taken at the wing's height
     * @param touchdown airspeed at touch-down, m/s
     * @return m; zero where the wind is as fast
     */
    double distance(NearGroundFlight flight, double touchdown) {
        double wind = flight.windAt(0);
        double fastest = touchdown - wind;
        if (fastest <= 0) {
            return 0;
        }
        double step = fastest / STEPS;
        double sum = 0;
        for (int k = 0; k < STEPS; k++) {
            double slow = k * step;
            sum += perSpeed(flight, slow, wind)
                    + 4 * perSpeed(flight, slow + step / 2, wind)
                    + perSpeed(flight, slow + step, wind);
        }
        return step / 6 * sum;
    }

    private double perSpeed(NearGroundFlight flight, double ground, double wind) {
        double area = flight.pressureArea(ground + wind);
        double onWheels = Math.max(0, flight.weight() - lift * area);
        return ground * flight.mass() / (friction * onWheels + drag * area);
    }
}
