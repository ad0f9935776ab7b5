package throwline.logs;

import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Wind found in a log, as a velocity of the air over the ground.
 *
 * @param east m/s
 * @param north m/s
 * @param height above the ground at which it was found, m
 * @param sd of each part at the height of flight, m/s
 * @param source where it comes from: a code
 */
public record LogWind(
        @Key(Key.NONE) double east,
        @Key(Key.NONE) double north,
        @Key(Key.NONE) double height,
        double sd,
        Source source) {

    /** Growth of wind with height (PRACTICE). */
    private static final double POWER = 0.15;

    private static final double LOWEST = 2;

    /** Ways of finding a wind. */
    public enum Source {
        /** Circles. */
        CIRCLE,
        /** Straight runs in three directions or more. */
        HEADINGS,
        /** Straight runs to and fro: only along them. */
        OPPOSING
    }

    /** Factor on the wind at a height above the ground, m. */
    double factor(double above) {
        return Math.pow(Math.max(LOWEST, above) / Math.max(LOWEST, height), POWER);
    }

    /** Its speed, m/s. */
    @Key(value = "speed", after = "height")
    public double speed() {
        return Math.hypot(east, north);
    }

    /** Where it comes from, rad clockwise from north, 0 to 2 pi. */
    @Key(value = "from", after = "speed")
    @Measure(Dimension.ANGLE)
    public double from() {
        double from = Math.atan2(-east, -north);
        return from < 0 ? from + 2 * Math.PI : from;
    }
}
