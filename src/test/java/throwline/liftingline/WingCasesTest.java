package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Lifting-line theory with the chord correction off against the table of check values; the table's head says where they
 * come from and how wide the bands are.
 */
class WingCasesTest {

    @ParameterizedTest(name = "{0}: {1} {2} {3} twist {4} surfaces {5} {6} height {7}, {8}: {9} = {10} +-{11}")
    @CsvFileSource(resources = "wing-cases.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void meetsTheCheckValue(
            String id,
            String wing,
            double aspect,
            Double taper,
            String twist,
            String surfaces,
            String law,
            Double height,
            String condition,
            String quantity,
            double value,
            String band) {
        WingCase row = WingCase.read(
                wing,
                aspect,
                taper == null ? 0 : taper,
                twist,
                surfaces == null ? "" : surfaces,
                law,
                height == null ? Double.POSITIVE_INFINITY : height,
                condition);
        double width = band.endsWith("%")
                ? Math.abs(value) * Double.parseDouble(band.replace("%", "")) / 100
                : Double.parseDouble(band);
        double got = new WingCaseReading(row).read(quantity);
        assertThat(got).isCloseTo(value, offset(width));
    }
}
