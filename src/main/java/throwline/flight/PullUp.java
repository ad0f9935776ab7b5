package throwline.flight;

import java.util.Optional;
import throwline.air.Gravity;

/**
 * The tightest pull at a speed, and which of three limits sets it. A load is lift over weight; stick and tail are empty
 * where the wing comes first and they were not met.
 *
 * @param speed m/s
 * @param wing load at which the wing gives its most lift
 * @param elevator load at which the stick at full is used up, the turning of the path included
 * @param tail load at which the tail stalls
 * @param limit which of them is the least
 * @param load the least of them
 * @param turnLoad the same in a level turn: at the same load the model pitches faster there than in a loop
 * @param lift lift coefficient there
 * @param drag drag coefficient there
 * @param angleLeft angle of attack left before the wing's most lift there, rad
 * @param stallShare share of full stick that brings the wing to its most lift; above 1 where full stick does not; empty
 *     where the elevator's travel ends before
 */
public record PullUp(
        double speed,
        double wing,
        Optional<Double> elevator,
        Optional<Double> tail,
        Limit limit,
        double load,
        double turnLoad,
        double lift,
        double drag,
        double angleLeft,
        Optional<Double> stallShare) {

    /** End of a pull. */
    public enum Limit {
        /** The wing gives no more lift. */
        WING,
        /** The stick is at full. */
        ELEVATOR,
        /** The tail stalls. */
        TAIL
    }

    /** Radius at the bottom of a loop, m; infinite where the load only carries the weight (methods manual 12.1). */
    public double radius() {
        return radius(speed, load);
    }

    /** Radius of a level turn, m. */
    public double turnRadius() {
        return turnRadius(speed, turnLoad);
    }

    /**
     * The same with a wing that gives a share of the lift expected of it. Angle of attack and load go together in a straight
     * line from where the pull ends to the most lift.
     *
     * @param share of its most lift, above 0; a wing that gives more than expected is left as it is
     */
    public PullUp withLift(double share) {
        double most = Math.min(1, share) * wing;
        if (most >= wing) {
            return this;
        }
        boolean stalls = most <= load;
        double then = Math.min(load, most);
        double left = stalls ? 0 : angleLeft * (most - load) / (wing - load);
        Limit first = stalls ? Limit.WING : limit;
        return new PullUp(
                speed,
                most,
                elevator,
                tail,
                first,
                then,
                Math.min(turnLoad, most),
                lift * then / load,
                drag,
                left,
                stallShare);
    }

    /** The same with another load in a level turn. */
    PullUp turning(double other) {
        return new PullUp(speed, wing, elevator, tail, limit, load, other, lift, drag, angleLeft, stallShare);
    }

    static double radius(double speed, double load) {
        return load <= 1 ? Double.POSITIVE_INFINITY : speed * speed / (Gravity.STANDARD * (load - 1));
    }

    static double turnRadius(double speed, double load) {
        return load <= 1 ? Double.POSITIVE_INFINITY : speed * speed / (Gravity.STANDARD * Math.sqrt(load * load - 1));
    }

    /** Angle by which a path of this radius turns the air up at a tail so far behind, rad. */
    static double tailAngle(double arm, double radius) {
        return arm / radius;
    }
}
