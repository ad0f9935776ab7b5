package throwline.report.document;

import java.util.List;
import java.util.Locale;
import throwline.report.Page;
import throwline.study.EdgeThrow;
import throwline.study.Headline;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Words;

/**
 * Texts and values as they are read: words with their gaps filled, numbers in the units of the reader and with as many digits
 * as they are worth. The only place where a value becomes letters; a number and its unit are kept on one line.
 */
public final class Figures {

    /** Height that a glide is told for, in either unit. */
    private static final double DROP_METRES = 10;

    private static final double DROP_FEET = 30;

    private static final double TEN = 10;

    private static final char UNBROKEN = '\u00a0';

    private final Page page;
    private final Words words;

    /**
     * Numbers for this page.
     *
     * @param page where they are shown
     * @param words the sentences
     */
    public Figures(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /** A text as it is read. */
    public String show(Text text) {
        if (text instanceof Text.Phrase phrase) {
            return words.say(
                    phrase.key(), phrase.arguments().stream().map(this::show).toArray());
        }
        if (text instanceof Text.Verbatim verbatim) {
            return verbatim.letters();
        }
        if (text instanceof Text.Joined joined) {
            return joined(joined.parts().stream().map(this::show).toList(), joined.how());
        }
        if (text instanceof Text.Capital capital) {
            String said = show(capital.text());
            return said.isEmpty() ? said : said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
        }
        return value((Value) text);
    }

    private String joined(List<String> parts, Text.Join how) {
        return switch (how) {
            case BLANK -> String.join(" ", parts);
            case COMMA -> String.join(", ", parts);
            case SEMICOLON -> String.join("; ", parts);
            case AND -> {
                int last = parts.size() - 1;
                yield last < 1
                        ? String.join("", parts)
                        : words.say("row.and", String.join(", ", parts.subList(0, last)), parts.get(last));
            }
        };
    }

    private String value(Value value) {
        if (value instanceof Value.Amount amount) {
            return unbroken(amount(amount.value(), amount.kind()));
        }
        if (value instanceof Value.Band band) {
            return band(band.number(), band.kind());
        }
        if (value instanceof Value.Change change) {
            return change(change.value(), change.kind());
        }
        if (value instanceof Value.Edge edge) {
            return unbroken(edge(edge.angle(), new EdgeThrow(edge.chord())));
        }
        if (value instanceof Value.EdgeBand band) {
            return edgeBand(band.angle(), new EdgeThrow(band.chord()));
        }
        if (value instanceof Value.Gauge gauge) {
            return unbroken(gauge(gauge, new EdgeThrow(gauge.chord())));
        }
        if (value instanceof Value.BareSpeed bare) {
            Unit unit = page.units().speed();
            return decimals(unit.fromSi(bare.speed()), unit.decimals());
        }
        if (value instanceof Value.Measure measure) {
            return unbroken(new QuantityPrinter(page.units()).print(measure.quantity()));
        }
        if (value instanceof Value.Plain plain) {
            return Double.isFinite(plain.value()) ? decimals(plain.value(), plain.decimals()) : "-";
        }
        if (value instanceof Value.Rounded rounded) {
            return rounded(rounded.value());
        }
        Unit unit = value instanceof Value.SpeedUnit
                ? page.units().speed()
                : page.units().length();
        return unit.symbol();
    }

    private static String rounded(double value) {
        if (Double.isInfinite(value)) {
            return "";
        }
        return Double.isNaN(value) ? "-" : decimals(value, Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 1 ? 2 : 4);
    }

    private static String unbroken(String text) {
        return text.replace(' ', UNBROKEN);
    }

    private String amount(double value, Value.Kind kind) {
        return switch (kind) {
            case SPEED ->
                speed(value, page.units().speed(), page.units().speed().decimals());
            case OTHER_SPEED ->
                speed(value, page.unitBelowSpeed(), page.unitBelowSpeed() == Unit.METRE_PER_SECOND ? 1 : 0);
            case SPEED_STEP ->
                speed(
                        Math.abs(value),
                        page.units().speed(),
                        page.units().speed().decimals() + 1);
            case ANGLE -> digits(Math.toDegrees(value)) + page.degreeSign();
            case ANGLE_TENTHS -> degrees(value, 1);
            case ANGLE_STEP -> degrees(Math.abs(value), 2);
            case DEFLECTION -> moved(value, digits(Math.abs(Math.toDegrees(value))), page.degreeSign());
            case DEFLECTION_TENTHS -> moved(value, decimals(Math.abs(Math.toDegrees(value)), 1), page.degreeSign());
            case RATE -> degrees(value, 0) + "/s";
            case RATE_STEP -> degrees(value, 1) + "/s";
            case DISTANCE -> decimals(far(value), 0) + far();
            case RADIUS -> decimals(far(value), isInFeet() ? 0 : 1) + far();
            case GLIDE -> decimals((isInFeet() ? DROP_FEET : DROP_METRES) * value, 0) + far();
            case VERTICAL_SPEED -> decimals(far(value), 1) + far() + "/s";
            case HEIGHT -> digits(far(value)) + far();
            case PLACE -> place(value);
            case LOAD -> decimals(value, 1) + " g";
            case TIME -> digits(value) + " s";
            case SHARE -> decimals(100 * value, 0) + " %";
            case LEVER -> decimals(100 * value, Math.abs(100 * value - Math.rint(100 * value)) > 0.05 ? 1 : 0) + " %";
            case RATIO -> decimals(value, 1);
            case SHARE_TENTHS -> decimals(100 * value, 1) + " %";
            case SIGNED_SHARE -> String.format(Locale.ROOT, "%+.1f %%", 100 * value);
            case SIGNED_ANGLE -> String.format(Locale.ROOT, "%+.2f", Math.toDegrees(value)) + page.degreeSign();
        };
    }

    /** A band without its unit, as many digits as its number has. */
    private String band(Headline.Known number, Value.Kind kind) {
        Unit speed = page.units().speed();
        double degrees = Math.toDegrees(1);
        return switch (kind) {
            case SPEED -> band(number, speed.fromSi(1), speed.decimals());
            case ANGLE, ANGLE_TENTHS -> band(number, degrees, degrees * number.value() < TEN ? 1 : 0);
            case RATE -> band(number, degrees, 0);
            case HEIGHT -> band(number, far(1), far(number.value()) < TEN ? 1 : 0);
            case DISTANCE -> band(number, far(1), 0);
            case RADIUS -> band(number, far(1), isInFeet() ? 0 : 1);
            case VERTICAL_SPEED -> band(number, far(1), 1);
            case RATIO -> band(number, 1, 1);
            default -> throw new IllegalArgumentException("no band of " + kind);
        };
    }

    /** A difference without its unit, with its sign. */
    private String change(double value, Value.Kind kind) {
        Unit speed = page.units().speed();
        return switch (kind) {
            case SPEED -> signed(speed.fromSi(value), speed.decimals());
            case ANGLE -> signed(Math.toDegrees(value), Math.abs(Math.toDegrees(value)) < TEN ? 1 : 0);
            case RATE -> signed(Math.toDegrees(value), 0);
            case HEIGHT, VERTICAL_SPEED -> signed(far(value), 1);
            case RATIO -> signed(value, 1);
            case DISTANCE -> signed(far(value), 0);
            default -> throw new IllegalArgumentException("no difference of " + kind);
        };
    }

    private static String signed(double value, int decimals) {
        String size = decimals(Math.abs(value), decimals);
        return isZero(size) ? size : (value > 0 ? "+" : "-") + size;
    }

    private String band(Headline.Known number, double factor, int decimals) {
        return words.say(
                "row.band", decimals(number.low() * factor, decimals), decimals(number.high() * factor, decimals));
    }

    private static String speed(double speed, Unit unit, int decimals) {
        return decimals(unit.fromSi(speed), decimals) + " " + unit.symbol();
    }

    private String degrees(double angle, int decimals) {
        return decimals(Math.toDegrees(angle), decimals) + page.degreeSign();
    }

    /** 3.1 mm up, or 2.9 degrees up. */
    private String moved(double angle, String size, String unit) {
        return isZero(size) ? words.say("row.neutral") : words.say(angle > 0 ? "row.down" : "row.up", size + unit);
    }

    private String edge(double angle, EdgeThrow edge) {
        Unit unit = page.units().length();
        double distance = length(edge.distance(Math.abs(angle)));
        String size = unit == Unit.MILLIMETRE ? digits(distance) : decimals(distance, 2);
        return moved(angle, size, " " + unit.symbol());
    }

    private String gauge(Value.Gauge gauge, EdgeThrow edge) {
        Unit unit = page.units().length();
        String size = decimals(length(edge.distance(Math.abs(gauge.angle()))), unit == Unit.MILLIMETRE ? 1 : 2);
        return switch (gauge.form()) {
            case SIZE -> size;
            case SENSE -> isZero(size) ? size : moved(gauge.angle(), size, "");
            case WHOLE -> moved(gauge.angle(), size, " " + unit.symbol());
        };
    }

    /** 7 up to 1 down, in whole millimetres. */
    private String edgeBand(Headline.Known angle, EdgeThrow edge) {
        int decimals = page.units().length() == Unit.MILLIMETRE ? 0 : 2;
        String low = decimals(length(edge.distance(Math.abs(angle.low()))), decimals);
        String high = decimals(length(edge.distance(Math.abs(angle.high()))), decimals);
        if (angle.low() < 0 && angle.high() > 0 && !isZero(low) && !isZero(high)) {
            return words.say("row.band", words.say("row.up", low), words.say("row.down", high));
        }
        return angle.high() <= 0 || isZero(high)
                ? words.say("row.up", words.say("row.band", high, low))
                : words.say("row.down", words.say("row.band", low, high));
    }

    /** In whole 5 mm or fifths of an inch. */
    private String place(double length) {
        boolean inches = isInFeet();
        double step = inches ? Unit.INCH.toSi(0.2) : Unit.MILLIMETRE.toSi(5);
        return QuantityPrinter.print(step * Math.rint(length / step), inches ? Unit.INCH : Unit.MILLIMETRE);
    }

    private boolean isInFeet() {
        return page.units().length() == Unit.INCH || page.units().length() == Unit.FOOT;
    }

    /** A distance of the field: in feet where lengths of the model are in inches or feet. */
    private double far(double metres) {
        return isInFeet() ? Unit.FOOT.fromSi(metres) : metres;
    }

    private String far() {
        return isInFeet() ? " ft" : " m";
    }

    private double length(double metres) {
        return page.units().length().fromSi(metres);
    }

    private static boolean isZero(String number) {
        return Double.parseDouble(number) == 0;
    }

    /** One decimal below ten, none above. */
    private static String digits(double value) {
        return decimals(value, Math.abs(value) < TEN - 0.05 ? 1 : 0);
    }

    private static String decimals(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.startsWith("-") && isZero(text) ? text.substring(1) : text;
    }
}
