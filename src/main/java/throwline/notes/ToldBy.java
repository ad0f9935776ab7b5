package throwline.notes;

/** Ways of measuring, the coarsest first. */
public enum ToldBy {
    /** By feel at the stick. */
    FEEL,
    /** By eye. */
    EYE,
    /** Against things on the ground. */
    LANDMARKS,
    /** Paced out. */
    PACES,
    /** With a stopwatch. */
    STOPWATCH,
    /** From a film. */
    VIDEO,
    /** Height from the air's pressure. */
    BAROMETER,
    /** From satellites. */
    GPS,
    /** With an airspeed sensor. */
    AIRSPEED,
    /** On a scale. */
    SCALE,
    /** Read on the bench. */
    BENCH
}
