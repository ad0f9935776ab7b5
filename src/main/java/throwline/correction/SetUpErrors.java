package throwline.correction;

/**
 * Errors of the predictions of one set-up: standard deviations of what it has in common with the other set-ups of
 * the model and of what is its own.
 *
 * @param lift of the logarithm of the largest lift
 * @param drag of the logarithm of drag at equal lift
 * @param elevator rad
 * @param roll of the logarithm of roll rate
 */
public record SetUpErrors(Share lift, Share drag, Share elevator, Share roll) {

    /**
     * An error in two parts.
     *
     * @param common standard deviation of the part in common; may be negative where it works the other way
     * @param own standard deviation of the set-up's own part
     */
    public record Share(double common, double own) {

        /** An error of which set-ups share this part of the half-width. */
        public static Share of(double sd, double shared) {
            return new Share(shared * sd, Math.sqrt(1 - shared * shared) * sd);
        }

        /** Standard deviation of both together. */
        public double sd() {
            return Math.hypot(common, own);
        }
    }
}
