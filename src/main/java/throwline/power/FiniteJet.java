package throwline.power;

/**
 * Share of its lift that a section keeps in a jet no wider than itself: images of its vortex in both edges of the jet, the
 * flow taken at three quarters of the chord (the two-dimensional form of Koning's and Glauert's argument; methods manual
 * 20.8). 1 without a jet, falling as the jet gets faster or narrower.
 */
public final class FiniteJet {

    private static final int IMAGES = 400;
    private static final double NEGLIGIBLE = 1e-9;

    private FiniteJet() {}

    /** Strength of the images for a jet faster than the air around it by a ratio: 0 for none, 1 for a jet in still air. */
    public static double strength(double speedRatio) {
        double square = speedRatio * speedRatio;
        return (square - 1) / (square + 1);
    }

    /**
     * Share of lift.
     *
     * @param strength of the images, 0 to 1
     * @param halfWidth half of the jet's width over the section's chord, positive
     */
    public static double lift(double strength, double halfWidth) {
        double sum = 0;
        double power = strength;
        for (int k = 1; k <= IMAGES && Math.abs(power) > NEGLIGIBLE; k++) {
            double apart = 2 * k * halfWidth;
            sum += power * 0.25 / (0.25 + apart * apart);
            power *= strength;
        }
        return 1 / (1 + 2 * sum);
    }
}
