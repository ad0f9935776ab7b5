package throwline.correction;

/** Expected reading of each kind of note at a state, for one set-up with one pack on one day. Methods manual 21.3. */
public final class Expected {

    /** A path over the ground is not worked out for a slower ground speed than this, m/s. */
    private static final double SLOWEST = 0.5;

    /** Wind just above the ground over that where the model flies (PRACTICE). */
    private static final double NEAR_GROUND = 0.75;

    /** A float over the ground is at least this share of that in still air. */
    private static final double LEAST_FLOAT = 0.2;

    private final Flying flying;
    private final DayFactors day;

    /**
     * @param flying the set-up
     * @param day the flight
     */
    public Expected(Flying flying, DayFactors day) {
        this.flying = flying;
        this.day = day;
    }

    /**
     * Ground speed at the stall, m/s.
     *
     * @param ahead headwind for each m/s of wind: 1 into it, -1 with it, 0 where it cancels
     */
    public Expectation stallOverGround(double ahead) {
        return x -> flying.stallSpeed(x, x[day.density()]) - ahead * x[day.wind()];
    }

    /** Airspeed at the stall, m/s. */
    public Expectation stall() {
        return x -> flying.stallSpeed(x, x[day.density()]);
    }

    /**
     * Height lost per second, m/s.
     *
     * @param speed place of the logarithm of airspeed
     */
    public Expectation sink(int speed) {
        return x -> {
            double v = Math.exp(x[speed]);
            return v * Math.sin(flying.descentAngle(x, v, x[day.density()]));
        };
    }

    /** Ground speed in a glide, m/s. */
    public Expectation overGround(int speed, double ahead) {
        return x -> {
            double v = Math.exp(x[speed]);
            return v * Math.cos(flying.descentAngle(x, v, x[day.density()])) - ahead * x[day.wind()];
        };
    }

    /** Logarithm of height lost over distance gone. */
    public Expectation path(int speed, double ahead) {
        return x -> {
            double v = Math.exp(x[speed]);
            double angle = flying.descentAngle(x, v, x[day.density()]);
            double along = Math.max(SLOWEST, v * Math.cos(angle) - ahead * x[day.wind()]);
            return Math.log(v * Math.sin(angle) / along);
        };
    }

    /**
     * Logarithm of the distance floated before touch-down, into the wind: it goes with speed squared over the angle of the
     * path.
     */
    public Expectation floated() {
        double approach = flying.predicted().approachSpeed();
        double before = Math.log(flying.predicted().floats())
                + Math.log(flying.predicted().descentAngle(approach, 1));
        return x -> {
            double thinner = x[day.density()];
            double faster = flying.stallSpeed(x, thinner) / flying.predicted().stallSpeed();
            double v = approach * faster;
            double over = Math.max(LEAST_FLOAT, 1 - NEAR_GROUND * x[day.wind()] / v);
            return before + 2 * Math.log(faster) - Math.log(flying.descentAngle(x, v, thinner)) + Math.log(over);
        };
    }

    /** Elevator, rad. */
    public Expectation elevator(int speed) {
        return x -> flying.elevator(x, Math.exp(x[speed]), x[day.density()]);
    }

    /**
     * Time of rolls at full stick, s.
     *
     * @param stick its name
     * @param rolls how many
     * @param speed place of the logarithm of airspeed
     * @param start time until the roll is steady, s
     */
    public Expectation rollTime(String stick, double rolls, int speed, double start) {
        return x -> 2 * Math.PI * rolls / flying.rollRate(x, stick, Math.exp(x[speed])) + start;
    }

    /** Logarithm of the roll rate. */
    public Expectation rollRate(String stick, int speed) {
        return x -> Math.log(flying.rollRate(x, stick, Math.exp(x[speed])));
    }
}
