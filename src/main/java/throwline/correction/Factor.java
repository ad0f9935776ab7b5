package throwline.correction;

import java.util.Optional;

/**
 * A number that is not known exactly: an error of the prediction, or something of one flight such as its wind. Normal before
 * any flight, and independent of the others.
 *
 * @param name unique among the factors of an estimate
 * @param mean expected value
 * @param sd standard deviation, positive
 * @param doubtful true where what was said of it may be plainly wrong, as a wind told by feel may be
 * @param habit what it is where a pilot has a habit that is known of; empty for most
 */
public record Factor(String name, double mean, double sd, boolean doubtful, Optional<Habit> habit) {

    public Factor {
        if (!(sd > 0) || (habit.isPresent() && !(habit.get().sd > sd))) {
            throw new IllegalArgumentException("standard deviation of " + name + ": " + sd);
        }
    }

    /** A factor without a habit. */
    public Factor(String name, double mean, double sd, boolean doubtful) {
        this(name, mean, sd, doubtful, Optional.empty());
    }

    /**
     * Another way of doing things, which shifts a factor one way: stalls that are broken off are too fast, never too slow.
     *
     * @param share of those who have it, between 0 and 1
     * @param mean expected value with it
     * @param sd standard deviation with it, greater than without
     */
    public record Habit(double share, double mean, double sd) {
        public Habit {
            if (!(share > 0 && share < 1 && sd > 0)) {
                throw new IllegalArgumentException("habit of " + share + " with " + sd);
            }
        }
    }

    /** An error of the prediction: normal with mean 0 and standard deviation 1. */
    public static Factor standard(String name) {
        return new Factor(name, 0, 1, false);
    }
}
