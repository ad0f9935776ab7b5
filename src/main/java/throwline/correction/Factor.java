package throwline.correction;

/**
 * A number that is not known exactly: an error of the prediction, or something of one flight such as its wind. Normal before
 * any flight, and independent of the others.
 *
 * @param name unique among the factors of an estimate
 * @param mean expected value
 * @param sd standard deviation, positive
 * @param doubtful true where what was said of it may be plainly wrong, as a wind told by feel may be
 */
public record Factor(String name, double mean, double sd, boolean doubtful) {

    public Factor {
        if (!(sd > 0)) {
            throw new IllegalArgumentException("standard deviation of " + name + ": " + sd);
        }
    }

    /** An error of the prediction: normal with mean 0 and standard deviation 1. */
    public static Factor standard(String name) {
        return new Factor(name, 0, 1, false);
    }
}
