package throwline.report.document;

import java.util.List;
import java.util.Locale;
import throwline.report.EdgeThrow;
import throwline.report.Page;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Words;

/**
 * Texts and values as they are read: words with their gaps filled, numbers in the units of the reader and with as many digits
 * as they are worth. The only place where a value becomes letters; a number and its unit are kept on one line.
 */
public final class Figures {

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

    /** A headline number. */
    public String value(FlightQuantity quantity, double value) {
        return amount(value, Value.Kind.of(quantity));
    }

    /** The band that stands below it. */
    public String band(FlightQuantity quantity, Headline.Known number) {
        return band(number, Value.Kind.of(quantity));
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
        if (value instanceof Value.Edge edge) {
            return unbroken(edge(edge.angle(), new EdgeThrow(edge.chord())));
        }
        if (value instanceof Value.EdgeBand band) {
            return edgeBand(band.angle(), new EdgeThrow(band.chord()));
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
        return page.units().length().symbol();
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
            case SPEED -> speed(value);
            case OTHER_SPEED -> speedBeside(value);
            case SPEED_STEP -> speedStep(value);
            case ANGLE -> degrees(value);
            case ANGLE_TENTHS -> tenths(value);
            case ANGLE_STEP -> decimals(Math.abs(Math.toDegrees(value)), 2) + page.degreeSign();
            case DEFLECTION -> deflection(value);
            case DEFLECTION_TENTHS -> up(value, decimals(Math.abs(Math.toDegrees(value)), 1));
            case RATE -> rate(value);
            case RATE_STEP -> rateStep(value);
            case DISTANCE -> metres(value);
            case RADIUS -> decimals(value, 1) + " m";
            case HEIGHT -> height(value);
            case PLACE -> about(value);
            case LOAD -> load(value);
            case TIME -> seconds(value);
            case SHARE -> share(value);
            case LEVER -> lever(value);
            case RATIO -> decimals(value, 1);
            case SHARE_TENTHS -> decimals(100 * value, 1) + " %";
            case SIGNED_SHARE -> String.format(Locale.ROOT, "%+.1f %%", 100 * value);
            case SIGNED_ANGLE -> String.format(Locale.ROOT, "%+.2f", Math.toDegrees(value)) + page.degreeSign();
        };
    }

    private String band(Headline.Known number, Value.Kind kind) {
        return switch (kind) {
            case SPEED -> speedBand(number);
            case ANGLE, ANGLE_TENTHS -> degreesBand(number);
            case RATE -> rateBand(number);
            case HEIGHT -> heightBand(number);
            case DISTANCE -> metresBand(number);
            case RATIO -> band(number, 1, 1);
            default -> throw new IllegalArgumentException("no band of " + kind);
        };
    }

    /** 9.8 m/s, or in the unit that its reader asked for. */
    public String speed(double speed) {
        Unit unit = page.units().speed();
        return decimals(unit.fromSi(speed), unit.decimals()) + " " + unit.symbol();
    }

    /** The same in the unit that stands beside. */
    public String speedBeside(double speed) {
        Unit unit = page.unitBelowSpeed();
        return decimals(unit.fromSi(speed), unit == Unit.METRE_PER_SECOND ? 1 : 0) + " " + unit.symbol();
    }

    /** 0.12 m/s: a small difference, without its sign. */
    public String speedStep(double speed) {
        Unit unit = page.units().speed();
        return decimals(unit.fromSi(Math.abs(speed)), unit.decimals() + 1) + " " + unit.symbol();
    }

    /** 9.2 to 10.4, as it stands below a speed. */
    public String speedBand(Headline.Known speed) {
        Unit unit = page.units().speed();
        return band(speed, unit.fromSi(1), unit.decimals());
    }

    /** 4.9 to 6.1, as it stands below an angle. */
    public String degreesBand(Headline.Known angle) {
        return band(angle, Math.toDegrees(1), Math.toDegrees(angle.value()) < TEN ? 1 : 0);
    }

