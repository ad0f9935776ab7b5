package throwline.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints quantities so that {@link QuantityReader} reads them again. */
public final class QuantityPrinter {

    /** Tenths of an ounce in a pound. */
    private static final long OUNCE_TENTHS = 160;

    /** Below this a torque in whole ounce inches would be too coarse. */
    private static final double SMALL = 10;

    private final Display display;

    /** A printer in these units. */
    public QuantityPrinter(Display display) {
        this.display = display;
    }

    /** The units it prints in. */
    public Display display() {
        return display;
    }

    /** A quantity in the unit of the display. */
    public String print(Quantity quantity) {
        return print(quantity.value(), quantity.dimension());
    }

    /**
     * A value in the unit of the display.
     *
     * @param value in SI units
     * @param dimension what kind of quantity it is
     */
    public String print(double value, Dimension dimension) {
        return dimension == Dimension.NUMBER ? number(value, 3) : print(value, display.unit(value, dimension));
    }

    /**
     * A value in this unit.
     *
     * @param value in SI units
     * @param unit to print in
     */
    public static String print(double value, Unit unit) {
        if (unit == Unit.POUND) {
            return poundsAndOunces(value);
        }
        double number = unit.fromSi(value);
        boolean small = unit == Unit.OUNCE_INCH && Math.abs(number) < SMALL;
        return number(number, small ? 1 : unit.decimals()) + " " + unit.symbol();
    }

    /** Weights in pounds are said with their ounces. */
    private static String poundsAndOunces(double mass) {
        long tenths = Math.round(10 * Unit.OUNCE.fromSi(Math.abs(mass)));
        long pounds = tenths / OUNCE_TENTHS;
        String ounces = number((tenths % OUNCE_TENTHS) / 10.0, 1) + " oz";
        String text = pounds == 0 ? ounces : tenths % OUNCE_TENTHS == 0 ? pounds + " lb" : pounds + " lb " + ounces;
        return mass < 0 && tenths > 0 ? "-" + text : text;
    }

    /**
     * A deflection with its direction in words: {@code 18 deg up}.
     *
     * @param angle rad, trailing edge down positive
     */
    public static String deflection(double angle) {
        String size = number(Unit.DEGREE.fromSi(Math.abs(angle)), 1);
        return size + " deg" + (size.equals("0") ? "" : angle > 0 ? " down" : " up");
    }

    /**
     * A number without trailing zeros.
     *
     * @param value finite
     * @param decimals digits after the point at most
     */
    public static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
