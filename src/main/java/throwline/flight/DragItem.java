package throwline.flight;

/**
 * A part of the model that only resists.
 *
 * @param name what it is
 * @param area drag over dynamic pressure, m^2
 * @param height where the drag acts, above the balance point, m
 * @param part which part of the model it belongs to
 */
public record DragItem(String name, double area, double height, Part part) {

    /** A part that no jet of a propeller meets. */
    public DragItem(String name, double area, double height) {
        this(name, area, height, Part.ELSEWHERE);
    }

    /** Parts of a model, by the air that meets them. */
    public enum Part {
        /** Body. */
        BODY,
        /** Undercarriage. */
        WHEELS,
        /** Corner of wing and body, gaps of the wing's surfaces. */
        WING,
        /** Fin and rudder. */
        FIN,
        /** Propeller with the throttle closed. */
        PROPELLER,
        /** Anything else. */
        ELSEWHERE
    }
}
