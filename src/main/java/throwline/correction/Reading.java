package throwline.correction;

/**
 * A measured value and what it should be.
 *
 * @param source what it came from; values of one source are wrong together
 * @param value as measured
 * @param sd standard deviation of measuring, positive
 * @param expected what the state predicts for it
 */
public record Reading(String source, double value, double sd, Expectation expected) {

    public Reading {
        if (!(sd > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("reading of " + source + ": " + value + " with " + sd);
        }
    }
}
