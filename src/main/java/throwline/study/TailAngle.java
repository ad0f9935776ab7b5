package throwline.study;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The angle that a tail must be turned by so that the elevator stands in cruise where it was read (methods manual 7.8).
 *
 * @param angle rad, nose up positive; empty where none was found
 * @param lost true where none was found because a flight on the way was not
 */
record TailAngle(Optional<Double> angle, boolean lost) {

    /** Nobody builds a tail further off, rad (common practice, no source). */
    static final double FURTHEST = Math.toRadians(8);

    /** Angles between which the elevator passes what was read are looked for in such steps, rad. */
    static final double STEP = Math.toRadians(4);

    private static final double TOLERANCE = 1e-6;
    private static final int MOST_TRIMS = 40;

    /**
     * The angle, looked for from -8 to 8 degrees.
     *
     * @param elevator where the elevator stands, rad, with the tail turned by an angle; empty where that is not flown
     * @param read where it was read, rad
     */
    static TailAngle of(DoubleFunction<Optional<Double>> elevator, double read) {
        boolean lost = false;
        double low = -FURTHEST;
        Optional<Double> atLow = elevator.apply(low);
        for (double high = low + STEP; high <= FURTHEST + TOLERANCE; high += STEP) {
            Optional<Double> atHigh = elevator.apply(high);
            lost |= atLow.isEmpty() || atHigh.isEmpty();
            if (atLow.isPresent() && atHigh.isPresent() && (atLow.get() - read) * (atHigh.get() - read) <= 0) {
                return between(elevator, read, low, high);
            }
            low = high;
            atLow = atHigh;
        }
        return new TailAngle(Optional.empty(), lost);
    }

    private static TailAngle between(DoubleFunction<Optional<Double>> elevator, double read, double low, double high) {
        try {
            double angle = new BrentSolver(TOLERANCE)
                    .solve(MOST_TRIMS, turned -> elevator.apply(turned).orElseThrow(NotFlown::new) - read, low, high);
            return new TailAngle(Optional.of(angle), false);
        } catch (NotFlown e) {
            return new TailAngle(Optional.empty(), true);
        }
    }

    /**
     * How far off such an angle may be nine times out of ten, rad.
     *
     * @param perAngle elevator that an angle of the tail takes, rad by rad; empty where that is not known
     * @param errors of the elevator, rad, independent of each other; empty where one is not known
     * @param unknown how far off an angle may be of which nothing was read, rad: the least where anything is not known
     */
    static double doubt(Optional<Double> perAngle, List<Optional<Double>> errors, double unknown) {
        double known = Math.sqrt(errors.stream()
                .flatMap(Optional::stream)
                .mapToDouble(error -> error * error)
                .sum());
        boolean complete = errors.stream().allMatch(Optional::isPresent);
        return perAngle.map(Math::abs)
                .filter(slope -> slope > 0)
                .map(slope -> complete ? known / slope : Math.max(unknown, known / slope))
                .orElse(unknown);
    }

    /** A flight that was not found while the angle was looked for. */
    private static final class NotFlown extends RuntimeException {
        private static final long serialVersionUID = 1;
    }
}
