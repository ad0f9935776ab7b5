package throwline.units;

/**
 * A value that knows what kind of quantity it is.
 *
 * @param value in the SI unit of its dimension
 * @param dimension what kind of quantity it is
 */
public record Quantity(double value, Dimension dimension) {}
