package throwline.units;

import java.util.List;

/**
 * In which units a person wants to read quantities. Lengths of the field are shown in metres or feet, lengths of the
 * model in the unit chosen here.
 *
 * @param length of the model
 * @param mass of the model
 * @param speed of flight
 * @param temperature of the air
 * @param torque of a servo
 */
public record Display(Unit length, Unit mass, Unit speed, Unit temperature, Unit torque) {

    /** Millimetres, kilograms, metres a second. */
    public static Display metric() {
        return new Display(Unit.MILLIMETRE, Unit.KILOGRAM, Unit.METRE_PER_SECOND, Unit.CELSIUS, Unit.NEWTON_METRE);
    }

    /** This display with one unit changed, chosen by its dimension; temperature and torque go with the length. */
    public Display with(Unit unit) {
        boolean imperial = unit == Unit.INCH || unit == Unit.FOOT;
        return switch (unit.dimension()) {
            case LENGTH ->
                new Display(
                        unit,
                        mass,
                        speed,
                        imperial ? Unit.FAHRENHEIT : Unit.CELSIUS,
                        imperial ? Unit.OUNCE_INCH : Unit.NEWTON_METRE);
            case MASS -> new Display(length, unit, speed, temperature, torque);
            case SPEED -> new Display(length, mass, unit, temperature, torque);
            case TORQUE -> new Display(length, mass, speed, temperature, unit);
            default -> throw new IllegalArgumentException("no choice of " + unit.dimension());
        };
    }

    /** This display with these units; a length among them does not take the torque with it where that is chosen too. */
    public Display with(List<Unit> units) {
        Display display = this;
        for (Unit unit : units) {
            display = unit.dimension() == Dimension.TORQUE ? display : display.with(unit);
        }
        for (Unit unit : units) {
            display = unit.dimension() == Dimension.TORQUE ? display.with(unit) : display;
        }
        return display;
    }

    /** The unit in which a value of this dimension is shown. */
    Unit unit(double value, Dimension dimension) {
        boolean imperial = length == Unit.INCH || length == Unit.FOOT;
        return switch (dimension) {
            case LENGTH -> Math.abs(value) < FIELD_LENGTH ? length : imperial ? Unit.FOOT : Unit.METRE;
            case MASS -> mass;
            case SPEED -> speed;
            case TEMPERATURE -> temperature;
            case TORQUE -> torque;
            case AREA -> imperial ? Unit.SQUARE_INCH : Unit.SQUARE_DECIMETRE;
            case WING_LOADING -> imperial ? Unit.OUNCE_PER_SQUARE_FOOT : Unit.GRAM_PER_SQUARE_DECIMETRE;
            default -> Unit.of(dimension).get(0);
        };
    }

    /** From this length on, m, it is the field that is measured and not the model. */
    private static final double FIELD_LENGTH = 4;
}
