package throwline.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a quantity as a person writes it: a number and a unit, with or without a blank between, or several parts of
 * falling size ({@code 2 lb 10 oz}). What could be meant in two ways is refused with a reason.
 */
public final class QuantityReader {

    private static final int LONGEST = 60;
    private static final Pattern PART = Pattern.compile(
            "\\G\\s*([0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?![0-9.])\\s*((?:[^0-9.,^]|\\^2?)*)(?:\\.(?![0-9]))?");
    private static final Pattern FRACTION =
            Pattern.compile("(?:([0-9]+)\\s+)?([0-9]{1,6})\\s*/\\s*([0-9]{1,6})\\s*(.*)");

    private static final Pattern COMMA = Pattern.compile("[+-]?[0-9.]*,[0-9].*");
    private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0\u2007\u2009\u202f]+");
    private static final Pattern INCHES = Pattern.compile("[\u2033\u201c\u201d]|''");
    private static final Pattern FEET = Pattern.compile("[\u2032\u2019]");

    private QuantityReader() {}

    /**
     * Reads text as a quantity with its unit.
     *
     * @param text as written
     * @param dimension what kind of quantity is wanted
     * @return the quantity in SI units, or why not
     */
    public static ReadQuantity read(String text, Dimension dimension) {
        String plain = plain(text);
        if (plain.length() > LONGEST) {
            return ReadQuantity.Refused.because("number", plain.substring(0, LONGEST) + "...", example(dimension));
        }
        Optional<ReadQuantity.Refused> refused = misleading(plain);
        if (refused.isPresent()) {
            return refused.get();
        }
        boolean negative = plain.startsWith("-");
        String unsigned = negative || plain.startsWith("+") ? plain.substring(1) : plain;
        List<Part> parts = new ArrayList<>();
        Matcher matcher = PART.matcher(unsigned);
        int end = 0;
        while (matcher.find()) {
            parts.add(new Part(matcher.group(1), matcher.group(2).strip()));
            end = matcher.end();
        }
        if (parts.isEmpty() || end < unsigned.length()) {
            return ReadQuantity.Refused.because("number", plain, example(dimension));
        }
        return sum(parts, negative, plain, dimension);
    }

    /**
     * Reads text as an angle; a number without a unit counts as degrees. For the command line.
     *
     * @param text as written
     * @return radians, or why not
     */
    public static ReadQuantity readDegrees(String text) {
        ReadQuantity bare = read(text, Dimension.NUMBER);
        return bare instanceof ReadQuantity.Amount amount
                ? new ReadQuantity.Amount(
                        new Quantity(Math.toRadians(amount.quantity().value()), Dimension.ANGLE))
                : read(text, Dimension.ANGLE);
    }

    private record Part(String number, String unit) {}

    private static ReadQuantity sum(List<Part> parts, boolean negative, String plain, Dimension dimension) {
        double total = 0;
        double size = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            double number = Double.parseDouble(part.number());
            if (dimension == Dimension.NUMBER) {
                return part.unit().isEmpty() && parts.size() == 1
                        ? amount(negative ? -number : number, dimension)
                        : ReadQuantity.Refused.because("bare", plain);
            }
            Optional<Unit> unit = Unit.spelt(part.unit(), dimension);
            if (unit.isEmpty()) {
                return wrongUnit(part, plain, dimension);
            }
            double value = unit.get().toSi(parts.size() == 1 && negative ? -number : number);
            boolean whole = !part.number().contains(".");
            double one = unit.get().toSi(1);
            if (parts.size() > 1
                    && (dimension == Dimension.TEMPERATURE
                            || one >= size
                            || value >= size
                            || (!whole && i < parts.size() - 1))) {
                return ReadQuantity.Refused.because("parts", plain);
            }
            size = one;
            total += value;
        }
        return amount(parts.size() > 1 && negative ? -total : total, dimension);
    }

    private static ReadQuantity amount(double value, Dimension dimension) {
        return new ReadQuantity.Amount(new Quantity(value, dimension));
    }

    private static ReadQuantity.Refused wrongUnit(Part part, String plain, Dimension dimension) {
        String allowed = Unit.of(dimension).stream().map(Unit::symbol).collect(Collectors.joining(", "));
        if (part.unit().isEmpty()) {
            String unit = Unit.of(dimension).get(0).symbol();
            return ReadQuantity.Refused.because("nounit", plain, plain + " " + unit, allowed);
        }
        if (part.unit().toLowerCase(Locale.ROOT).startsWith("grad")) {
            return ReadQuantity.Refused.because("grad", plain, part.number() + " deg");
        }
        Optional<Unit> other = Unit.spelt(part.unit()).findFirst();
        if (other.isPresent()) {
            return ReadQuantity.Refused.because(
                    "otherkind." + other.get().dimension().name().toLowerCase(Locale.ROOT), plain, allowed);
        }
        return ReadQuantity.Refused.because("unit", part.unit(), allowed, example(dimension));
    }

    private static Optional<ReadQuantity.Refused> misleading(String plain) {
        if (COMMA.matcher(plain).matches()) {
            String pointed = plain.matches("[+-]?[0-9]{1,3},[0-9]{3}(?![0-9]).*")
                    ? plain.replaceFirst(",", "")
                    : plain.replaceFirst(",", ".");
            return Optional.of(ReadQuantity.Refused.because("comma", plain, pointed));
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches() && Integer.parseInt(fraction.group(3)) > 0) {
            double whole = fraction.group(1) == null || fraction.group(1).length() > 6
                    ? 0
                    : Integer.parseInt(fraction.group(1));
            double value = whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
            String written = QuantityPrinter.number(value, 4) + " " + fraction.group(4);
            return Optional.of(ReadQuantity.Refused.because("fraction", plain, written.strip()));
        }
        return Optional.empty();
    }

    private static String plain(String text) {
        String minus = BLANKS.matcher(text).replaceAll(" ").replace('\u2212', '-');
        String inches = INCHES.matcher(minus).replaceAll("\"");
        return FEET.matcher(inches).replaceAll("'").strip();
    }

    private static String example(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "300 mm";
            case MASS -> "3.05 kg";
            case ANGLE -> "20 deg";
            case SPEED -> "12 m/s";
            case ANGULAR_RATE -> "120 deg/s";
            case TEMPERATURE -> "24 C";
            case TORQUE -> "0.6 N m";
            case CURRENT -> "40 A";
            case VOLTAGE -> "14.8 V";
            case POWER -> "600 W";
            case CHARGE -> "4000 mAh";
            case PRESSURE -> "1003 hPa";
            case TIME -> "1.5 s";
            case AREA -> "49 dm^2";
            case WING_LOADING -> "62 g/dm^2";
            case FRACTION -> "25 %";
            case NUMBER -> "2";
        };
    }
}
