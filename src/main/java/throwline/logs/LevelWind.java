package throwline.logs;

/**
 * Airspeed and wind from ground speeds of straight runs at one airspeed.
 *
 * @param airspeed m/s
 * @param wind m/s: along the runs for opposing runs, in full for three headings
 */
public record LevelWind(double airspeed, double wind) {

    /**
     * Two opposing runs along the wind; a wind {@code wc} across leaves the airspeed short by
     * {@code V - sqrt(V^2 - wc^2)}.
     *
     * @param against ground speed of one run, m/s
     * @param behind of the other; the wind is positive where this is the faster
     */
    public static LevelWind opposing(double against, double behind) {
        return new LevelWind((against + behind) / 2, (behind - against) / 2);
    }

    /**
     * Three runs with headings (not tracks) 120 degrees apart (three-leg construction of flight testing, READ).
     *
     * @param first ground speed, m/s
     * @param second the same
     * @param third the same
     */
    public static LevelWind ofThree(double first, double second, double third) {
        double square = (first * first + second * second + third * third) / 3;
        double mu = 0;
        for (double speed : new double[] {first, second, third}) {
            mu += Math.pow(speed * speed / square - 1, 2) / 6;
        }
        double share = 0.5 + Math.sqrt(0.25 - mu);
        return new LevelWind(Math.sqrt(square * share), Math.sqrt(square * mu / share));
    }
}
