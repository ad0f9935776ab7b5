package throwline.correction;

/**
 * Flight of one set-up with one pack as predicted before any flight, throttle closed. Speeds are those at the weight and in
 * the air that the prediction was made for; at another weight or in other air the model flies the same at the speed that
 * gives the same lift coefficient.
 */
public interface SetUpFlight {

    /** Stall speed, m/s. */
    double stallSpeed();

    /** Approach speed, m/s: where the errors of drag and of elevator are those of their bands. */
    double approachSpeed();

    /**
     * Path below the horizon, rad.
     *
     * @param speed m/s; held at the ends of the speeds that were worked out
     * @param drag factor on drag at equal lift
     */
    double descentAngle(double speed, double drag);

    /** Distance in still air from level flight above the ground to touch-down, m; not a number where not worked out. */
    double floats();

    /** Elevator for steady flight at a speed, rad, trailing edge down positive. */
    double elevator(double speed);

    /** Elevator for each metre that the balance point lies further back, rad/m, trailing edge down positive. */
    double elevatorPerBalance(double speed);

    /** Steady roll rate of a stick at full over airspeed, rad/m; not a number where the stick does not work here. */
    double rollPerSpeed(String stick);
}
