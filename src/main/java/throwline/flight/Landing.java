package throwline.flight;

import java.util.List;

/**
 * Landing over the obstacle to a stop. Heights are those of the wheels; distances run over the ground from the
 * obstacle, or, without one, from where the round-out begins.
 *
 * @param roundOutHeight height at which the round-out begins, m
 * @param roundOutDistance distance over the ground that it takes, m
 * @param clearsObstacle false where the round-out has to begin above the obstacle
 * @param approach distance from the obstacle to the round-out, m; negative where it begins before the obstacle
 * @param levelSpeed airspeed at the end of the round-out, m/s
 * @param sink height still lost per second there, m/s; zero where the path became level
 * @param floated distance from there to touch-down, m
 * @param touchdownSpeed airspeed at touch-down, m/s
 * @param roll distance from touch-down to a stop, m
 * @param windLost headwind that is lost between the obstacle and the ground, m/s
 * @param way places from the obstacle, or from where the round-out begins, to touch-down
 * @param pulls what the steps of the round-out ask of wing and elevator
 * @param stalled true where the round-out ends slower than the stall near the ground
 */
public record Landing(
        double roundOutHeight,
        double roundOutDistance,
        boolean clearsObstacle,
        double approach,
        double levelSpeed,
        double sink,
        double floated,
        double touchdownSpeed,
        double roll,
        double windLost,
        List<Spot> way,
        List<Pull> pulls,
        boolean stalled) {

    public Landing {
        way = List.copyOf(way);
        pulls = List.copyOf(pulls);
    }

    /** True where the round-out somewhere takes all the lift that wing and elevator give. */
    public boolean takesAllLift() {
        return pulls.stream().anyMatch(Pull::all);
    }

    /** All of it, from the obstacle to the stop, m. */
    public double total() {
        return touchdown() + roll;
    }

    /** Place of the touch-down, m. */
    public double touchdown() {
        return approach + roundOutDistance + floated;
    }

    /**
     * A place on the way.
     *
     * @param along over the ground, m
     * @param height of the wheels, m
     * @param speed airspeed, m/s
     */
    public record Spot(double along, double height, double speed) {}

    /**
     * What one step of the round-out asks for.
     *
     * @param lift lift coefficient
     * @param height of the wheels, m
     * @param bend how fast the path turns up, over the speed, rad/m
     * @param all true where that is all the lift that wing and elevator give
     */
    public record Pull(double lift, double height, double bend, boolean all) {}
}
