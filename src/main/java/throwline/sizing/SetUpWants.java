package throwline.sizing;

import java.util.Optional;

/**
 * Wants of a set-up: at least one of a stall speed and a descent.
 *
 * @param stallSpeed wanted stall speed, m/s
 * @param descent wanted way down
 * @param roll roll rate that must still be had in the set-up with the ailerons at their stops
 */
public record SetUpWants(Optional<Double> stallSpeed, Optional<WantedDescent> descent, Optional<WantedRoll> roll) {

    /**
     * A wanted way down.
     *
     * @param angle below the horizon, rad
     * @param speed airspeed, m/s
     */
    public record WantedDescent(double angle, double speed) {}

    /**
     * A wanted roll.
     *
     * @param rate rad/s, positive
     * @param speed airspeed, m/s
     */
    public record WantedRoll(double rate, double speed) {}
}
