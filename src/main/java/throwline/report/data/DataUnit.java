package throwline.report.data;

import throwline.units.Dimension;

/**
 * Unit of a quantity in data files: SI, but degrees for angles.
 *
 * @param symbol as data files write it; empty for shares and plain numbers
 * @param factor from SI and radians
 */
public record DataUnit(String symbol, double factor) {

    /** The unit of a dimension. */
    public static DataUnit of(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> new DataUnit("m", 1);
            case MASS -> new DataUnit("kg", 1);
            case ANGLE -> new DataUnit("deg", Math.toDegrees(1));
            case SPEED -> new DataUnit("m/s", 1);
            case ANGULAR_RATE -> new DataUnit("deg/s", Math.toDegrees(1));
            case TEMPERATURE -> new DataUnit("K", 1);
            case TORQUE -> new DataUnit("N m", 1);
            case CURRENT -> new DataUnit("A", 1);
            case VOLTAGE -> new DataUnit("V", 1);
            case POWER -> new DataUnit("W", 1);
            case CHARGE -> new DataUnit("A s", 1);
            case PRESSURE -> new DataUnit("Pa", 1);
            case TIME -> new DataUnit("s", 1);
            case AREA -> new DataUnit("m2", 1);
            case WING_LOADING -> new DataUnit("kg/m2", 1);
            case FRACTION, NUMBER -> new DataUnit("", 1);
        };
    }
}
