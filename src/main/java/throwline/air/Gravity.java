package throwline.air;

/** The standard acceleration of gravity. */
public final class Gravity {

    /** m/s^2 (definition of the standard value, CGPM 1901). */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
