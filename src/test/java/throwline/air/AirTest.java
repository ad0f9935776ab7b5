package throwline.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {

    /** Methods manual 2.1, check values (COMPUTED from the ICAO standard atmosphere and Sutherland's law, MEMORY). */
    @ParameterizedTest
    @CsvSource({
        "0, 15, 1.2250, 1.461e-5, 0, 1.0000",
        "0, -5, 1.3164, 1.285e-5, -756, 0.9647",
        "0, 30, 1.1644, 1.598e-5, 525, 1.0257",
        "500, 30, 1.0970, 1.696e-5, 1135, 1.0567",
        "1000, 8.5, 1.1116, 1.581e-5, 1000, 1.0497",
        "1000, 25, 1.0501, 1.750e-5, 1576, 1.0801",
        "1500, 30, 0.9717, 1.915e-5, 2349, 1.1228",
        "2000, 2, 1.0065, 1.715e-5, 2000, 1.1032"
    })
    void airAtAField(
            double height, double celsius, double density, double kinematic, double densityHeight, double speedFactor) {
        Air air = Air.at(height, OptionalDouble.of(celsius + 273.15));
        assertThat(air.density()).isCloseTo(density, within(0.5e-4));
        assertThat(air.kinematicViscosity()).isCloseTo(kinematic, within(0.5e-8));
        assertThat(air.densityHeight()).isCloseTo(densityHeight, within(0.6));
        assertThat(Math.sqrt(1.225 / air.density())).isCloseTo(speedFactor, within(0.5e-4));
    }
}
