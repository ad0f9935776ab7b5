package throwline.air;

import java.util.OptionalDouble;

/**
 * Dry still air at one place. Formulae: ICAO standard atmosphere below 11 km and Sutherland's law (constants from memory;
 * methods manual 2.1).
 *
 * @param pressure Pa
 * @param temperature K
 */
public record Air(double pressure, double temperature) {

    private static final double SEA_TEMPERATURE = 288.15;
    private static final double SEA_PRESSURE = 101325;
    private static final double LAPSE = 0.0065;
    private static final double GAS = 287.053;
    private static final double PRESSURE_POWER = 5.25588;

    /** Density at sea level on the standard day, kg/m^3. */
    public static final double SEA_DENSITY = 1.225;

    /**
     * The air at a field.
     *
     * @param height pressure height above the sea, m, -500 to 11000
     * @param temperature measured temperature, K; empty for the standard day
     * @return the air there
     */
    public static Air at(double height, OptionalDouble temperature) {
        double standard = SEA_TEMPERATURE - LAPSE * height;
        double pressure = SEA_PRESSURE * Math.pow(standard / SEA_TEMPERATURE, PRESSURE_POWER);
        return new Air(pressure, temperature.orElse(standard));
    }

    /** Density, kg/m^3. */
    public double density() {
        return pressure / (GAS * temperature);
    }

    /** Dynamic viscosity, Pa s. */
    public double viscosity() {
        return 1.458e-6 * Math.pow(temperature, 1.5) / (temperature + 110.4);
    }

    /** Kinematic viscosity, m^2/s. */
    public double kinematicViscosity() {
        return viscosity() / density();
    }

    /** Height in the standard atmosphere at which the air is as thin as here, m. */
    public double densityHeight() {
        return SEA_TEMPERATURE / LAPSE * (1 - Math.pow(density() / SEA_DENSITY, 1 / (PRESSURE_POWER - 1)));
    }

    /** Dynamic pressure at a speed, Pa. */
    public double dynamicPressure(double speed) {
        return density() * speed * speed / 2;
    }
}
