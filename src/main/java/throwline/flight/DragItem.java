package throwline.flight;

/**
 * A part of the model that only resists.
 *
 * @param name what it is
 * @param area drag over dynamic pressure, m^2
 * @param height where the drag acts, above the balance point, m
 */
public record DragItem(String name, double area, double height) {}
