package throwline.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The units that a person may write. Factors of inch, pound, mile and knot are the exact ones of the international yard
 * and pound agreement of 1959 and of the international nautical mile; a kilogram of force weighs 9.80665 N.
 */
public enum Unit {
    /** Millimetre. */
    MILLIMETRE(Dimension.LENGTH, 1e-3, 1, "mm"),
    /** Centimetre. */
    CENTIMETRE(Dimension.LENGTH, 1e-2, 2, "cm"),
    /** Metre. */
    METRE(Dimension.LENGTH, 1, 2, "m"),
    /** Inch. */
    INCH(Dimension.LENGTH, 0.0254, 2, "in", "\"", "inch", "inches"),
    /** Foot. */
    FOOT(Dimension.LENGTH, 0.3048, 2, "ft", "'", "foot", "feet"),
    /** Kilogram. */
    KILOGRAM(Dimension.MASS, 1, 3, "kg"),
    /** Gram. */
    GRAM(Dimension.MASS, 1e-3, 0, "g"),
    /** Ounce. */
    OUNCE(Dimension.MASS, 0.45359237 / 16, 1, "oz", "ounce", "ounces"),
    /** Pound. */
    POUND(Dimension.MASS, 0.45359237, 2, "lb", "lbs", "pound", "pounds"),
    /** Degree. */
    DEGREE(Dimension.ANGLE, Math.PI / 180, 1, "deg", "°", "degree", "degrees"),
    /** Radian. */
    RADIAN(Dimension.ANGLE, 1, 4, "rad"),
    /** Metre per second. */
    METRE_PER_SECOND(Dimension.SPEED, 1, 1, "m/s"),
    /** Kilometre per hour. */
    KILOMETRE_PER_HOUR(Dimension.SPEED, 1 / 3.6, 0, "km/h", "kph", "kmh"),
    /** Mile per hour. */
    MILE_PER_HOUR(Dimension.SPEED, 0.44704, 1, "mph"),
    /** Foot per second. */
    FOOT_PER_SECOND(Dimension.SPEED, 0.3048, 1, "ft/s"),
    /** Knot. */
    KNOT(Dimension.SPEED, 1852 / 3600.0, 1, "kt", "kn", "kts", "knot", "knots"),
    /** Degree per second. */
    DEGREE_PER_SECOND(Dimension.ANGULAR_RATE, Math.PI / 180, 0, "deg/s", "°/s"),
    /** Radian per second. */
    RADIAN_PER_SECOND(Dimension.ANGULAR_RATE, 1, 3, "rad/s"),
    /** Degree Celsius. */
    CELSIUS(Dimension.TEMPERATURE, 1, 1, "C", "°c", "degc"),
    /** Degree Fahrenheit. */
    FAHRENHEIT(Dimension.TEMPERATURE, 5 / 9.0, 0, "F", "°f", "degf"),
    /** Kelvin. */
    KELVIN(Dimension.TEMPERATURE, 1, 1, "K"),
    /** Newton metre. */
    NEWTON_METRE(Dimension.TORQUE, 1, 3, "N m"),
    /** Newton centimetre. */
    NEWTON_CENTIMETRE(Dimension.TORQUE, 0.01, 1, "N cm"),
    /** Kilogram of force times centimetre, as on a servo's box. */
    KILOGRAM_CENTIMETRE(Dimension.TORQUE, 0.0980665, 1, "kg cm", "kgfcm"),
    /** Ounce of force times inch, as on a servo's box. */
    OUNCE_INCH(Dimension.TORQUE, 0.45359237 / 16 * 9.80665 * 0.0254, 0, "oz in", "inoz"),
    /** Ampere. */
    AMPERE(Dimension.CURRENT, 1, 1, "A", "amp", "amps"),
    /** Volt. */
    VOLT(Dimension.VOLTAGE, 1, 2, "V", "volt", "volts"),
    /** Watt. */
    WATT(Dimension.POWER, 1, 0, "W", "watt", "watts"),
    /** Milliampere hour, as on a battery. */
    MILLIAMPERE_HOUR(Dimension.CHARGE, 3.6, 0, "mAh"),
    /** Ampere hour. */
    AMPERE_HOUR(Dimension.CHARGE, 3600, 2, "Ah"),
    /** Second. */
    SECOND(Dimension.TIME, 1, 2, "s", "sec"),
    /** Minute. */
    MINUTE(Dimension.TIME, 60, 1, "min", "minute", "minutes"),
    /** Millisecond. */
    MILLISECOND(Dimension.TIME, 1e-3, 0, "ms"),
    /** Hectopascal. */
    HECTOPASCAL(Dimension.PRESSURE, 100, 0, "hPa", "mbar", "mb"),
    /** Pascal. */
    PASCAL(Dimension.PRESSURE, 1, 0, "Pa"),
    /** Inch of mercury at 0 C. */
    INCH_OF_MERCURY(Dimension.PRESSURE, 3386.389, 2, "inHg"),
    /** Square decimetre. */
    SQUARE_DECIMETRE(Dimension.AREA, 0.01, 1, "dm^2", "dm\u00b2", "dm2"),
    /** Square inch. */
    SQUARE_INCH(Dimension.AREA, 0.0254 * 0.0254, 0, "sq in", "in^2", "in2"),
    /** Gram per square decimetre. */
    GRAM_PER_SQUARE_DECIMETRE(Dimension.WING_LOADING, 0.1, 0, "g/dm^2", "g/dm\u00b2", "g/dm2"),
    /** Ounce per square foot. */
    OUNCE_PER_SQUARE_FOOT(
            Dimension.WING_LOADING, 0.45359237 / 16 / (0.3048 * 0.3048), 1, "oz/sq ft", "oz/ft^2", "oz/ft2"),
    /** Per cent. */
    PER_CENT(Dimension.FRACTION, 0.01, 1, "%", "percent", "pct");

