package throwline.power;

/**
 * The battery as the motor sees it.
 *
 * @param voltage without load, V
 * @param resistance of cells and leads, ohm
 */
public record Supply(double voltage, double resistance) {

    /** Volts of a lithium-polymer cell without load: full, half way and near the end (PRACTICE, methods manual 20.5). */
    public static final double FRESH = 4.15;

    /** Half way. */
    public static final double MIDDLE = 3.80;

    /** Near the end. */
    public static final double NEARLY_EMPTY = 3.60;

    /** Resistance of a new cell times its capacity, ohm Ah (PRACTICE). */
    private static final double CELL = 0.012;

    /** A used cell at the temperature of a field over a new and warm one (PRACTICE: between 1 and 2). */
    private static final double USED = 1.5;

    private static final double LEADS = 1.2;

    /**
     * A battery by its label.
     *
     * @param cells in series
     * @param capacity A s
     * @param cellVoltage of one cell without load, V
     */
    public static Supply of(int cells, double capacity, double cellVoltage) {
        return new Supply(cells * cellVoltage, LEADS * USED * cells * CELL / (capacity / 3600));
    }

    /** Volts at a current, A. */
    double at(double current) {
        return voltage - current * resistance;
    }
}
