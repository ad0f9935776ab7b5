package throwline.model;

/**
 * The fixed undercarriage.
 *
 * @param count main wheels
 * @param diameter diameter of a main wheel, m
 * @param width width of a main wheel, m
 * @param legs what carries them
 * @param legLength length of one leg, m
 * @param legWidth width of one leg seen from the front, m
 */
public record Wheels(int count, double diameter, double width, Legs legs, double legLength, double legWidth) {

    /** What carries the wheels. */
    public enum Legs {
        /** A flat sheet-metal or composite spring. */
        SHEET,
        /** Round wire. */
        WIRE,
        /** Streamlined legs. */
        FAIRED,
        /** None: the wheel sits in the body. */
        NONE
    }
}
