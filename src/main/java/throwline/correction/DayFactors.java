package throwline.correction;

/**
 * Factors of one flight: headwind at the model and density of the air.
 *
 * @param wind place of the headwind, m/s
 * @param density place of the logarithm of density over that of the prediction
 */
public record DayFactors(int wind, int density) {

    private static final double DENSITY = 0.01 / RowBand.NINE_OF_TEN;

    /**
     * The factors of a flight.
     *
     * @param factors of the estimate
     * @param name of the flight
     * @param wind headwind told, m/s
     * @param windSd its standard deviation
     * @param density logarithm of the density over that of the prediction
     */
    public static DayFactors of(Factors factors, String name, double wind, double windSd, double density) {
        return new DayFactors(
                factors.place(new Factor("wind of " + name, wind, windSd, true)),
                factors.place(new Factor("density of " + name, density, DENSITY, false)));
    }
}
