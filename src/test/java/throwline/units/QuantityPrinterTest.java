package throwline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityPrinterTest {

    @ParameterizedTest
    @CsvSource({
        "1.84, LENGTH, 1840 mm",
        "0.0847, LENGTH, 84.7 mm",
        "70, LENGTH, 70 m",
        "3.05, MASS, 3.05 kg",
        "297.15, TEMPERATURE, 24 C",
        "0.25, FRACTION, 25 %",
        "0.4923, AREA, 49.2 dm^2",
        "6.2, WING_LOADING, 62 g/dm^2",
        "-0.0004, LENGTH, -0.4 mm",
        "0.00001, LENGTH, 0 mm",
        "2, NUMBER, 2"
    })
    void printsInMetricUnits(double si, Dimension dimension, String text) {
        assertThat(new QuantityPrinter(Display.metric()).print(si, dimension)).isEqualTo(text);
    }

    /** Expected texts from the exact definitions of inch and pound. */
    @ParameterizedTest
    @CsvSource({
        "1.7018, LENGTH, 67 in",
        "91.44, LENGTH, 300 ft",
        "1.190679971, MASS, 2 lb 10 oz",
        "0.45359237, MASS, 1 lb",
        "0.1, MASS, 3.5 oz",
        "8.9408, SPEED, 20 mph",
        "297.0389, TEMPERATURE, 75 F",
        "0.494309, TORQUE, 70 oz in",
        "0.00988617, TORQUE, 1.4 oz in",
        "0.312, AREA, 484 sq in"
    })
    void printsInImperialUnits(double si, Dimension dimension, String text) {
        Display display = Display.metric().with(Unit.INCH).with(Unit.POUND).with(Unit.MILE_PER_HOUR);
        assertThat(new QuantityPrinter(display).print(si, dimension)).isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void whatIsPrintedIsReadAgain(Unit unit) {
        double value = unit.toSi(12.3);
        ReadQuantity read = QuantityReader.read(QuantityPrinter.print(value, unit), unit.dimension());
        assertThat(read)
                .isInstanceOfSatisfying(
                        ReadQuantity.Amount.class,
                        amount -> assertThat(amount.quantity().value())
                                .isCloseTo(
                                        value,
                                        within(0.06 * Math.abs(unit.toSi(1) - unit.toSi(0))
                                                + 1e-12
                                                + 0.5 * step(unit))));
    }

    @Test
    void deflectionsSayTheirWay() {
        assertThat(QuantityPrinter.deflection(Math.toRadians(18))).isEqualTo("18 deg down");
        assertThat(QuantityPrinter.deflection(Math.toRadians(-12.26))).isEqualTo("12.3 deg up");
        assertThat(QuantityPrinter.deflection(-1e-9)).isEqualTo("0 deg");
    }

    private static double step(Unit unit) {
        return Math.abs(unit.toSi(1) - unit.toSi(0)) * Math.pow(10, -unit.decimals());
    }

    /** A servo's box says kg cm in Europe whatever the ruler is; without a choice the torque goes with the length. */
    @Test
    void torque_follows_the_length_unless_it_is_chosen() {
        double holds = 0.0980665 * 5;
        Display metric = Display.metric();
        assertThat(new QuantityPrinter(metric.with(List.of(Unit.KILOGRAM_CENTIMETRE, Unit.INCH)))
                        .print(holds, Dimension.TORQUE))
                .isEqualTo("5 kg cm");
        assertThat(new QuantityPrinter(metric.with(List.of(Unit.INCH))).print(holds, Dimension.TORQUE))
                .isEqualTo("69 oz in");
        assertThat(new QuantityPrinter(metric.with(List.of(Unit.NEWTON_CENTIMETRE))).print(holds, Dimension.TORQUE))
                .isEqualTo("49 N cm");
    }
}
