package throwline.correction;

import throwline.notes.Noticed.Told;
import throwline.notes.ToldBy;

/**
 * Noise of an amateur's measurements, as standard deviations: usual values by the way of measuring (PRACTICE but for
 * hand-held stopwatches, Am. J. Phys. 87, 110, 2019, READ in abstract; methods manual 21.4), or what the note says
 * itself.
 */
public final class MeasuringNoise {

    /** Reading of a satellite speed at a stall: moment, lag and rounding, m/s, and technique as a share of the speed. */
    private static final double CALLED_SPEED = 0.6;

    private static final double TECHNIQUE = 0.03;

    private static final double SENSOR_SPEED = 0.3;
    private static final double SENSOR_TECHNIQUE = 0.02;
    private static final double FILMED_SPEED = 0.08;
    private static final double SPEED_BY_EYE = 0.15;

    /** Left of the wind where runs go both ways, m/s. */
    static final double BOTH_WAYS = 0.3;

    /** Time of an event that is watched, s, by hand and on a film. */
    private static final double WATCHED = 0.3;

    private static final double FILMED = 0.1;

    private static final double SATELLITE_DISTANCE = 5;
    private static final double BAROMETER_HEIGHT = 1.5;
    private static final double PACED = 0.05;
    private static final double AGAINST_LANDMARKS = 0.15;
    private static final double BY_EYE = 0.3;

    /** Elevator on the bench with play and linkage, and by feel at the trim lever, rad. */
    private static final double BENCH_ELEVATOR = Math.toRadians(0.9);

    private static final double FELT_ELEVATOR = Math.toRadians(1.5);

    /** The float follows the speed eight times as strongly as the speed errs by its 5 %. */
    private static final double FLOAT = 0.45;

    private static final double KITCHEN_SCALE = 0.005;
    private static final double BALANCE_STAND = 0.0015;

    /** Rising and sinking air on a calm day, m/s, over two spans of time, s. */
    private static final double[][] AIR = {{0.25, 4}, {0.15, 30}};

    private MeasuringNoise() {}

    /** A speed called or read at the stall or in level flight, m/s. */
    static double speed(Told told, double speed) {
        double usual =
                switch (told.toldBy()) {
                    case AIRSPEED -> Math.hypot(SENSOR_SPEED, SENSOR_TECHNIQUE * speed);
                    case GPS -> Math.hypot(CALLED_SPEED, TECHNIQUE * speed);
                    case VIDEO, STOPWATCH -> Math.hypot(CALLED_SPEED, FILMED_SPEED * speed);
                    default -> SPEED_BY_EYE * speed;
                };
        return said(told, usual, speed);
    }

    /** Height lost, m. */
    static double height(Told told, double height) {
        double usual =
                switch (told.toldBy()) {
                    case BAROMETER, GPS, AIRSPEED -> BAROMETER_HEIGHT;
                    case LANDMARKS, PACES, STOPWATCH, VIDEO -> AGAINST_LANDMARKS * height;
                    default -> BY_EYE * height;
                };
        return said(told, usual, height);
    }

    /** Distance over the ground, m; what a note gives or takes is meant for its height. */
    static double distance(ToldBy toldBy, double distance) {
        return switch (toldBy) {
            case BAROMETER, GPS, AIRSPEED -> SATELLITE_DISTANCE;
            case PACES, LANDMARKS, STOPWATCH, VIDEO -> PACED * distance;
            default -> BY_EYE * distance;
        };
    }

    /** Time of something watched, s. */
    static double time(ToldBy toldBy) {
        return toldBy == ToldBy.VIDEO ? FILMED : WATCHED;
    }

    /** Logarithm of height over distance. */
    static double path(Told told, double height, double distance) {
        double usual =
                switch (told.toldBy()) {
                    case LANDMARKS, PACES -> AGAINST_LANDMARKS;
                    case BAROMETER, GPS, AIRSPEED ->
                        Math.hypot(BAROMETER_HEIGHT / height, SATELLITE_DISTANCE / distance);
                    case VIDEO, STOPWATCH -> AGAINST_LANDMARKS;
                    default -> Math.hypot(BY_EYE, BY_EYE);
                };
        return said(told, usual * height, height) / height;
    }

    /** Elevator, rad. */
    static double elevator(Told told) {
        return said(told, told.toldBy() == ToldBy.BENCH ? BENCH_ELEVATOR : FELT_ELEVATOR, 1);
    }

    /** Logarithm of a float. */
    static double floated(Told told, double distance) {
        double read = said(told, distance(told.toldBy(), distance), distance) / distance;
        return Math.hypot(FLOAT, read);
    }

    /** Mass, kg. */
    static double mass(Told told, double mass) {
        return said(told, told.toldBy() == ToldBy.SCALE ? KITCHEN_SCALE : TECHNIQUE * mass, mass);
    }

    /** Balance point, m. */
    static double balance(Told told) {
        return said(told, BALANCE_STAND, 1);
    }

    /** Sink rate that rising and sinking air adds to the mean of so many seconds, m/s: two first-order Gauss-Markov parts. */
    public static double air(double seconds) {
        double sum = 0;
        for (double[] part : AIR) {
            double share = part[1] / seconds;
            sum += part[0] * part[0] * 2 * share * (1 - share * (1 - Math.exp(-1 / share)));
        }
        return Math.sqrt(sum);
    }

    private static double said(Told told, double usual, double value) {
        double sd = told.giveOrTake().isPresent()
                ? told.giveOrTake().getAsDouble() / RowBand.NINE_OF_TEN
                : told.giveOrTakeShare().isPresent()
                        ? told.giveOrTakeShare().getAsDouble() * Math.abs(value) / RowBand.NINE_OF_TEN
                        : usual;
        return sd / Math.sqrt(told.times());
    }
}
