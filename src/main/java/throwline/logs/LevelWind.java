package throwline.logs;

/**
 * Airspeed and wind from ground speeds of straight runs at one airspeed.
 *
 * @param airspeed m/s
 * @param wind m/s: along the runs
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
}
