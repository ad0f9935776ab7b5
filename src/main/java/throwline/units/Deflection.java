package throwline.units;

/**
 * An angle of a surface, told with its direction in words.
 *
 * @param angle rad, trailing edge down positive
 */
public record Deflection(double angle) {}
