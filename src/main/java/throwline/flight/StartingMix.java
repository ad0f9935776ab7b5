package throwline.flight;

/**
 * Elevator mix to program: half of the elevator change to expect, so that the rest is felt in flight and not overdone (PRACTICE).
 */
public final class StartingMix {

    private StartingMix() {}

    /** The mix for an expected change, in its unit. */
    public static double of(double change) {
        return change / 2;
    }
}
