package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The air behind an elliptically loaded wing: closed forms of lifting-line theory and quadrature by Commons Math. */
class WakeSheetTest {

    private static final double ASPECT = 6;
    private static final double THIN = 1e-9;
    private static final TheoryWing WING =
            new TheoryWing(TheoryPlanform.ellipse(ASPECT), new double[0], 160, y -> LawCurve.linear(0));

    private static WakeSheet sheet() {
        return new WakeSheet(WING.solve(0.1, Motion.straight()));
    }

    private static double liftCoefficient() {
        return WING.at(0.1).liftCoefficient();
    }

    @ParameterizedTest
    @CsvSource({"82", "100", "120", "140"})
    void downwashAtTheLineIsThatOfTheory(int strip) {
        double y = WING.grid.control(strip);
        assertThat(sheet().downwash(0, y, 0, 0, THIN))
                .isCloseTo(liftCoefficient() / (Math.PI * ASPECT), withPercentage(0.2));
    }

    @ParameterizedTest
    @CsvSource({"82", "100", "120", "140"})
    void downwashFarBehindIsTwice(int strip) {
        double y = WING.grid.control(strip);
        assertThat(sheet().downwash(1e4, y, 0, 0, THIN))
                .isCloseTo(2 * liftCoefficient() / (Math.PI * ASPECT), withPercentage(0.2));
    }

    /** Half-way through the integral of Biot and Savart for an elliptic circulation, by quadrature; points off the sheet. */
    @ParameterizedTest
    @CsvSource({"0.6, 0.0, 0.2", "0.6, 0.3, 0.2", "1.5, 0.1, -0.15", "0.9, 0.7, 0.3", "-0.3, 0.2, 0.25"})
    void anyPointAgreesWithQuadrature(double x, double y, double z) {
        double middle = 2 * liftCoefficient() / (Math.PI * ASPECT) * 2;
        UnivariateFunction down = s -> {
            double slope = -middle * Math.sin(s);
            double aside = y - Math.sin(s);
            double square = aside * aside + z * z;
            double trailing = -slope * aside / square * (1 + x / Math.sqrt(x * x + square));
            double bound = middle * Math.cos(s) * Math.cos(s) * x / Math.pow(x * x + z * z + aside * aside, 1.5);
            return (bound - trailing) / (4 * Math.PI);
        };
        UnivariateFunction right = s -> {
            double slope = -middle * Math.sin(s);
            double aside = y - Math.sin(s);
            double square = aside * aside + z * z;
            return slope * z / square * (1 + x / Math.sqrt(x * x + square)) / (4 * Math.PI);
        };
        UnivariateFunction back = s -> {
            double aside = y - Math.sin(s);
            return middle
                    * Math.cos(s)
                    * Math.cos(s)
                    * z
                    / Math.pow(x * x + z * z + aside * aside, 1.5)
                    / (4 * Math.PI);
        };
        WakeSheet.Added added = sheet().at(x, y, z, z, THIN);
        assertThat(added.down()).isCloseTo(integral(down), offset(5e-5));
        assertThat(added.right()).isCloseTo(integral(right), offset(5e-5));
        assertThat(added.back()).isCloseTo(integral(back), offset(5e-5));
    }

    private static double integral(UnivariateFunction f) {
        return new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-12).integrate(100_000, f, -Math.PI / 2, Math.PI / 2);
    }

    /** Far behind, the elliptic sheet moves down as a whole at 2 CL / (pi AR). */
    @Test
    void sheetSinksWithItsOwnDownwash() {
        double angle = 2 * liftCoefficient() / (Math.PI * ASPECT);
        double y = WING.grid.control(100);
        double sunk = sheet().sink(40, y, THIN) - sheet().sink(30, y, THIN);
        assertThat(sunk / 10).isCloseTo(angle, withPercentage(1));
        assertThat(sheet().sink(0.05, y, THIN)).isZero();
    }
}
