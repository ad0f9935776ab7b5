package throwline.correction;

/** Flight of one set-up with one pack at a state: the prediction with its errors put right. */
public final class Flying {

    private final Aeroplane aeroplane;
    private final String setUp;
    private final SetUpFlight predicted;
    private final int weight;
    private final int balance;

    Flying(Aeroplane aeroplane, String setUp, SetUpFlight predicted, int weight, int balance) {
        this.aeroplane = aeroplane;
        this.setUp = setUp;
        this.predicted = predicted;
        this.weight = weight;
        this.balance = balance;
    }

    /** What was predicted. */
    public SetUpFlight predicted() {
        return predicted;
    }

    /** Logarithm of weight over the weight told. */
    double weight(double[] state) {
        return state[weight];
    }

    /** Error of the logarithm of the largest lift. */
    double lift(double[] state) {
        return aeroplane.lift(state, setUp);
    }

    /** Error of the logarithm of drag at a speed, m/s. */
    double drag(double[] state, double speed) {
        return aeroplane.drag(state, setUp, speed / predicted.approachSpeed());
    }

    /**
     * Stall speed, m/s.
     *
     * @param state the state
     * @param thinner logarithm of the air's density over that of the prediction
     */
    public double stallSpeed(double[] state, double thinner) {
        return predicted.stallSpeed() * Math.exp((state[weight] - thinner - aeroplane.lift(state, setUp)) / 2);
    }

    /** Path below the horizon at a speed, rad. */
    public double descentAngle(double[] state, double speed, double thinner) {
        return predicted.descentAngle(
                equivalent(state, speed, thinner),
                Math.exp(aeroplane.drag(state, setUp, speed / predicted.approachSpeed())));
    }

    /** Elevator at a speed, rad. */
    public double elevator(double[] state, double speed, double thinner) {
        double same = equivalent(state, speed, thinner);
        double middle = predicted.elevator(predicted.approachSpeed());
        return middle
                + aeroplane.trimSlope(state) * (predicted.elevator(same) - middle)
                + aeroplane.elevator(state, setUp)
                + predicted.elevatorPerBalance(same) * state[balance];
    }

    /** Roll rate of a stick at a speed, rad/s. */
    public double rollRate(double[] state, String stick, double speed) {
        return predicted.rollPerSpeed(stick) * speed * Math.exp(aeroplane.roll(state, setUp));
    }

    /** Speed at which the model flew the same in the prediction. */
    private double equivalent(double[] state, double speed, double thinner) {
        return speed * Math.exp((thinner - state[weight]) / 2);
    }
}
