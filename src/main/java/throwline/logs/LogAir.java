package throwline.logs;

import java.util.OptionalDouble;
import throwline.air.Air;
import throwline.air.Gravity;

/**
 * Air of the day as far as heights of a log need it. Loggers turn pressure into metres with the standard atmosphere; real
 * differences of height are those shown times temperature over that of the standard (hypsometric equation). Methods manual
 * 22.2.
 *
 * @param temperature at the field, K; empty where not told
 * @param pressure at the field, Pa
 * @param heightAboveSea of the field, m
 * @param corrected true where the logger itself corrects for temperature
 */
public record LogAir(OptionalDouble temperature, double pressure, double heightAboveSea, boolean corrected) {

    private static final double GAS = 287.05;
    private static final double LAPSE = 0.0065;

    /** Real metres for a metre that the logger shows at a height above the sea. */
    public double realMetre(double height) {
        return corrected || temperature.isEmpty()
                ? 1
                : at(height) / Air.at(height, OptionalDouble.empty()).temperature();
    }

    /** Temperature at a height above the sea, with the lapse of the standard above the field. */
    private double at(double height) {
        double field = temperature.orElse(
                Air.at(heightAboveSea, OptionalDouble.empty()).temperature());
        return field - LAPSE * (height - heightAboveSea);
    }

    /** Metres that the pressure falls by from one value to another, {@code dh = R T/g ln(p1/p2)}. */
    double climbed(double from, double to) {
        return GAS * at(heightAboveSea) / Gravity.STANDARD * Math.log(from / to);
    }

    /** Share by which all heights may be off, one standard deviation: where nobody told the temperature. */
    double heightScale() {
        return corrected || temperature.isPresent() ? 0.01 : 0.03;
    }
}
