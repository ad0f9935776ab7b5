package throwline.flight;

import java.util.List;

/**
 * One landing over the obstacle to a stop. Heights are those of the wheels; distances run over the ground from the
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
        List<Spot> way) {

    public Landing {
        way = List.copyOf(way);
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
}
