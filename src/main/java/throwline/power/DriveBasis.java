package throwline.power;

/** Basis of the numbers of a drive, the least trusted first (methods manual 20.6). */
public enum DriveBasis {
    /** Size of the propeller and the label of the motor. */
    LABEL,
    /** Watts at full throttle. */
    WATTS,
    /** Turns a minute at full throttle. */
    TURNS,
    /** Pull at full throttle. */
    THRUST,
    /** Turns with amps, or turns with pull. */
    BENCH
}
