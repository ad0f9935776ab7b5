package throwline.report.data;

/**
 * Number of a sheet: SI units, angles in degrees, six figures, as in {@code compare/1}.
 *
 * @param setUp name of the set-up
 * @param surface name of the surface; empty where it is none's
 * @param stick with this stick at full; empty without one
 * @param side left, right or both; empty where it has none
 * @param quantity as the key of {@code compare/1}
 * @param unit m, deg, m/s, deg/s; empty for shares
 * @param value the number as text; empty where there is none
 */
public record SheetEntry(
        String setUp, String surface, String stick, String side, String quantity, String unit, String value) {

    /** What it is the number of. */
    public String key() {
        return String.join("\t", setUp, surface, stick, side, quantity);
    }

    static SheetEntry of(
            String setUp, String surface, String stick, String side, String quantity, String unit, double value) {
        return new SheetEntry(setUp, surface, stick, side, quantity, unit, JsonWriter.number(value));
    }
}
