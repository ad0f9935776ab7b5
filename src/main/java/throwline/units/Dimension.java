package throwline.units;

/** Kind of a quantity; each has one SI unit that is used everywhere inside. */
public enum Dimension {
    /** Metres. */
    LENGTH,
    /** Kilograms. */
    MASS,
    /** Radians. */
    ANGLE,
    /** Metres per second. */
    SPEED,
    /** Radians per second. */
    ANGULAR_RATE,
    /** Kelvin. */
    TEMPERATURE,
    /** Newton metres. */
    TORQUE,
    /** Amperes. */
    CURRENT,
    /** Volts. */
    VOLTAGE,
    /** Watts. */
    POWER,
    /** Ampere seconds. */
    CHARGE,
    /** Pascals. */
    PRESSURE,
    /** Seconds. */
    TIME,
    /** Square metres. */
    AREA,
    /** Kilograms per square metre of wing. */
    WING_LOADING,
    /** A share, 1 for the whole. */
    FRACTION,
    /** A plain number. */
    NUMBER
}
