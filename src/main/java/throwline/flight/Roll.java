package throwline.flight;

/**
 * A steady roll to the right at full stick.
 *
 * @param rate rad/s
 * @param timeToNinety seconds from level to ninety degrees of bank, the spin-up included
 * @param yawing yawing moment coefficient on area and span while rolling, nose right positive; negative swings the nose
 *     against the roll
 * @param damping rolling moment coefficient per rad of tip helix angle, negative
 */
public record Roll(double rate, double timeToNinety, double yawing, double damping) {}