    private static final String NOT_COUNTED = ".*\u00b7-";
    private static final double ICE_POINT = 273.15;
    private static final double ZERO_FAHRENHEIT = 459.67 * 5 / 9;

    private final Dimension dimension;
    private final double factor;
    private final int decimals;
    /** Separated by bars. */
    private final String spellings;
    /** What counts of them, each between bars. */
    private final String keys;

    Unit(Dimension dimension, double factor, int decimals, String... spellings) {
        this.dimension = dimension;
        this.factor = factor;
        this.decimals = decimals;
        this.spellings = String.join("|", spellings);
        this.keys = Arrays.stream(spellings).map(Unit::key).collect(Collectors.joining("|", "|", "|"));
    }

    /** What kind of quantity it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** How it is printed. */
    public String symbol() {
        return spellings().get(0);
    }

    /** How it may be written, the usual spelling first; case does not count. */
    public List<String> spellings() {
        return List.of(spellings.split("\\|", -1));
    }

    /** Digits after the point that are worth printing. */
    public int decimals() {
        return decimals;
    }

    /** The value in the SI unit of its dimension. */
    public double toSi(double value) {
        return value * factor + offset();
    }

    /** A value in the SI unit, in this unit. */
    public double fromSi(double value) {
        return (value - offset()) / factor;
    }

    private double offset() {
        return switch (this) {
            case CELSIUS -> ICE_POINT;
            case FAHRENHEIT -> ZERO_FAHRENHEIT;
            default -> 0;
        };
    }

    /** The units of a dimension, the usual one first. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
    }

    /** The unit of a dimension that is spelt so; case, blanks, hyphens, points and stars do not count. */
    public static Optional<Unit> spelt(String text, Dimension dimension) {
        return spelt(text).filter(u -> u.dimension == dimension).findFirst();
    }

    /** The unit of any dimension that is spelt so. */
    static Stream<Unit> spelt(String text) {
        String key = key(text);
        return Arrays.stream(values()).filter(u -> u.isSpelt(key));
    }

    private boolean isSpelt(String key) {
        return key.indexOf('|') < 0 && keys.contains("|" + key + "|");
    }

    private static String key(String text) {
        StringBuilder key = new StringBuilder(text.length());
        String lower = text.toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if (!Character.isWhitespace(c) && NOT_COUNTED.indexOf(c) < 0) {
                key.append(c);
            }
        }
        return key.toString();
    }
}
