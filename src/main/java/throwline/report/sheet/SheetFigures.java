package throwline.report.sheet;

import java.util.Locale;
import throwline.model.SetUp;
import throwline.report.Page;
import throwline.study.EdgeThrow;
import throwline.study.Headline;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Words;

/** Numbers as they stand on sheets: angles to a tenth of a degree, throws to a tenth of a millimetre. */
final class SheetFigures {

    /** Where nothing is to be said. */
    static final String NONE = "-";

    private static final double PER_CENT = 100;
    private static final String DEGREE = "\u00b0";

    private final Page page;
    private final Words words;

    SheetFigures(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /** The unit of throws. */
    String lengthUnit() {
        return unit().symbol();
    }

    /** True where an angle, rad, is told from neutral on paper. */
    boolean isSeen(double angle) {
        return Double.parseDouble(number(Math.abs(Math.toDegrees(angle)), 1)) != 0;
    }

    /** 12.0 degrees up, from rad. */
    String angle(double angle) {
        String size = number(Math.abs(Math.toDegrees(angle)), 1);
        return Double.parseDouble(size) == 0
                ? size + DEGREE
                : words.say(angle > 0 ? "row.down" : "row.up", size + DEGREE);
    }

    /** down, 12.0 degrees; neutral where nothing is seen to move. From rad. */
    String senseAndDegrees(double angle) {
        String size = number(Math.abs(Math.toDegrees(angle)), 1);
        return Double.parseDouble(size) == 0
                ? words.say("sheet.neutral")
                : words.say(angle > 0 ? "sheet.sense.down" : "sheet.sense.up", size + DEGREE);
    }

    /** 7.3 down, at a trailing edge, from rad. */
    String edgeWithoutUnit(EdgeThrow edge, double angle) {
        String size = length(edge.distance(angle));
        return Double.parseDouble(size) == 0 ? size : words.say(angle > 0 ? "row.down" : "row.up", size);
    }

    /** 7.3 mm down, at a trailing edge, from rad. */
    String edge(EdgeThrow edge, double angle) {
        String size = length(edge.distance(angle));
        return Double.parseDouble(size) == 0
                ? words.say("sheet.neutral")
                : words.say(angle > 0 ? "row.down" : "row.up", size + " " + lengthUnit());
    }

    /** What to fill in for the switch that brings in a set-up, or what stands before its name. */
    String switchBlank(SetUp setUp) {
        return words.say(setUp.switchPosition().isEmpty() ? "sheet.bench.switch" : "sheet.bench.switch.is");
    }

    /** How exactly throws are to be set, in the sheet's unit. */
    String tolerance() {
        return QuantityPrinter.print(EdgeThrow.TOLERANCE, unit());
    }

    private Unit unit() {
        return page.units().length() == Unit.INCH ? Unit.INCH : Unit.MILLIMETRE;
    }

    /** A throw without its unit and sense, from m. */
    String length(double length) {
        return number(Math.abs(unit().fromSi(length)), unit() == Unit.INCH ? 2 : 1);
    }

    /** A share in per cent without the sign. */
    String percent(double share) {
        return number(PER_CENT * share, 0);
    }

    /** 11.5 m/s, or in the unit that was asked for. */
    String oneSpeed(double speed) {
        return speedWithoutUnit(speed) + " " + speedUnit();
    }

    /** 11.5, in that unit. */
    String speedWithoutUnit(double speed) {
        Unit unit = page.units().speed();
        return number(unit.fromSi(speed), unit.decimals());
    }

    /** The unit of speeds. */
    String speedUnit() {
        return page.units().speed().symbol();
    }

    /** Why no speed limits the flaps: nothing is moved, the servos suffice, or it is not known. */
    String noFlapLimit(Headline.Unknown unknown) {
        return switch (unknown.why()) {
            case "why.nothing-moved" -> NONE;
            case "why.servo-suffices" -> words.say("sheet.flap-limit.suffices");
            default -> words.say("sheet.flap-limit.unknown");
        };
    }

    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return Double.parseDouble(text) == 0 && text.startsWith("-") ? text.substring(1) : text;
    }
}
