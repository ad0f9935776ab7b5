package throwline.model;

/**
 * Mass and balance of the whole model with one battery.
 *
 * @param name what its owner calls it
 * @param mass all-up mass, kg
 * @param balance balance point behind the wing's leading edge at the middle, m
 */
public record Pack(String name, double mass, double balance) {}
