package throwline.flight;

/**
 * A place on a path seen from the side.
 *
 * @param along over the ground, m
 * @param height m
 */
public record PathPoint(double along, double height) {}
