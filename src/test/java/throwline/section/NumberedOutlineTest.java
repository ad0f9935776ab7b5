package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.section.AirfoilShape.Corner;

/** Outlines by number against the ordinates printed for them. */
class NumberedOutlineTest {

    /**
     * Ordinates in per cent of the chord (Abbott, von Doenhoff and Stivers, NACA Report 824, tables of airfoils; from memory).
     * Within 0.15, at the bent nose of the five digits 0.25: the printed ones stand square to the mean line and have an open edge.
     */
    @ParameterizedTest
    @CsvSource({
        "2412, 5, 4.13, -3.01",
        "2412, 10, 5.63, -3.75",
        "2412, 30, 7.88, -4.12",
        "2412, 50, 7.24, -3.34",
        "2412, 70, 5.18, -2.14",
        "23012, 5, 4.91, -2.26",
        "23012, 15, 7.19, -3.50",
        "23012, 30, 7.55, -4.46",
        "23012, 50, 6.41, -4.17",
        "23012, 70, 4.36, -3.00",
        "0012, 30, 6.00, -6.00"
    })
    void ordinates(String digits, double x, double top, double bottom) {
        AirfoilShape shape = NumberedOutline.of(digits).orElseThrow();
        double tolerance = x == 5 ? 0.25 : 0.15;
        assertThat(100 * at(shape.upper(), x / 100)).isCloseTo(top, within(tolerance));
        assertThat(100 * at(shape.lower(), x / 100)).isCloseTo(bottom, within(tolerance));
    }

    /** The mean lines of five digits are made for a lift coefficient of 0.3 where the nose meets the air (NACA Report 537). */
    @ParameterizedTest
    @ValueSource(strings = {"21012", "22012", "23012", "24012", "25012"})
    void fiveDigitsAreMadeForTheirLift(String digits) {
        AirfoilShape shape = NumberedOutline.of(digits).orElseThrow();
        double first = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double from = Math.PI * i / steps;
            double to = Math.PI * (i + 1) / steps;
            double rise = line(shape, to) - line(shape, from);
            double run = 0.5 * (Math.cos(from) - Math.cos(to));
            first += 2 / Math.PI * rise / run * Math.cos(0.5 * (from + to)) * (to - from);
        }
        assertThat(Math.PI * first).isCloseTo(0.3, within(0.012));
    }

    /** Other families, numbers without a meaning, and outlines that nobody builds. */
    @ParameterizedTest
    @ValueSource(
            strings = {"", "12", "2012", "0412", "2404", "2430", "8412", "26012", "23112", "33012", "632215", "24a2"})
    void othersAreNone(String digits) {
        assertThat(NumberedOutline.of(digits)).isEmpty();
    }

    @Test
    void symmetricalIsItsOwnMirror() {
        AirfoilShape shape = NumberedOutline.of("0015").orElseThrow();
        assertThat(shape.camber()).isZero();
        assertThat(shape.thickness()).isCloseTo(0.15, within(2e-4));
    }

    private static double line(AirfoilShape shape, double theta) {
        double x = 0.5 * (1 - Math.cos(theta));
        return 0.5 * (at(shape.upper(), x) + at(shape.lower(), x));
    }

    private static double at(List<Corner> side, double x) {
        int i = 1;
        while (i < side.size() - 1 && side.get(i).x() < x) {
            i++;
        }
        Corner a = side.get(i - 1);
        Corner b = side.get(i);
        return a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
    }
}
