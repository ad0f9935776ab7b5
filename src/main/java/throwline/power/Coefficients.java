package throwline.power;

/**
 * Coefficients of a propeller: thrust over density, turns a second squared and diameter to the fourth; power over density,
 * turns a second cubed and diameter to the fifth.
 *
 * @param thrust negative where it brakes
 * @param power negative where the air drives it
 */
public record Coefficients(double thrust, double power) {

    /** Share of the power that pulls the model along, at an advance ratio. */
    public double efficiency(double advance) {
        return advance * thrust / power;
    }
}
