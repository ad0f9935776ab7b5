package throwline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.words.Words;

/** Expected values from the exact definitions of inch, pound, mile, knot and the standard weight of a kilogram. */
class QuantityReaderTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1840 mm | LENGTH | 1.84",
                "1840mm | LENGTH | 1.84",
                "23.5 cm | LENGTH | 0.235",
                "1.84 m | LENGTH | 1.84",
                "67 in | LENGTH | 1.7018",
                "67in | LENGTH | 1.7018",
                "67\" | LENGTH | 1.7018",
                "67\u201d | LENGTH | 1.7018",
                "67 in. | LENGTH | 1.7018",
                "5 ft 7 in | LENGTH | 1.7018",
                "5ft7in | LENGTH | 1.7018",
                "5' 7\" | LENGTH | 1.7018",
                "5'7.5\" | LENGTH | 1.7145",
                ".5 in | LENGTH | 0.0127",
                "-12 mm | LENGTH | -0.012",
                "\u221212 mm | LENGTH | -0.012",
                "12\u00a0mm | LENGTH | 0.012",
                "3.4 kg | MASS | 3.4",
                "3.4 Kg | MASS | 3.4",
                "850 g | MASS | 0.85",
                "2 lb 10 oz | MASS | 1.190679971",
                "2lb10oz | MASS | 1.190679971",
                "12 OZ | MASS | 0.340194278",
                "20 deg | ANGLE | 0.34906585",
                "20\u00b0 | ANGLE | 0.34906585",
                "-6 degrees | ANGLE | -0.10471976",
                "24 C | TEMPERATURE | 297.15",
                "24 \u00b0C | TEMPERATURE | 297.15",
                "-4 C | TEMPERATURE | 269.15",
                "75 F | TEMPERATURE | 297.0388889",
                "75 \u00b0F | TEMPERATURE | 297.0388889",
                "-40 F | TEMPERATURE | 233.15",
                "25 % | FRACTION | 0.25",
                "25% | FRACTION | 0.25",
                "0.6 N m | TORQUE | 0.6",
                "0.6 Nm | TORQUE | 0.6",
                "5 kg cm | TORQUE | 0.4903325",
                "5 kg*cm | TORQUE | 0.4903325",
                "70 oz in | TORQUE | 0.494309",
                "120 deg/s | ANGULAR_RATE | 2.0943951",
                "12m/s | SPEED | 12",
                "36 km/h | SPEED | 10",
                "20 mph | SPEED | 8.9408",
                "10 kt | SPEED | 5.1444444",
                "2 | NUMBER | 2",
                "-6 | NUMBER | -6",
            })
    void readsWhatPeopleWrite(String text, Dimension dimension, double si) {
        assertThat(QuantityReader.read(text, dimension)).isInstanceOfSatisfying(ReadQuantity.Amount.class, amount -> {
            assertThat(amount.quantity().dimension()).isEqualTo(dimension);
            assertThat(amount.quantity().value()).isCloseTo(si, within(1e-6 * Math.max(1, Math.abs(si))));
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1,8 m | LENGTH | \"1,8 m\" has a comma. Use a point, and nothing between thousands: 1.8 m.",
                "1,840 mm | LENGTH | \"1,840 mm\" has a comma. Use a point, and nothing between thousands: 1840 mm.",
                "3/8 in | LENGTH | \"3/8 in\" is a fraction. Write it with a point: 0.375 in.",
                "1 3/4 in | LENGTH | \"1 3/4 in\" is a fraction. Write it with a point: 1.75 in.",
                "18 grad | ANGLE | \"18 grad\" may mean degrees or hundredths of a right angle. Write 18 deg.",
                "1840 | LENGTH | \"1840\" has no unit. Write for example 1840 mm; allowed are: mm, cm, m, in, ft.",
                "3 kg | LENGTH | \"3 kg\" is a weight, which does not fit here. Allowed are: mm, cm, m, in, ft.",
                "3 furlongs | LENGTH | \"furlongs\" is not a unit that fits here. Allowed are: mm, cm, m, in, ft. For example 300 mm.",
                "NaN | LENGTH | \"NaN\" is not a number with a unit. For example 300 mm.",
                "wide | LENGTH | \"wide\" is not a number with a unit. For example 300 mm.",
                "1.2.3 mm | LENGTH | \"1.2.3 mm\" is not a number with a unit. For example 300 mm.",
                "-  | LENGTH | \"-\" is not a number with a unit. For example 300 mm.",
                "10 oz 2 lb | MASS | \"10 oz 2 lb\" does not add up. Write larger units first and only the last with a point, for example 2 lb 10.5 oz.",
                "2.5 lb 10 oz | MASS | \"2.5 lb 10 oz\" does not add up. Write larger units first and only the last with a point, for example 2 lb 10.5 oz.",
                "2 lb 20 oz | MASS | \"2 lb 20 oz\" does not add up. Write larger units first and only the last with a point, for example 2 lb 10.5 oz.",
                "2 kg | NUMBER | \"2 kg\" must be a plain number without a unit.",
            })
    void refusesInWordsWhatCouldMeanTwoThings(String text, Dimension dimension, String sentence) {
        Words words = Words.load();
        assertThat(QuantityReader.read(text, dimension))
                .isInstanceOfSatisfying(
                        ReadQuantity.Refused.class,
                        refused -> assertThat(words.say(
                                        refused.code(), refused.arguments().toArray()))
                                .isEqualTo(sentence));
    }

    @ParameterizedTest
    @CsvSource({"-6, -6", "20 deg, 20", "0.1 rad, 5.7296"})
    void anglesOfTheCommandLineMayLackTheirUnit(String text, double degrees) {
        assertThat(QuantityReader.readDegrees(text))
                .isInstanceOfSatisfying(
                        ReadQuantity.Amount.class,
                        amount -> assertThat(Math.toDegrees(amount.quantity().value()))
                                .isCloseTo(degrees, within(1e-3)));
    }
}
