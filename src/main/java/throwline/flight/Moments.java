package throwline.flight;

/**
 * Pitching moments about the balance point by their cause, over dynamic pressure, area and mean chord, nose up positive.
 *
 * @param wingLift lift of the wing at its place before or behind the balance point
 * @param wingCamber the wing's sections about their own quarter chords
 * @param wingDrag drag of the wing above or below the balance point
 * @param body the body at its incidence
 * @param items wheels, propeller, pulling or not, and other parts that only resist
 * @param tail lift and drag of the tail at its place, elevator included
 */
public record Moments(double wingLift, double wingCamber, double wingDrag, double body, double items, double tail) {

    /** The sum: zero where the elevator holds the attitude. */
    public double total() {
        return wingLift + wingCamber + wingDrag + body + items + tail;
    }
}
