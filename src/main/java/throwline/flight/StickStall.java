package throwline.flight;

/**
 * Stall of a part of the wing with a roll stick at full, before the model has begun to roll.
 *
 * @param speed speed at which it happens in level flight, m/s
 * @param strip strip of the wing
 */
public record StickStall(double speed, int strip) {}
