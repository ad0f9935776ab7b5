package throwline.model;

import java.util.OptionalDouble;

/**
 * Field that the model flies from.
 *
 * @param ground what it rolls out on
 * @param length usable length, m; empty where not given
 * @param obstacle height of what stands before the threshold, m
 * @param heightAboveSea height of the field, m
 * @param temperature temperature of the air, K; empty for the standard day
 * @param wind steady headwind at 10 m, m/s
 */
public record Field(
        Ground ground,
        OptionalDouble length,
        double obstacle,
        double heightAboveSea,
        OptionalDouble temperature,
        double wind) {

    /** What the model rolls out on. */
    public enum Ground {
        /** Tarmac or concrete. */
        HARD,
        /** Short, dry grass. */
        SHORT_GRASS,
        /** Long or wet grass. */
        LONG_GRASS
    }
}
