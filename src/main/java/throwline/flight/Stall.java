package throwline.flight;

/**
 * The slowest steady flight of one set-up with one pack, at one g, throttle shut.
 *
 * @param speed lowest speed, m/s: the checked maximum of lift, or where the elevator runs out
 * @param onsetSpeed speed at which a part of the wing first reaches its stall, m/s
 * @param plateauSpeed speed for the lift of the wing with half its area past the stall, if its sections did not lose lift,
 *     m/s; not above {@code speed}
 * @param elevatorLimited true where the elevator's travel ends before the wing stalls
 * @param attitude the model at {@code speed}
 * @param firstStrip strip of the wing that lets go first
 * @param aileronReserve angle left in front of the ailerons when the rest of the wing lets go, rad; negative where the
 *     strips in front of the ailerons go first, infinite where no surface is known to roll the model
 */
public record Stall(
        double speed,
        double onsetSpeed,
        double plateauSpeed,
        boolean elevatorLimited,
        Attitude attitude,
        int firstStrip,
        double aileronReserve) {

    /** Speed to come in at over the stall speed: as full-size rules and glider training have it (PRACTICE, methods manual 10.1). */
    public static final double APPROACH = 1.3;

    /** Speed to come in at, m/s. */
    public double approachSpeed() {
        return APPROACH * speed;
    }
}
