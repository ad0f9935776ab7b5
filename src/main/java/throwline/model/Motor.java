package throwline.model;

import java.util.OptionalDouble;

/**
 * Electric motor as far as it is known: its label, and readings of a bench with the propeller at full throttle.
 *
 * @param speedConstant turns a minute a volt, as motors are sold
 * @param noLoadCurrent A
 * @param cruise throttle of a cruise, 0 to 1
 * @param bench readings
 */
public record Motor(OptionalDouble speedConstant, OptionalDouble noLoadCurrent, double cruise, Bench bench) {

    /** Throttle of a cruise where nobody says otherwise (PRACTICE, methods manual 20.13). */
    public static final double USUAL_CRUISE = 0.7;

    /**
     * Readings at full throttle, the model standing still.
     *
     * @param turns of the propeller, 1/s
     * @param voltage of the battery under load, V
     * @param current out of the battery, A
     * @param power out of the battery, W
     * @param thrust N
     */
    public record Bench(
            OptionalDouble turns,
            OptionalDouble voltage,
            OptionalDouble current,
            OptionalDouble power,
            OptionalDouble thrust) {

        /** Nothing was read. */
        public static Bench none() {
            OptionalDouble none = OptionalDouble.empty();
            return new Bench(none, none, none, none, none);
        }

        /** Power out of the battery, read or volts times amps, W. */
        public OptionalDouble watts() {
            return power.isEmpty() && voltage.isPresent() && current.isPresent()
                    ? OptionalDouble.of(voltage.getAsDouble() * current.getAsDouble())
                    : power;
        }
    }
}
