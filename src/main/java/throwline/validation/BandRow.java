package throwline.validation;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Line of the file of bands.
 *
 * @param quantity what the band is for
 * @param basis what the number rests on
 * @param relative half-width over the value
 * @param absolute half-width in SI units and radians; the wider of the two holds
 * @param shared share of the half-width that two set-ups of one model have in common
 * @param atLeast quantity whose band this one must not be narrower than; empty for none
 * @param values how many measured values stand behind it; 0 where none do
 * @param groups of how many airfoils or aircraft
 * @param mark READ, COMPUTED, MEMORY or PRACTICE
 * @param source where it comes from
 */
public record BandRow(
        String quantity,
        String basis,
        double relative,
        double absolute,
        double shared,
        String atLeast,
        int values,
        int groups,
        String mark,
        String source) {

    /** Names of the columns. */
    static final String COLUMNS = "quantity,basis,relative,absolute,shared,at least,values,groups,mark,source";

    private static final int CELLS = 10;

    /** Reads a line. */
    static BandRow of(String line) {
        String[] c = line.split(",", CELLS);
        return new BandRow(
                c[0],
                c[1],
                Double.parseDouble(c[2]),
                Double.parseDouble(c[3]),
                Double.parseDouble(c[4]),
                c[5],
                Integer.parseInt(c[6]),
                Integer.parseInt(c[7]),
                c[8],
                c[9]);
    }

    /** Reads all lines but comments and the line of names. */
    static List<BandRow> all(Stream<String> lines) {
        return lines.filter(line -> !line.startsWith("#") && !line.isBlank() && !line.startsWith("quantity,"))
                .map(BandRow::of)
                .toList();
    }

    /** The line in the file. */
    public String line() {
        return String.join(
                ",",
                quantity,
                basis,
                number(relative),
                number(absolute),
                number(shared),
                atLeast,
                String.valueOf(values),
                String.valueOf(groups),
                mark,
                source);
    }

    private static String number(double value) {
        return value == 0
                ? "0"
                : String.format(Locale.ROOT, "%.4g", value)
                        .replaceAll("0+$", "")
                        .replaceAll("\\.$", "");
    }

    /** The same with another half-width and what stands behind it. */
    BandRow with(double newRelative, double newAbsolute, int newValues, int newGroups, String newMark, String why) {
        return new BandRow(
                quantity, basis, newRelative, newAbsolute, shared, atLeast, newValues, newGroups, newMark, why);
    }

    /** The half-width as errors of a figure are counted: share or degrees. */
    double half(Figure figure) {
        return figure.isShare() ? relative : Math.toDegrees(absolute);
    }
}