    /** 71 to 119, as it stands below a rate. */
    public String rateBand(Headline.Known rate) {
        return band(rate, Math.toDegrees(1), 0);
    }

    private String band(Headline.Known number, double factor, int decimals) {
        return words.say(
                "row.band", decimals(number.low() * factor, decimals), decimals(number.high() * factor, decimals));
    }

    /** 5.5 degrees. */
    public String degrees(double angle) {
        return digits(Math.toDegrees(angle)) + page.degreeSign();
    }

    /** 12.3 degrees: where a tenth tells one answer from the next. */
    public String tenths(double angle) {
        return decimals(Math.toDegrees(angle), 1) + page.degreeSign();
    }

    /** 95 degrees a second. */
    public String rate(double rate) {
        return decimals(Math.toDegrees(rate), 0) + page.degreeSign() + "/s";
    }

    /** 3.1 mm up. */
    public String edge(double angle, EdgeThrow edge) {
        double distance = length(edge.distance(Math.abs(angle)));
        String size = edgeNumber(distance);
        if (isZero(size)) {
            return words.say("row.neutral");
        }
        return words.say(direction(angle), size + " " + page.units().length().symbol());
    }

    /** 2.9 degrees up. */
    public String deflection(double angle) {
        return up(angle, digits(Math.abs(Math.toDegrees(angle))));
    }

    private String up(double angle, String size) {
        return isZero(size) ? words.say("row.neutral") : words.say(direction(angle), size + page.degreeSign());
    }

    /** 7 up to 1 down, in whole millimetres. */
    public String edgeBand(Headline.Known angle, EdgeThrow edge) {
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

    /** A place on the chord that is known to some 5 mm, so in whole 5 mm or fifths of an inch. */
    public String about(double length) {
        boolean inches = page.units().length() == Unit.INCH || page.units().length() == Unit.FOOT;
        double step = inches ? Unit.INCH.toSi(0.2) : Unit.MILLIMETRE.toSi(5);
        return QuantityPrinter.print(step * Math.rint(length / step), inches ? Unit.INCH : Unit.MILLIMETRE);
    }

    /** A length of the field. */
    public String metres(double length) {
        return decimals(length, 0) + " m";
    }

    /** A radius that is compared with another. */
    public String radius(double radius) {
        return decimals(radius, 1) + " m";
    }

    /** A height near the ground. */
    public String height(double height) {
        return digits(height) + " m";
    }

    /** 0.3 to 0.7, as it stands below a height. */
    public String heightBand(Headline.Known height) {
        return band(height, 1, height.value() < TEN ? 1 : 0);
    }

    /** 51 to 70, as it stands below a distance. */
    public String metresBand(Headline.Known distance) {
        return band(distance, 1, 0);
    }

    /** A load, lift over weight. */
    public String load(double load) {
        return decimals(load, 1) + " g";
    }

    /** A time in seconds. */
    public String seconds(double time) {
        return digits(time) + " s";
    }

    /** 1.2 degrees a second: a small difference. */
    public String rateStep(double rate) {
        return decimals(Math.toDegrees(rate), 1) + page.degreeSign() + "/s";
    }

    /** A share of the whole, with a decimal where there is one. */
    public String lever(double share) {
        double percent = 100 * share;
        return decimals(percent, Math.abs(percent - Math.rint(percent)) > 0.05 ? 1 : 0) + " %";
    }

    /** A share of the whole. */
    public String share(double share) {
        return decimals(share * 100, 0) + " %";
    }

    private double length(double metres) {
        return page.units().length().fromSi(metres);
    }

    private String edgeNumber(double distance) {
        return page.units().length() == Unit.MILLIMETRE ? digits(distance) : decimals(distance, 2);
    }

    private static boolean isZero(String number) {
        return Double.parseDouble(number) == 0;
    }

    private static String direction(double angle) {
        return angle > 0 ? "row.down" : "row.up";
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
