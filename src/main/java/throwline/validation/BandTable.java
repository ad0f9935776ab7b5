package throwline.validation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/**
 * The bands that follow from the statistics: where enough independent values were measured, what nine of ten errors stay
 * below, rounded up to two figures; elsewhere the value of common practice with its mark.
 */
final class BandTable {

    /** The file that every command reads its bands from. */
    private static final String RESOURCE = "/throwline/bands.csv";

    /** Fewer values than this, or of fewer airfoils or aircraft, make no band. */
    private static final int FEWEST_VALUES = 10;

    private static final int FEWEST_GROUPS = 3;

    private static final List<String> HEAD = List.of(
            "# Written by throwline validate --out DIR; copy it from there, do not edit it. What stands for too few measured values",
            "# comes from validation/practice-bands.csv and keeps its mark. Meant as nine times out of ten. relative: half-width over",
            "# the value; absolute: half-width in SI units and radians; the wider of the two holds. shared: share of the half-width",
            "# that two set-ups of one model have in common. at least: the quantity whose band it must not be narrower than.",
            "# values, groups: measured values behind it, of so many airfoils or aircraft.");

    private BandTable() {}

    /** The bands that the product states. */
    static List<BandRow> stated() {
        try (InputStream in = BandTable.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the file of bands is missing from the jar");
            }
            return BandRow.all(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The bands that it should state. */
    static List<BandRow> from(List<BandRow> practice, List<Statistics> statistics) {
        List<BandRow> rows = practice.stream().map(row -> from(row, statistics)).toList();
        return rows.stream().map(row -> widened(row, rows)).toList();
    }

    private static BandRow from(BandRow practice, List<Statistics> statistics) {
        return statistics.stream()
                .filter(s -> s.figure().key().equals(practice.quantity())
                        && s.basis().equals(practice.basis())
                        && s.values() >= FEWEST_VALUES)
                .map(s -> s.groups() >= FEWEST_GROUPS ? measured(practice, s) : atLeast(practice, s))
                .findFirst()
                .orElse(practice);
    }

    private static BandRow measured(BandRow practice, Statistics s) {
        double half = roundedUp(s.nineOfTen());
        return practice.with(
                s.figure().isShare() ? half : 0,
                s.figure().isShare() ? 0 : Math.toRadians(half),
                s.values(),
                s.groups(),
                "COMPUTED",
                "statistics of the validation book");
    }

    /** Many values of one aeroplane are no statistics, but a band that does not hold them is too narrow. */
    private static BandRow atLeast(BandRow practice, Statistics s) {
        double half = roundedUp(s.nineOfTen());
        if (half <= practice.half(s.figure())) {
            return practice;
        }
        return practice.with(
                s.figure().isShare() ? half : practice.relative(),
                s.figure().isShare() ? practice.absolute() : Math.toRadians(half),
                s.values(),
                s.groups(),
                practice.mark(),
                practice.source());
    }

    private static BandRow widened(BandRow row, List<BandRow> all) {
        return all.stream()
                .filter(other -> other.quantity().equals(row.atLeast())
                        && other.basis().equals(row.basis())
                        && other.relative() > row.relative())
                .findFirst()
                .map(other -> row.with(
                        other.relative(), row.absolute(), row.values(), row.groups(), row.mark(), row.source()))
                .orElse(row);
    }

    /** Up to two figures. */
    private static double roundedUp(double value) {
        double unit = Math.pow(10, Math.floor(Math.log10(value)) - 1);
        return Math.ceil(value / unit - 1e-9) * unit;
    }

    /** The file. */
    static String text(List<BandRow> rows) {
        return String.join(
                        "\n",
                        Stream.of(
                                        HEAD,
                                        List.of(BandRow.COLUMNS),
                                        rows.stream().map(BandRow::line).toList())
                                .flatMap(List::stream)
                                .toList())
                + "\n";
    }
}
