package throwline.report;

import java.nio.charset.StandardCharsets;
import throwline.units.Display;
import throwline.units.Unit;

/**
 * Place that a text goes to, what it can show, and the units its reader wants.
 *
 * @param width columns
 * @param unicode true where more than ASCII can be shown
 * @param styled true where text may be set bold or dim
 * @param units units for lengths, weights and the rest
 * @param besideSpeed what stands beside m/s on charts: the unit asked for, or the one that goes with the lengths
 */
public record Page(int width, boolean unicode, boolean styled, Display units, Unit besideSpeed) {

    private static final String BOLD = "\u001b[1m";
    private static final String DANGER = "\u001b[1;31m";
    private static final String DIM = "\u001b[2m";
    private static final String NORMAL = "\u001b[0m";

    /** A page for a reader of these units; speeds stand beside in the unit that goes with them. */
    public static Page of(int width, boolean unicode, boolean styled, Display units) {
        Unit wanted = units.speed();
        Unit usual = units.length() == Unit.INCH ? Unit.MILE_PER_HOUR : Unit.KILOMETRE_PER_HOUR;
        return new Page(width, unicode, styled, units, wanted == Unit.METRE_PER_SECOND ? usual : wanted);
    }

    /** What stands below a speed in the unit that its reader asked for: metres a second, or where that is it, another. */
    public Unit unitBelowSpeed() {
        return units.speed() == Unit.METRE_PER_SECOND ? besideSpeed : Unit.METRE_PER_SECOND;
    }

    /** The same on paper: it has all letters, and lengths are those of a gauge, in millimetres or inches. */
    public Page onPaper() {
        boolean inches = units.length() == Unit.INCH || units.length() == Unit.FOOT;
        Display gauge = new Display(
                inches ? Unit.INCH : Unit.MILLIMETRE, units.mass(), units.speed(), units.temperature(), units.torque());
        return new Page(width, true, false, gauge, besideSpeed);
    }

    /** What follows a number of degrees. */
    public String degreeSign() {
        return unicode ? "\u00b0" : " deg";
    }

    /** What rules are drawn with. */
    public String rule() {
        return unicode ? "\u2500" : "-";
    }

    /** The text in letters that the place can show. */
    public String shown(String text) {
        return unicode ? text : new String(text.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII);
    }

    /** Text that stands out. */
    public String bold(String text) {
        return styled && !text.isBlank() ? BOLD + text + NORMAL : text;
    }

    /** Text that warns. */
    public String danger(String text) {
        return styled && !text.isBlank() ? DANGER + text + NORMAL : text;
    }

    /** The same with at least so many columns. */
    public Page atLeast(int columns) {
        return new Page(Math.max(columns, width), unicode, styled, units, besideSpeed);
    }

    /** Text that stands back. */
    public String dim(String text) {
        return styled && !text.isBlank() ? DIM + text + NORMAL : text;
    }
}
