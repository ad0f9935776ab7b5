package throwline.cli;

import java.util.List;
import throwline.study.WingQuestion;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;

/** Reads the values of options; what is wrong is said with the option's name in front. */
final class Quantities {

    /** More angles than this in one range are a slip of the keyboard. */
    private static final int MOST_ANGLES = 1000;

    private final Context context;

    Quantities(Context context) {
        this.context = context;
    }

    /** A quantity with its unit, in SI. */
    double quantity(String option, String text, Dimension dimension) {
        return value(option, QuantityReader.read(text, dimension));
    }

    /** A quantity with its unit, in SI, that must lie in a range. */
    double between(String option, String text, Dimension dimension, double low, double high, String allowed) {
        return inside(option, text, quantity(option, text, dimension), low, high, allowed);
    }

    /** An angle, rad; a bare number is in degrees. */
    double angle(String option, String text) {
        return value(option, QuantityReader.readDegrees(text));
    }

    /** An angle, rad, that must lie in a range; a bare number is in degrees. */
    double angleBetween(String option, String text, double low, double high, String allowed) {
        return inside(option, text, angle(option, text), low, high, allowed);
    }

    /** An angle, rad; a bare number is in radians. */
    double radians(String option, String text) {
        return QuantityReader.read(text, Dimension.NUMBER) instanceof ReadQuantity.Amount bare
                ? bare.quantity().value()
                : quantity(option, text, Dimension.ANGLE);
    }

    /** A bare number that must lie in a range; an exponent is allowed. */
    double number(String option, String text, double low, double high, String allowed) {
        try {
            return inside(option, text, Double.parseDouble(text), low, high, allowed);
        } catch (NumberFormatException e) {
            throw wrong("cli.quantity.range", option, text, allowed);
        }
    }

    /** A whole number that must lie in a range. */
    int count(String option, String text, int low, int high, String allowed) {
        double number = number(option, text, low, high, allowed);
        if (number != Math.rint(number)) {
            throw wrong("cli.quantity.range", option, text, allowed);
        }
        return (int) number;
    }

    /** Angles FROM:TO:STEP, rad, TO included; one angle alone stands for itself. */
    List<Double> angles(String option, String text) {
        String[] parts = text.split(":", -1);
        if (parts.length == 1) {
            return List.of(angle(option, text));
        }
        if (parts.length != 3) {
            throw wrong("cli.quantity.angles", option, text);
        }
        double from = angle(option, parts[0]);
        double to = angle(option, parts[1]);
        double step = angle(option, parts[2]);
        if (step == 0 || (to - from) * step < 0) {
            throw wrong("cli.quantity.step", option, text);
        }
        if (Math.abs((to - from) / step) > MOST_ANGLES) {
            throw wrong("cli.quantity.many", option, text, MOST_ANGLES);
        }
        return WingQuestion.angles(from, to, step);
    }

    private double value(String option, ReadQuantity reading) {
        if (reading instanceof ReadQuantity.Amount amount) {
            return amount.quantity().value();
        }
        ReadQuantity.Refused refused = (ReadQuantity.Refused) reading;
        throw wrong(
                "cli.quantity",
                option,
                context.words().say(refused.code(), refused.arguments().toArray()));
    }

    private double inside(String option, String text, double value, double low, double high, String allowed) {
        if (!(value >= low && value <= high)) {
            throw wrong("cli.quantity.range", option, text, allowed);
        }
        return value;
    }

    private WrongInput wrong(String key, Object... arguments) {
        return new WrongInput(context.words().say(key, arguments));
    }
}
