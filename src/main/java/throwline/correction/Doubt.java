package throwline.correction;

import java.util.List;
import throwline.units.Key;

/**
 * A source that fits poorly with the rest.
 *
 * @param source its name
 * @param wrong probability that it is wrong
 * @param misses by how many of its expected standard deviations it misses, signed
 * @param causes likely causes, the likeliest first, at most three
 */
public record Doubt(
        String source,
        double wrong,
        @Key("innovation") double misses,
        @Key(Key.NONE) List<Cause> causes) {

    public Doubt {
        causes = List.copyOf(causes);
    }

    /** From this probability on a source is doubted, and from this on it contradicts the rest (PRACTICE). */
    public static final double DOUBTED = 0.2;

    public static final double CONTRADICTS = 0.5;

    /** True where it hardly counts any more. */
    public boolean contradicts() {
        return wrong > CONTRADICTS;
    }

    /** Causes that are worth a question. */
    public enum Cause {
        /** With the wind instead of into it, or the other way. */
        WIND_TURNED,
        /** Up for down. */
        SIGN,
        /** Kilometres an hour for metres a second, or the other way. */
        KILOMETRES_AN_HOUR,
        /** Miles for kilometres, or the other way. */
        MILES,
        /** Feet for metres, or the other way. */
        FEET,
        /** Inches for millimetres or centimetres, or the other way. */
        INCHES,
        /** A digit too many or too few. */
        DIGIT,
        /** The wind was another one than was told. */
        WIND,
        /** The sensor, or its scale. */
        SENSOR,
        /** Stalls that ended before the nose dropped by itself: a habit, not a mistake. */
        BROKEN_OFF,
        /** Weight, balance, throws or area in the model file. */
        DESCRIPTION
    }
}
