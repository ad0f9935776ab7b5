package throwline.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * The float: nearly level just above the ground, sinking the last bit while drag eats the speed down to the touch-down.
 * Integrated over speed; height falls in proportion to speed.
 */
final class HoldOff {

    private static final int STEPS = 12;

    private final NearGroundFlight flight;

    HoldOff(NearGroundFlight flight) {
        this.flight = flight;
    }

    /**
     * The way from a speed to a lower one.
     *
     * @param from airspeed at first, m/s
     * @param to airspeed at touch-down, m/s
     * @param height of the wheels at first, m; 0 at touch-down
     * @return places over the ground from 0; one place where there is nothing to lose
     */
    List<Landing.Spot> way(double from, double to, double height) {
        List<Landing.Spot> spots = new ArrayList<>();
        spots.add(new Landing.Spot(0, height, from));
        if (from <= to) {
            return spots;
        }
        double step = (from - to) / STEPS;
        double perSpeed = height / (from - to);
        double x = 0;
        for (int k = 0; k < STEPS; k++) {
            double fast = from - k * step;
            double sum = perSpeed(fast, from, perSpeed, height)
                    + 4 * perSpeed(fast - step / 2, from, perSpeed, height)
                    + perSpeed(fast - step, from, perSpeed, height);
            x += step / 6 * sum;
            spots.add(new Landing.Spot(x, Math.max(0, height - (from - fast + step) * perSpeed), fast - step));
        }
        return spots;
    }

    /** Metres over the ground for every m/s lost: {@code m V dV + W dh = -D dx} along the air, less what the wind takes. */
    private double perSpeed(double speed, double from, double heightPerSpeed, double height) {
        double area = flight.pressureArea(speed);
        double above = Math.max(0, height - (from - speed) * heightPerSpeed);
        double drag = area * flight.polar().drag(flight.weight() / area, above);
        double through = (flight.mass() * speed + flight.weight() * heightPerSpeed) / drag;
        return through * (1 - flight.windAt(above) / speed);
    }
}
